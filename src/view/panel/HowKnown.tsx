import type { Finding } from '../../audit/types';
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
        {known.map(({ pack, entry }) => (
          <dd key={`${pack}/${entry}`}>
            {packName(pack, words)} <code>{entry.startsWith(`${pack}/`) ? entry : `${pack}/${entry}`}</code>
          </dd>
        ))}
      </dl>
    </Disclosure>
  );
}

/** A pack by its title and edition, and whether it is invented. */
export function packName(id: string, words: Words): string {
  const pack = words.packs.get(id);
  if (!pack) return texts.unknownPack(id);
  const name = texts.fromPack(shown(pack.title, 120), pack.edition);
  return pack.demo ? texts.packs.invented(name) : name;
}
