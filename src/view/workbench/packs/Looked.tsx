import { followTexts as texts } from '../../../text/catalogue/follow';
import { IssueList } from '../IssueList';
import { Offer } from './Offer';
import type { FollowActions, Looking } from './state';

/** How far looking has come, and what came of it. */
export function Looked({ looking, actions }: { looking: Looking | null; actions: FollowActions }) {
  const step = looking?.step ?? null;
  return (
    <div data-part="looked" data-state={step?.state ?? 'none'}>
      <div role="status">{step && <Words step={step} />}</div>
      {step && isUnderWay(step) && (
        <div class="progress">
          {step.state === 'fetching' ? (
            <progress aria-label={texts.progress} value={step.done} max={Math.max(step.all, 1)} />
          ) : (
            <progress aria-label={texts.progress} />
          )}
          <button type="button" class="button plain" data-part="look-cancel" onClick={actions.cancel}>
            {texts.cancel}
          </button>
        </div>
      )}
      {step?.state === 'refused' && <IssueList issues={step.issues} />}
      {step?.state === 'offered' && (
        <Offer told={step.told} isFollowed={looking?.pack !== null} onTake={actions.take} onLeave={actions.leave} />
      )}
    </div>
  );
}

type Step = Looking['step'];

function isUnderWay({ state }: Step): boolean {
  return state === 'asking' || state === 'fetching' || state === 'checking';
}

function Words({ step }: { step: Step }) {
  switch (step.state) {
    case 'asking':
      return <p>{texts.asking}</p>;
    case 'fetching':
      return <p>{texts.fetching(kB(step.done), kB(step.all))}</p>;
    case 'checking':
      return <p>{texts.checking}</p>;
    case 'nothing-new':
      return <p>{texts.nothingNew(step.edition)}</p>;
    case 'failed':
    case 'not-begun':
      return (
        <p class="trouble" data-part="look-problem" data-problem={step.problem}>
          {texts.problems[step.problem]}
        </p>
      );
    case 'refused':
      return <p class="trouble">{texts.refused}</p>;
    default:
      return null;
  }
}

/** Thousands of bytes, one at least. */
export function kB(bytes: number): number {
  return Math.max(1, Math.round(bytes / 1000));
}
