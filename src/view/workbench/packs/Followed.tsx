import type { KeptSubscription } from '../../../keep/schema';
import { followTexts } from '../../../text/catalogue/follow';
import { Looked } from './Looked';
import type { FollowActions, FollowState } from './state';

const texts = followTexts.followed;

interface Props {
  subscription: KeptSubscription;
  /** The pack's title, for buttons of which several stand on the page. */
  title: string;
  expires: string | null;
  state: FollowState;
  actions: FollowActions;
}

/** Of a pack that is followed: where, what the last check came to, and what can be done about it. */
export function Followed({ subscription, title, expires, state, actions }: Props) {
  const { id, address, finding } = subscription;
  const noLeave = state.noLeave.has(id);
  const isChecking = state.checking === id;
  const looking = state.looking?.pack === id ? state.looking : null;
  return (
    <div
      class="followed"
      data-part="followed"
      data-finding={noLeave ? 'no-leave' : finding.state}
      data-checking={String(isChecking)}
    >
      <p>{texts.at(new URL(address).host)}</p>
      <div role="status">
        <p class={isWorrying(subscription, noLeave) ? 'trouble' : undefined} data-part="finding">
          {noLeave ? texts.noLeave : wordsOf(subscription, expires)}
        </p>
        {isChecking && <p>{texts.checking}</p>}
      </div>
      <div class="pack-actions">
        {(finding.state === 'newer' || finding.state === 'other-text') && (
          <button type="button" class="button" data-part="see" onClick={() => actions.see(id)}>
            {finding.state === 'newer' ? texts.see(finding.edition) : texts.seeOther}
            <span class="unseen">: {title}</span>
          </button>
        )}
        <button type="button" class="button plain" data-part="check" onClick={() => actions.check(id)}>
          {texts.check}
          <span class="unseen">: {title}</span>
        </button>
        <button type="button" class="button plain" data-part="stop" onClick={() => actions.stop(id)}>
          {texts.stop}
          <span class="unseen">: {title}</span>
        </button>
      </div>
      <Looked looking={looking} actions={actions} />
    </div>
  );
}

function isWorrying({ finding: { state } }: KeptSubscription, noLeave: boolean): boolean {
  return noLeave || state === 'older' || state === 'other-text' || state === 'overdue';
}

function wordsOf({ finding, checkedAt, triedAt, left }: KeptSubscription, expires: string | null): string {
  if (finding.state === 'failed') {
    const why = followTexts.problems[finding.problem as keyof typeof followTexts.problems] ?? '';
    return texts.failed(moment(triedAt), why);
  }
  const checked = checkedAt === null ? texts.never : texts.checked(moment(checkedAt));
  switch (finding.state) {
    case 'never':
      return checked;
    case 'same':
      return `${checked} ${texts.same}`;
    case 'overdue':
      return `${checked} ${texts.overdue(expires ?? '')}`;
    case 'newer':
      return `${checked} ${finding.edition === left ? texts.left(left) : texts.newer(finding.edition)}`;
    case 'older':
      return `${checked} ${texts.older(finding.edition)}`;
    case 'other-text':
      return `${checked} ${texts.otherText(finding.edition)}`;
  }
}

/** An instant as this browser's user writes dates and times. */
function moment(instant: string | null): string {
  return instant === null
    ? ''
    : new Date(instant).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
}
