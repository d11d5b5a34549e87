import { type PackCard, titleOf } from '../../../session/pack-card';
import { keeperTexts as texts } from '../../../text/catalogue/keeper';
import { lazily } from '../../lazily';
import { shown } from '../../shown';
import type { KeeperActions, KeeperState } from './state';

/** Fetched where somebody keeps a pack. */
const Part = lazily(async () => (await import('./KeeperPart')).KeeperPart);

interface Props {
  pack: PackCard;
  state: KeeperState;
  actions: KeeperActions;
}

/** The way to a pack's desk. One at a time is open. */
export function KeeperDoor({ pack, state, actions }: Props) {
  if (state.pack === pack.id) return <Part state={state} actions={actions} />;
  return (
    <p>
      <button type="button" class="button plain" data-part="keeper-open" onClick={() => actions.open(pack.id)}>
        {texts.open}
        <span class="unseen">: {shown(titleOf(pack), 160)}</span>
      </button>
    </p>
  );
}
