import type { Answer } from '../../session/answer';
import { enquiryTexts as texts } from '../../text/catalogue/enquiry';
import { likelyTexts } from '../../text/catalogue/likely';
import { NextPart } from '../panel/NextPart';
import type { EnquiryActions } from './EnquiryRoom';

interface Props {
  /** null until the engine has answered. */
  answer: Answer | null;
  /** Something was said since, and the next answer is on its way. */
  pending: boolean;
  /** Something has been said at all. */
  begun: boolean;
  /** The attribute to begin with. */
  first: string | null;
  actions: EnquiryActions;
}

/** A machine by what can be seen of it: one question at a time. */
export function MachinePart({ answer, pending, begun, first, actions }: Props) {
  return (
    <div class="machine" data-part="machine" data-pending={String(pending)}>
      {!answer && <p class="group">{texts.asking}</p>}
      {answer && !answer.ok && (
        <>
          <p role="alert" class="trouble" data-part="broken">
            {texts.broken}
          </p>
          <p class="below">
            <button type="button" class="button plain" data-part="start-again" onClick={() => actions.startAgain()}>
              {likelyTexts.settle.again}
            </button>
          </p>
        </>
      )}
      {answer?.ok && (
        <NextPart
          next={answer.audit.nextEvidence}
          seen={answer.seen}
          words={answer.words}
          pending={pending}
          heading={texts.question}
          first={first}
          keptNote={null}
          onSaw={actions.saw}
          onTakeBack={actions.takeBack}
          onAgain={begun ? () => actions.startAgain() : null}
        />
      )}
    </div>
  );
}
