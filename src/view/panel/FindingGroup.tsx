import type { Finding, Standing } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { FindingTag } from './FindingTag';

interface Props {
  standing: Standing;
  findings: readonly Finding[];
  /** Language tag of the advert, for its quotes. */
  language: string | null;
  words: Words;
}

/** All findings of one standing; nothing where there are none. */
export function FindingGroup({ standing, findings, language, words }: Props) {
  if (findings.length === 0) return null;
  const { heading, explain } = texts.groups[standing];
  return (
    <section class="group" data-group={standing} aria-labelledby={`group-${standing}`}>
      <h2 id={`group-${standing}`}>{heading}</h2>
      <p class="soft">{explain}</p>
      <ul class="tags">
        {findings.map((finding) => (
          <FindingTag key={finding.id} finding={finding} language={language} words={words} />
        ))}
      </ul>
    </section>
  );
}
