import { type PackCard, titleOf } from '../../../session/pack-card';
import { ownTexts as texts } from '../../../text/catalogue/own';
import { lazily } from '../../lazily';
import { shown } from '../../shown';
import type { OwnActions, OwnState } from './state';

/** Fetched where somebody corrects something. */
const Part = lazily(async () => (await import('./OwnPart')).OwnPart);

interface Props {
  pack: PackCard;
  state: OwnState;
  actions: OwnActions;
}

/** The way to one's own corrections of a pack. One at a time is open. */
export function OwnDoor({ pack, state, actions }: Props) {
  if (state.pack === pack.id) return <Part state={state} actions={actions} />;
  return (
    <p>
      <button type="button" class="button plain" data-part="own-open" onClick={() => actions.open(pack.id)}>
        {texts.open}
        <span class="unseen">: {shown(titleOf(pack), 160)}</span>
      </button>
    </p>
  );
}
