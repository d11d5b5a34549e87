import type { ChangesTold, EntryTold, FieldTold } from '../../../session/change-told';
import { changesTold } from '../../../text/catalogue/changes-told';
import { followTexts } from '../../../text/catalogue/follow';
import { sentenceCase } from '../../../text/catalogue/words';
import { Disclosure } from '../../panel/Disclosure';
import { shown } from '../../shown';

const texts = followTexts.changes;

/** So many are shown at once; more are folded away. */
const FEW = 12;

/** What an edition changes of what is here, in words. */
export function OfferChanges({ changes: { counts, entries, more } }: { changes: ChangesTold }) {
  const { added, changed, removed, moved } = counts;
  const summary = texts.summary(added, changed, removed);
  return (
    <section data-part="offer-changes">
      <h4>{texts.heading}</h4>
      <p>{added + changed + removed + moved === 0 ? texts.none : `${sentenceCase(summary)}.`}</p>
      <Entries entries={entries.slice(0, FEW)} />
      {entries.length > FEW && (
        <Disclosure label={texts.more(entries.length - FEW + more)} part="more-changes">
          <Entries entries={entries.slice(FEW)} />
          {more > 0 && <p>{texts.more(more)}</p>}
        </Disclosure>
      )}
    </section>
  );
}

function Entries({ entries }: { entries: readonly EntryTold[] }) {
  return (
    <ul class="changes">
      {entries.map(({ kind, part, entry, name, fields }) => (
        <li key={`${part} ${entry}`} data-change={kind}>
          {texts.entry(changesTold.kinds[kind], changesTold.parts[part] ?? part, shown(name || part, 120))}
          {fields.length > 0 && (
            <ul>
              {fields.map((field) => (
                <li key={field.field}>{fieldWords(field)}</li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </ul>
  );
}

/** What a field was and is. */
export function fieldWords({ field, was, now }: FieldTold): string {
  const name = shown(field, 80);
  if (was === null) return changesTold.came(name, shown(now ?? '', 200));
  return now === null
    ? changesTold.went(name, shown(was, 200))
    : changesTold.became(name, shown(was, 200), shown(now, 200));
}
