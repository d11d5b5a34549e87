import type { ExpectedListing, StoredPage } from './stored-pages';

// Pages as large as those of real markets, made in memory: the invented ones in fixtures are small, so that what is paid
// once for every page decides how long they take. The disorder is of the kinds that real pages have, one after another:
// a question for consent, menus that a style sheet folds away, icons, other adverts, comments, scripts with data.

const TITLE = 'Treadle machine in an oak cabinet, with its drawers';
const PRICE = '145.00';
const DESCRIPTION = [
  'It belonged to my grandmother, who sewed curtains on it until she was eighty.',
  'The belt was changed two years ago and it turns freely, but nobody here can say whether it still sews.',
  'One drawer sticks. The veneer has lifted at a corner, as the third photograph shows.',
  'A box of shuttles and a booklet come with it. It has to be collected, by two people.',
];
const WORDS =
  'the machine is heavy and its handle was mended once with care so that it turns as it should though the lamp does not work any more since we moved here last spring from a house near the river where my aunt kept everything dry'.split(
    ' ',
  );

/** What one page of a site is made with. */
interface Manner {
  name: string;
  /** Names of elements as its style sheet has them. */
  named: (name: string) => string;
  linkedData: boolean;
  state: boolean;
}

const hashed = (name: string): string => {
  let hash = 7;
  for (const letter of name) hash = (hash * 31 + letter.charCodeAt(0)) >>> 0;
  return `css-${hash.toString(36)} sc-${(hash >>> 3).toString(36)}`;
};

const MANNERS: Manner[] = [
  { name: 'plain names and linked data', named: (name) => name, linkedData: true, state: false },
  { name: 'hashed names and a state', named: hashed, linkedData: false, state: true },
  {
    name: 'names of a framework',
    named: (name) => `${name} d-flex flex-column p-2 text-muted ${name}__inner ${name}--wide`,
    linkedData: true,
    state: true,
  },
  { name: 'nothing for machines', named: hashed, linkedData: false, state: false },
];

const sentence = (at: number, length: number): string =>
  Array.from({ length }, (_, index) => WORDS[(at * 7 + index * 3 + ((at * index) % 5)) % WORDS.length]).join(' ');

const icon = (name: string): string =>
  `<svg class="icon icon-${name}" viewBox="0 0 24 24" aria-hidden="true"><g><path d="M3 3h18v18H3z"></path><path d="M7 7l10 10"></path></g></svg>`;

/** One item of each kind of disorder; `at` counts them. */
const disorder: Record<string, (at: number, manner: Manner) => string> = {
  menu: (at, { named }) => `
      <li class="${named('menu-item')}" data-menu="${at}"><a href="/c/${at}" class="${named('menu-link')}"><span>${sentence(at, 2)}</span></a>
        <ul class="${named('sub-menu')} folded">${[0, 1, 2, 3]
          .map((inner) => `\n          <li><a href="/c/${at}/${inner}">${sentence(at + inner, 2)}</a></li>`)
          .join('')}
        </ul>
      </li>`,
  consent: (at, { named }) => `
      <div class="${named('vendor')}"><label><input type="checkbox" name="vendor-${at}"> <span class="${named('vendor-name')}">Partner ${at}</span></label>
        <p>Stores ${sentence(at, 9)}. <a href="/privacy/${at}">Policy</a></p>
        <div class="folded"><p>Kept for ${(at % 24) + 1} months</p></div>
      </div>`,
  related: (at, { named }) => `
      <div class="${named('card')}" data-testid="card-${at}"><div class="${named('card-body')}">
        <a href="/ad/${at}" class="${named('card-link')}"><div class="${named('card-image')}"><img src="/photos/${at}.jpg" alt="${sentence(at, 3)}" loading="lazy" width="190" height="140"></div>
          <h3 class="${named('card-title')}">${sentence(at, 5)}</h3></a>
        <div class="${named('card-foot')}"><span class="${named('card-price')}">£${20 + (at % 300)}</span> <span class="${named('card-place')}">${icon('pin')} Netherholme</span> <time datetime="2026-05-${10 + (at % 19)}">${1 + (at % 28)} May</time></div>
        <button type="button" aria-label="Keep in mind" class="${named('keep')}">${icon('heart')}<span class="hidden-text">Keep</span></button>
      </div></div>`,
  comment: (at, { named }) => `
      <article class="${named('comment')}" id="comment-${at}"><header><img class="avatar" src="/avatars/${at % 40}.png" alt=""> <b>Reader ${at % 97}</b> <time datetime="2026-04-${10 + (at % 19)}">${1 + (at % 28)} April</time></header>
        <div class="${named('comment-text')}"><p>${sentence(at, 24)}.</p>
          <p>${sentence(at + 3, 11)}, and I paid £${10 + (at % 90)} for <em>mine</em>.<br>${sentence(at + 5, 8)}</p></div>
        <footer><button type="button">${icon('reply')} Reply</button> <a href="#comment-${at}">Link</a> <span class="folded">${at % 9} people agree</span></footer>
      </article>`,
  footer: (at, { named }) => `
      <li class="${named('foot-item')}"><a href="/help/${at}">${sentence(at, 3)}</a></li>`,
};

