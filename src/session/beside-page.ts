import type { Follows, Likely } from '../audit/types';
import { besideTexts } from '../text/catalogue/beside';
import { likelyTexts } from '../text/catalogue/likely';
import type { Answered } from './answer';
import { htmlText, inlinePicture } from './html-text';
import { PAGE_COLOURS } from './page-style';
import type { Pictures } from './pictures';
import { type BesideRow, besideOf, rowsBeside } from './side-by-side';
import { packLines } from './written-answer';

const texts = besideTexts.page;

/** All that a page to send is made of. */
export interface BesidePage {
  answer: Pick<Answered, 'audit' | 'listing' | 'words' | 'pictures'>;
  /** The user's own photos, as inline pictures. */
  own: readonly string[];
  /** ISO 8601 date. */
  asOf: string;
}

/** Readable in light and dark, on a telephone and on paper. */
const STYLE = `${PAGE_COLOURS}
body{margin:0 auto;max-width:56rem;padding:1.2rem;font:1.05rem/1.5 system-ui,sans-serif}
h1{font-size:1.5rem}h2{font-size:1.15rem;margin-top:2rem}figure{margin:0}figcaption{font-size:.9rem}
.row{display:grid;grid-template-columns:repeat(auto-fit,minmax(13rem,1fr));gap:1rem}img{max-width:100%;height:auto}
table{border-collapse:collapse;width:100%}th,td{padding:.4rem .6rem .4rem 0;border-bottom:1px solid;text-align:start;vertical-align:top;overflow-wrap:anywhere}
@media print{body{max-width:none;padding:0}}`;

/**
 * The candidates side by side as one HTML file, to be saved and sent: nothing in it runs, and nothing is loaded from
 * elsewhere, which its own policy says once more. Every text is escaped; pictures are inline or left out.
 */
export function besidePage({ answer: { audit, listing, words, pictures }, own, asOf }: BesidePage): string {
  const { likely } = audit;
  const { title, url } = listing;
  const advertPhotos = listing.photos.length;
  const packs = packLines(audit, words);
  const candidates = besideOf(likely);
  const rows = rowsBeside(candidates);
  const [first] = candidates;
  const body = [
    `<h1>${htmlText(texts.title(first?.label ?? title))}</h1>`,
    `<h2>${htmlText(texts.advert)}</h2><p dir="auto">${htmlText(title)}</p>`,
    url && /^https?:\/\//.test(url) ? `<p><a rel="noreferrer" href="${htmlText(url)}">${htmlText(url)}</a></p>` : '',
    photos(own),
    advertPhotos > 0 && own.length === 0 ? `<p>${htmlText(texts.elsewhere(advertPhotos))}</p>` : '',
    `<h2>${htmlText(likelyTexts.heading)}</h2>`,
    `<ul>${candidates.map((one) => `<li>${htmlText(texts.chance(one.label, likelyTexts.inHundred(one.probability)))}</li>`).join('')}</ul>`,
    candidatePictures(candidates, pictures),
    table(
      candidates,
      rows.filter(({ differs }) => differs),
      besideTexts.explain,
    ),
    table(
      candidates,
      rows.filter(({ differs }) => !differs),
      besideTexts.same(rows.filter(({ differs }) => !differs).length),
    ),
    `<h2>${htmlText(texts.from)}</h2><ul>${packs.map((pack) => `<li>${htmlText(pack)}</li>`).join('')}</ul>`,
    `<p>${htmlText(texts.end(asOf))}</p>`,
  ];
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src 'unsafe-inline'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<title>${htmlText(texts.title(first?.label ?? title))}</title><style>${STYLE}</style></head>
<body><main>
${body.filter(Boolean).join('\n')}
</main></body></html>
`;
}

function photos(own: readonly string[]): string {
  const sound = own.map(inlinePicture).filter(Boolean);
  if (sound.length === 0) return '';
  const each = sound.map((data) => `<figure><img src="${data}" alt="${htmlText(texts.photoAlt)}"></figure>`);
  return `<h2>${htmlText(texts.photo)}</h2><div class="row">${each.join('')}</div>`;
}

function candidatePictures(candidates: readonly Likely[], pictures: Pictures): string {
  const shown = candidates.flatMap(({ label, model }) =>
    (pictures.get(model ?? '') ?? []).flatMap(({ data, shows, credit, licence }) => {
      const sound = inlinePicture(data);
      if (sound === '') return [];
      const caption = `${htmlText(besideTexts.picture(label, shows))}<br>${htmlText(besideTexts.credit(credit, licence))}`;
      return [`<figure><img src="${sound}" alt="${htmlText(shows)}"><figcaption>${caption}</figcaption></figure>`];
    }),
  );
  return shown.length === 0 ? '' : `<h2>${htmlText(besideTexts.pictures)}</h2><div class="row">${shown.join('')}</div>`;
}

function table(candidates: readonly Likely[], rows: readonly BesideRow[], caption: string): string {
  if (rows.length === 0) return '';
  const head = [besideTexts.feature, ...candidates.map(({ label }) => label)];
  const lines = rows.map(
    ({ name, each }) =>
      `<tr><th scope="row">${htmlText(name)}</th>${each.map((cell) => `<td>${value(cell)}</td>`).join('')}</tr>`,
  );
  const heads = head.map((name) => `<th scope="col">${htmlText(name)}</th>`).join('');
  return `<h2>${htmlText(caption)}</h2><table><thead><tr>${heads}</tr></thead><tbody>${lines.join('')}</tbody></table>`;
}

function value(all: readonly Follows[]): string {
  if (all.length === 0) return htmlText(besideTexts.notKnown);
  return all.map(({ text, usually }) => htmlText(usually ? likelyTexts.usually(text) : text)).join('<br>');
}
