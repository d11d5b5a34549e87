import type { Audit } from '../../audit/types';
import { isUnsealed, originOf } from '../../session/pack-origin';
import type { Words } from '../../session/words';
import { originTexts } from '../../text/catalogue/origin';
import { panelTexts } from '../../text/catalogue/panel';
import { langOf, shown } from '../shown';
import { Disclosure } from './Disclosure';

const texts = panelTexts.packs;

/** Which packs the audit rests on, and what is to be known about each of them. */
export function PacksSpoke({ audit, words }: { audit: Audit; words: Words }) {
  const packs = audit.packs.map(({ id, edition, sealedBy }) => {
    const note = words.packs.get(id);
    return {
      id,
      edition,
      note,
      origin: { shipped: note?.shipped ?? false, sealedBy: sealedBy && shown(sealedBy, 80) },
    };
  });
  const unsealed = packs.filter(({ origin }) => isUnsealed(origin)).length;
  return (
    <section class="group fold" data-part="packs">
      <Disclosure label={texts.heading} inside={texts.count(packs.length, unsealed)} part="who-spoke" row="h2">
        <ul class="spoke">
          {packs.map(({ id, edition, note, origin }) => (
            <li key={id} data-pack-id={id}>
              <b lang={langOf(note?.language)} dir="auto">
                {note ? shown(note.title, 120) : id}
              </b>
              <span class="labels">
                <span>{texts.edition(edition)}</span>
                <span>{originOf(origin)}</span>
                {note?.demo && <span>{originTexts.demo}</span>}
              </span>
            </li>
          ))}
        </ul>
        {unsealed > 0 && <p class="soft">{originTexts.unsealedExplain}</p>}
      </Disclosure>
    </section>
  );
}
