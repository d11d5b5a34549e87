import type { Audit } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts } from '../../text/catalogue/panel';
import { langOf, shown } from '../shown';

const texts = panelTexts.packs;

/** Which packs the audit rests on, and what is to be known about each of them. */
export function PacksSpoke({ audit, words }: { audit: Audit; words: Words }) {
  const anyUnsealed = audit.packs.some(({ sealedBy }) => sealedBy === null);
  return (
    <section class="group" data-part="packs" aria-labelledby="packs">
      <h2 id="packs">{texts.heading}</h2>
      <ul class="spoke">
        {audit.packs.map(({ id, edition, sealedBy }) => {
          const note = words.packs.get(id);
          return (
            <li key={id} data-pack-id={id}>
              <b lang={langOf(note?.language)} dir="auto">
                {note ? shown(note.title, 120) : id}
              </b>
              <span class="labels">
                <span>{texts.edition(edition)}</span>
                <span>{sealedBy === null ? texts.unsealed : texts.sealedBy(shown(sealedBy, 80))}</span>
                {note?.demo && <span>{texts.demo}</span>}
              </span>
            </li>
          );
        })}
      </ul>
      {anyUnsealed && <p class="soft">{texts.unsealedExplain}</p>}
    </section>
  );
}
