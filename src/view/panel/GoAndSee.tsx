import { useState } from 'preact/hooks';
import type { Listing } from '../../listing/types';
import { goAndSeeTexts as texts } from '../../text/catalogue/go-and-see';

/** Makes a viewing sheet of an advert and opens it; answers whether it could be kept. */
export type MakeSheet = (about: string, listing: Listing) => Promise<boolean>;

interface Props {
  about: string;
  listing: Listing;
  /** null: a private window, which keeps nothing. */
  makeSheet: MakeSheet | null;
}

/** For whoever goes to see the machine: a sheet to take along. */
export function GoAndSee({ about, listing, makeSheet }: Props) {
  const [failed, setFailed] = useState(false);
  return (
    <section class="group" data-part="go-and-see" aria-labelledby="go-and-see">
      <h2 id="go-and-see">{texts.heading}</h2>
      <p>{makeSheet ? texts.text : texts.private}</p>
      {makeSheet && (
        <p class="below">
          <button
            type="button"
            class="button plain"
            data-part="make-sheet"
            onClick={async () => setFailed(!(await makeSheet(about, listing)))}
          >
            {texts.make}
          </button>
        </p>
      )}
      <p role="status">{failed && texts.failed}</p>
    </section>
  );
}
