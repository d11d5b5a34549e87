import { useState } from 'preact/hooks';
import { enquiryTexts } from '../../text/catalogue/enquiry';
import { Disclosure } from '../panel/Disclosure';

const texts = enquiryTexts.written;

/** The whole answer as plain text, to copy or to mark by hand. */
export function WrittenAnswer({ text, copy }: { text: string; copy: (text: string) => Promise<boolean> }) {
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
    </section>
  );
}
