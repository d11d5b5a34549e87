import { useRef } from 'preact/hooks';
import { enquiryTexts } from '../../text/catalogue/enquiry';
import { Disclosure } from '../panel/Disclosure';
import type { EnquiryActions, EnquiryState } from './EnquiryRoom';

const texts = enquiryTexts.said;

interface Props {
  state: EnquiryState;
  actions: EnquiryActions;
  /** It is settled what kind of thing is asked about. */
  hasThing: boolean;
}

/** What somebody says of the machine, as it was marked on a page or is pasted here; folded until there is some. */
export function SaidPart({ state: { text, asked }, actions, hasThing }: Props) {
  // It isn't closed again under the hands of whoever has emptied it.
  const opened = useRef(false);
  if (asked.text !== '') opened.current = true;
  return (
    <div class="room-part" data-taken={String(asked.text !== '')}>
      <Disclosure label={texts.heading} inside={texts.inside} part="said" open={opened.current}>
        <form
          data-part="said-form"
          onSubmit={(event) => {
            event.preventDefault();
            actions.takeText();
          }}
        >
          <p class="soft" id="said-intro">
            {texts.intro}
          </p>
          <textarea
            id="enquiry-said"
            class="message"
            rows={7}
            dir="auto"
            // Chromium would fetch a dictionary from its maker to check the spelling.
            spellcheck={false}
            aria-label={texts.label}
            aria-describedby="said-intro"
            value={text}
            onInput={(event) => actions.writeText(event.currentTarget.value)}
          />
          <p class="below">
            <button type="submit" class="button" data-part="take-said">
              {texts.take}
            </button>
          </p>
          <p role="status" class="soft" data-part="said-state">
            {asked.text !== '' && (hasThing ? texts.taken : texts.which)}
          </p>
        </form>
      </Disclosure>
    </div>
  );
}