/** What share of a page's nodes each kind takes. */
const SHARES: Record<string, number> = { menu: 0.18, consent: 0.12, related: 0.38, comment: 0.26, footer: 0.06 };

/** Elements, texts and comments of well-formed mark-up. */
const nodesIn = (html: string): number => (html.match(/<[a-z!]|>[^<]+/g) ?? []).length;

function many(kind: string, nodes: number, manner: Manner): string {
  const parts: string[] = [];
  for (let left = nodes * SHARES[kind]!, at = 0; left > 0; at++) {
    const part = disorder[kind]!(at, manner);
    parts.push(part);
    left -= nodesIn(part);
  }
  return parts.join('');
}

const STYLE = `
    .folded { display: none } .hidden-text { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden }
    .modal-open .consent { visibility: visible } .old { text-decoration: line-through } svg { width: 1em; height: 1em }
    ${Array.from({ length: 400 }, (_, index) => `.u-${index} { margin: ${index}px } .page .u-${index}:hover > a { color: #123 }`).join('\n    ')}`;

function advert({ named }: Manner): string {
  const rows = [
    ['Condition', 'Used'],
    ['Location', 'Netherholme'],
    ['Listed', '14 May 2026'],
    ['Material', 'Cast iron and oak'],
    ['Collection', 'Only'],
  ];
  return `
    <main class="${named('main')}"><div class="${named('columns')}">
      <div class="${named('gallery')}">${Array.from({ length: 8 }, (_, at) => `<button type="button" class="${named('thumb')}"><img src="/photos/large-${at}.jpg" alt="Photograph ${at + 1}" width="640" height="480"></button>`).join('')}</div>
      <div class="${named('facts')}"><h1 class="${named('title')}">${TITLE}</h1>
        <div class="${named('price-row')}"><p class="${named('price')}"><span>£145</span></p> <s class="old">£180</s></div>
        <dl class="${named('rows')}">${rows.map(([label, value]) => `<div><dt>${label}</dt><dd>${value}</dd></div>`).join('')}</dl>
        <h2>Description</h2><div class="${named('words')}">${DESCRIPTION.map((text) => `<p>${text}</p>`).join('')}</div>
        <div class="${named('contact')}"><button type="button">Contact the seller</button></div></div>
    </div></main>`;
}

const linkedData = (): string =>
  JSON.stringify({
    '@context': 'https://schema.org',
    '@type': 'Product',
    name: TITLE,
    description: DESCRIPTION.join('\n'),
    offers: { '@type': 'Offer', price: PRICE, priceCurrency: 'GBP', itemCondition: 'https://schema.org/UsedCondition' },
  });

/** The data of a page's own scripts: the advert among all that the page shows, and what nobody needs. */
const stateOfPage = (others: number): string =>
  JSON.stringify({
    config: Object.fromEntries(Array.from({ length: 300 }, (_, at) => [`flag-${at}`, { on: at % 2 === 0, group: at }])),
    page: { ad: { id: 77120, title: TITLE, description: DESCRIPTION.join('\n'), price: { amount: 145 } } },
    related: Array.from({ length: others }, (_, at) => ({ id: at, label: sentence(at, 5), cost: 20 + (at % 300) })),
  });

/**
 * A page of about so many nodes (elements, texts and comments) with one advert among its disorder.
 * @param nodes at least 2,000.
 */
export function largePage(nodes: number, manner: Manner): StoredPage {
  const left = nodes - 400;
  const { named } = manner;
  const html = `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${TITLE} | Adverts</title>
  <meta name="description" content="${DESCRIPTION[0]}"><meta property="og:title" content="${TITLE}">
  <link rel="canonical" href="https://market.example/ad/77120">
  <style>${STYLE}</style>${manner.linkedData ? `\n  <script type="application/ld+json">${linkedData()}</script>` : ''}
</head><body class="page">
    <div class="${named('consent')} consent" role="alertdialog" aria-label="Cookies"><h2>We value your privacy</h2><div>${many('consent', left, manner)}</div></div>
    <header class="${named('top')}"><nav><ul>${many('menu', left, manner)}</ul></nav></header>${advert(manner)}
    <section class="${named('similar')}"><h2>Similar adverts</h2><div class="${named('grid')}">${many('related', left, manner)}</div></section>
    <section class="${named('comments')}"><h2>Comments</h2>${many('comment', left, manner)}</section>
    <footer class="${named('foot')}"><ul>${many('footer', left, manner)}</ul></footer>
${manner.state ? `    <script id="state" type="application/json">${stateOfPage(Math.round(nodes / 100))}</script>\n` : ''}    <script>window.later = window.later || [];${'later.push(function () { return 1; });'.repeat(400)}</script>
</body></html>`;
  const expected: ExpectedListing = {
    title: TITLE,
    price: { amount: PRICE, currency: 'GBP', how: 'asking' },
    description: DESCRIPTION.join('\n'),
    condition: 'Used',
    place: 'Netherholme',
    listedDate: '2026-05-14',
    offers: 1,
  };
  const name = `${nodes} nodes, ${manner.name}`;
  return { name, html: Buffer.from(html), address: 'https://market.example/ad/77120', expected };
}

/** One page of each manner. */
export const largePages = (nodes: number): StoredPage[] => MANNERS.map((manner) => largePage(nodes, manner));
