import { useState } from 'preact/hooks';
import type { Answered } from '../../session/answer';
import type { EnquiryAnswer } from '../../session/enquiry';
import { writtenAnswer } from '../../session/written-answer';
import { enquiryTexts } from '../../text/catalogue/enquiry';
import { Disclosure } from '../panel/Disclosure';

const texts = enquiryTexts.written;

interface Props {
  answer: Answered;
  /** What the tables say of its number, or null. */
  number: EnquiryAnswer | null;
  asOf: string;
  copy: (text: string) => Promise<boolean>;
  /** Goes on as a seller's draft. */
  onDraft: () => void;
}

/** The whole answer as plain text, to copy or to mark by hand; and the way on for whoever sells the machine. */
export function WrittenAnswer({ answer, number, asOf, copy, onDraft }: Props) {
  const text = writtenAnswer(answer, number, asOf);
  const [outcome, setOutcome] = useState<'none' | 'copied' | 'refused'>('none');
  return (
    <section class="room-part" data-part="written" aria-labelledby="written">
      <h2 id="written">{texts.heading}</h2>
      <p>{texts.intro}</p>
      <p class="below">
        <button
          type="button"
          class="button"
          data-part="copy-answer"
          onClick={async () => setOutcome((await copy(text)) ? 'copied' : 'refused')}
        >
          {texts.copy}
        </button>
      </p>
      <p role="status" class="soft" data-part="copy-answer-outcome">
        {outcome === 'copied' && texts.copied}
        {outcome === 'refused' && texts.notCopied}
      </p>
      <Disclosure label={texts.show} part="written-text">
        <textarea class="message" readOnly rows={16} aria-label={texts.label} value={text} />
      </Disclosure>
      <p class="below">{enquiryTexts.goOn.intro}</p>
      <p class="below">
        <button type="button" class="button plain" data-part="to-draft" onClick={() => onDraft()}>
          {enquiryTexts.goOn.button}
        </button>
      </p>
    </section>
  );
}
