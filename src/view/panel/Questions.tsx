import { useState } from 'preact/hooks';
import type { Audit } from '../../audit/types';
import type { Words } from '../../session/words';
import { panelTexts } from '../../text/catalogue/panel';
import { Disclosure } from './Disclosure';
import { Explained } from './Explained';

const texts = panelTexts.questions;

/** Every question once, in the order in which the findings ask them. */
export function questionsOf(audit: Audit): string[] {
  const asked = [...audit.findings.map(({ ask }) => ask), ...audit.nextEvidence.map(({ ask }) => ask)];
  return [...new Set(asked.filter((ask): ask is string => ask !== null && ask !== ''))];
}

/** The message in the advert's language; in English where there are no words in it. */
function messageIn(language: string | null) {
  const primary = language?.toLowerCase().split('-')[0];
  return texts.message[primary === 'de' || primary === 'fr' ? primary : 'en'];
}

/** More questions than these are read by nobody; all of them stand in the message. */
const MOST_SHOWN = 5;

interface Props {
  questions: readonly string[];
  words: Words;
  /** The advert's, in which the questions are. */
  language?: string | null;
  /** Puts a text on the clipboard; answers whether it is there now. */
  copy: (text: string) => Promise<boolean>;
  /** Another heading than the usual one. */
  heading?: string;
}

/** What to ask the seller, and all of it as one message to copy. Nothing is sent. */
export function Questions({ questions, words, language = null, copy, heading = texts.heading }: Props) {
  const [outcome, setOutcome] = useState<'none' | 'copied' | 'refused'>('none');
  if (questions.length === 0) return null;
  const message = messageIn(language)(questions);
  const more = questions.length - MOST_SHOWN;
  return (
    <section class="group" data-part="questions" aria-labelledby="questions">
      <h2 id="questions">{heading}</h2>
      <ul class="questions">
        {questions.slice(0, MOST_SHOWN).map((question) => (
          <li key={question}>
            <Explained text={question} words={words} />
          </li>
        ))}
      </ul>
      {more > 0 && <p class="soft">{texts.more(more)}</p>}
      <button
        type="button"
        class="button"
        data-part="copy"
        onClick={async () => setOutcome((await copy(message)) ? 'copied' : 'refused')}
      >
        {texts.copy}
      </button>
      <p role="status" class="soft" data-part="copy-outcome">
        {outcome === 'copied' && texts.copied}
        {outcome === 'refused' && texts.notCopied}
      </p>
      <Disclosure label={texts.show} part="message">
        <textarea
          class="message"
          readOnly
          rows={questions.length + 6}
          aria-label={texts.messageLabel}
          value={message}
        />
      </Disclosure>
    </section>
  );
}
