import type { Finding } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts as texts } from '../../text/catalogue/panel';
import { findingAnchor } from '../finding-anchor';
import { Explained, useExplained } from './Explained';
import { HowKnown } from './HowKnown';
import { SaidKnown } from './SaidKnown';
import { TermNote } from './TermNote';

export interface FindingProps {
  finding: Finding;
  /** Language tag of the advert, for its quotes. */
  language: string | null;
  words: Words;
  /** The question to a seller stands beside each finding; elsewhere all of them stand together, and here none. */
  asks: boolean;
}

interface TagProps extends FindingProps {
  /** The finding that stands right above it, whose sources need not be told again. */
  above: Finding | null;
}

/** One finding as a tag: a sentence, its two halves, and behind disclosures what the words mean and how it is known. */
export function FindingTag({ finding, language, words, asks, above }: TagProps) {
  const term = finding.attribute ? words.terms.get(finding.attribute) : null;
  const { content, note } = useExplained({ text: finding.text, words });
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
        <h3 class={finding.known.some(({ text }) => text === finding.text) ? 'tag-text told' : 'tag-text'} dir="auto">
          {content}
        </h3>
        {note}
        <SaidKnown finding={finding} language={language} words={words} above={above} />
        {asks && finding.ask && finding.ask !== above?.ask && (
          <p class="ask">
            <b>{texts.ask}</b> <Explained text={finding.ask} words={words} />
          </p>
        )}
        <div class="mores">
          {term && <TermNote term={term} />}
          <HowKnown finding={finding} words={words} />
        </div>
      </div>
    </li>
  );
}
