import type { Finding, Known } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';

/** How a finding is known, for whoever wants to follow it: what was compared, where it stands, and in which packs. */
export function HowKnown({ finding, words }: { finding: Finding; words: Words }) {
  const { check, said, known } = finding;
  return (
    <Disclosure label={texts.how} part="how">
      <dl class="facts">
        <dt>{texts.howCheck}</dt>
        <dd>{texts.checks[check]}</dd>
        {said.length > 0 && <dt>{texts.howPlace}</dt>}
        {said.map(({ field, start, end }) => (
          <dd key={`${field}${start}`}>{texts.howPlaceOf(texts.fields[field], start, end)}</dd>
        ))}
        {known.length > 0 && <dt>{texts.howEntry}</dt>}
        {byPack(known).map(({ pack, entries }) => (
          <dd key={pack}>
            {packName(pack, words)}
            {entries.map((entry) => (
              <code key={entry} class="entry">
                {entry}
              </code>
            ))}
          </dd>
        ))}
      </dl>
    </Disclosure>
  );
}

/** Each pack once, with its entries by their whole names. */
function byPack(known: readonly Known[]): { pack: string; entries: string[] }[] {
  const packs = new Map<string, Set<string>>();
  for (const { pack, entry } of known) {
    const name = entry.startsWith(`${pack}/`) ? entry : `${pack}/${entry}`;
    packs.set(pack, (packs.get(pack) ?? new Set()).add(name));
  }
  return [...packs].map(([pack, entries]) => ({ pack, entries: [...entries] }));
}

/** A pack by its title and edition, and whether it is invented. */
export function packName(id: string, words: Words): string {
  const pack = words.packs.get(id);
  if (!pack) return texts.unknownPack(id);
  const name = texts.fromPack(shown(pack.title, 120), pack.edition);
  return pack.demo ? texts.packs.invented(name) : name;
}
