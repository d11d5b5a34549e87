import { panelTexts as texts } from '../../text/catalogue/panel';
import { findingAnchor } from '../finding-anchor';
import { langOf, shown } from '../shown';
import { Disclosure } from './Disclosure';
import { Explained } from './Explained';
import type { FindingProps } from './FindingTag';
import { SaidKnown } from './SaidKnown';

/** Quotes that stand before what is to be minded of them. */
const MOST = 2;

/** Words that a pack weighs by themselves: the words, and what to mind of them; where they stand is opened. */
export function WordsToMind({ finding, language, words }: FindingProps) {
  const quotes = new Map(finding.said.map(({ quote }) => [quote.toLowerCase(), quote]));
  return (
    <li
      class="mind minded-words"
      id={findingAnchor(finding.id)}
      tabIndex={-1}
      data-finding={finding.check}
      data-standing={finding.standing}
    >
      <h3 class="minded" lang={langOf(language)}>
        {[...quotes.values()].slice(0, MOST).map((quote) => (
          <q key={quote} class="quote" dir="auto">
            {shown(quote, 60)}
          </q>
        ))}
      </h3>
      <p>
        <Explained text={finding.text} words={words} />
      </p>
      <Disclosure label={texts.how} part="how">
        <SaidKnown finding={finding} language={language} words={words} />
      </Disclosure>
    </li>
  );
}
