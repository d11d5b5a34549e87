import { useState } from 'preact/hooks';
import type { Follows, Likely } from '../../audit/types';
import { type BesidePage, besidePage } from '../../session/beside-page';
import type { Pictures } from '../../session/pictures';
import { type BesideRow, besideOf, rowsBeside } from '../../session/side-by-side';
import { besideTexts as texts } from '../../text/catalogue/beside';
import { shown } from '../shown';
import { AdvertPhotos } from './AdvertPhotos';
import { Disclosure } from './Disclosure';
import { followsText } from './FollowsList';

export interface BesideProps {
  answer: BesidePage['answer'];
  /** The user's own photos of it, as inline pictures. */
  own: BesidePage['own'];
  asOf: string;
  /** Saves a text as a file; null where nothing is to be saved. */
  save: ((name: string, text: string, type: string) => void) | null;
}

/** The candidates beside each other: the photo in question, the packs' pictures, and what differs before what doesn't. */
export function SideBySide({ answer, own, asOf, save }: BesideProps) {
  const { audit, listing, pictures } = answer;
  const candidates = besideOf(audit.likely);
  const [saved, setSaved] = useState(false);
  const rows = rowsBeside(candidates);
  const [differing, same] = [rows.filter(({ differs }) => differs), rows.filter(({ differs }) => !differs)];
  const pictured = candidates.some(({ model }) => pictures.has(model ?? ''));
  return (
    <div class="side-by-side">
      {own.map((data) => (
        <img key={data} src={data} alt={texts.page.photoAlt} data-part="own-photo" />
      ))}
      <AdvertPhotos photos={listing.photos} />
      {pictured && <PackPictures candidates={candidates} pictures={pictures} />}
      <BesideTable candidates={candidates} rows={differing} caption={texts.explain} />
      {same.length > 0 && (
        <Disclosure label={texts.same(same.length)} part="beside-same">
          <BesideTable candidates={candidates.slice(0, 1)} rows={same} caption={null} />
        </Disclosure>
      )}
      {save && (
        <>
          <p class="below">
            <button
              type="button"
              class="button plain"
              data-part="save-beside"
              onClick={() => {
                save(texts.page.file, besidePage({ answer, own, asOf }), 'text/html');
                setSaved(true);
              }}
            >
              {texts.save}
            </button>
          </p>
          <p role="status" class="soft">
            {saved && texts.saved}
          </p>
        </>
      )}
    </div>
  );
}

function PackPictures({ candidates, pictures }: { candidates: readonly Likely[]; pictures: Pictures }) {
  return (
    <div class="pack-pictures" data-columns={candidates.length}>
      {candidates.map(({ model, label }) => (
        <div key={model} data-pictures={model}>
          <p>
            <b>{shown(label, 80)}</b>
          </p>
          {(pictures.get(model ?? '') ?? []).map(({ data, shows, credit, licence }) => (
            <figure key={data}>
              <img src={data} alt={texts.picture(shown(label, 80), shown(shows, 120))} />
              <figcaption>
                {shown(shows, 120)} <span class="soft">{texts.credit(shown(credit, 120), shown(licence, 80))}</span>
              </figcaption>
            </figure>
          ))}
          {!pictures.has(model ?? '') && <p class="soft">{texts.noPicture}</p>}
        </div>
      ))}
    </div>
  );
}

interface TableProps {
  candidates: readonly Likely[];
  rows: readonly BesideRow[];
  /** null: one column is enough, for all have the same. */
  caption: string | null;
}

/** Each property under its own name, one cell for each candidate: this fits a narrow panel better than a first column. */
function BesideTable({ candidates, rows, caption }: TableProps) {
  if (rows.length === 0) return null;
  return (
    <table class="beside" data-columns={candidates.length}>
      {caption !== null && <caption class="soft">{caption}</caption>}
      {caption !== null && (
        <thead>
          <tr>
            {candidates.map(({ model, label }) => (
              <th key={model} scope="col">
                {shown(label, 80)}
              </th>
            ))}
          </tr>
        </thead>
      )}
      {rows.map(({ attribute, name, each, differs }) => (
        <tbody key={attribute} data-differs={String(differs)} data-beside={attribute}>
          <tr>
            <th scope="rowgroup" colSpan={candidates.length}>
              {shown(name, 80)}
            </th>
          </tr>
          <tr>
            {candidates.map(({ model, label }, i) => (
              <td key={model}>
                {caption !== null && <span class="beside-of">{shown(label, 80)}</span>}
                <Cell all={each[i] ?? []} />
              </td>
            ))}
          </tr>
        </tbody>
      ))}
    </table>
  );
}

function Cell({ all }: { all: readonly Follows[] }) {
  if (all.length === 0) return <span class="soft">{texts.notKnown}</span>;
  return all.map((one) => (
    <span class="entry" key={one.text}>
      {followsText(one)}
    </span>
  ));
}
