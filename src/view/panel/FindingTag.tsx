import type { Finding } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { findingAnchor } from '../finding-anchor';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';
import { SaidKnown } from './SaidKnown';
import { TermNote } from './TermNote';

/** One finding as a tag: a sentence, its two halves, and behind disclosures what the words mean and how it is known. */
export function FindingTag({ finding, language, words }: { finding: Finding; language: string | null; words: Words }) {
  const term = finding.attribute ? words.terms.get(finding.attribute) : null;
  return (
    <li
      class="tag"
      id={findingAnchor(finding.id)}
      tabIndex={-1}
      data-finding={finding.check}
      data-standing={finding.standing}
    >
      <span class="tag-mark" aria-hidden="true">
        {texts.groups[finding.standing].mark}
      </span>
      <div class="tag-body">
        <h3 class="tag-text" dir="auto">
          {shown(finding.text)}
        </h3>
        <SaidKnown finding={finding} language={language} words={words} />
        {finding.ask && (
          <p class="ask">
            <b>{texts.ask}</b> {shown(finding.ask)}
          </p>
        )}
        {term && <TermNote term={term} />}
        <Disclosure label={texts.how} part="how">
          <dl class="facts">
            <dt>{texts.howCheck}</dt>
            <dd>{texts.checks[finding.check]}</dd>
            {finding.said.length > 0 && <dt>{texts.howPlace}</dt>}
            {finding.said.map(({ field, start, end }) => (
              <dd key={`${field}${start}`}>{texts.howPlaceOf(texts.fields[field], start, end)}</dd>
            ))}
            {finding.known.length > 0 && <dt>{texts.howEntry}</dt>}
            {finding.known.map(({ pack, entry }) => (
              <dd key={`${pack}/${entry}`}>
                <code>{entry.startsWith(`${pack}/`) ? entry : `${pack}/${entry}`}</code>
              </dd>
            ))}
          </dl>
        </Disclosure>
      </div>
    </li>
  );
}
