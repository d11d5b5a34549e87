import type { Answer, Answered } from '../../session/answer';
import { enquiryTexts as texts } from '../../text/catalogue/enquiry';
import { FindingGroup } from '../panel/FindingGroup';
import { hasKindWords, KindWords } from '../panel/KindWords';
import { LikelyPart } from '../panel/LikelyPart';
import { NextPart } from '../panel/NextPart';
import { Questions, questionsOf } from '../panel/Questions';
import { shownFindings } from '../panel/summary';
import type { EnquiryActions } from './EnquiryRoom';

interface Props {
  /** null until the engine has answered. */
  answer: Answer | null;
  /** Something was said since, and the next answer is on its way. */
  pending: boolean;
  /** Something has been said at all: before that nothing is made of it. */
  begun: boolean;
  /** The attribute to begin with. */
  first: string | null;
  actions: EnquiryActions;
}

/** A machine by what can be seen of it: one question at a time, and what comes of the answers. */
export function MachinePart({ answer, pending, begun, first, actions }: Props) {
  if (!answer) return <p class="room-part">{texts.asking}</p>;
  return (
    <div data-part="machine" data-pending={String(pending)}>
      {answer.ok ? (
        <>
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
          />
          {begun && <Outcome answer={answer} actions={actions} />}
        </>
      ) : (
        <p role="alert" class="trouble" data-part="broken">
          {texts.broken}
        </p>
      )}
      {begun && (
        <p class="below">
          <button type="button" class="button plain" data-part="start-again" onClick={actions.startAgain}>
            {texts.again}
          </button>
        </p>
      )}
    </div>
  );
}

function Outcome({ answer: { audit, words, kind, listing }, actions }: { answer: Answered; actions: EnquiryActions }) {
  return (
    <>
      <LikelyPart audit={audit} words={words} kind={null} />
      {kind && hasKindWords(kind) && (
        <section class="group" data-part="kind" aria-labelledby="kind">
          <h2 id="kind">{texts.kind}</h2>
          <KindWords kind={kind} />
        </section>
      )}
      <FindingGroup
        standing="caution"
        findings={shownFindings(audit, 'caution')}
        language={listing.language}
        words={words}
      />
      <Questions questions={questionsOf(audit)} copy={actions.copyText} />
    </>
  );
}
