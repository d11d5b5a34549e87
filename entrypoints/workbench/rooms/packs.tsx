import { browser } from 'wxt/browser';
import '../../../src/view/style/packs.css';
import { titleOf } from '../../../src/session/pack-card';
import { DESK_CLOSED, type KeeperState } from '../../../src/view/workbench/keeper/state';
import { OWN_CLOSED, type OwnState } from '../../../src/view/workbench/own/state';
import { PacksRoom } from '../../../src/view/workbench/PacksRoom';
import { REMEMBERED_NONE, type RememberedState } from '../../../src/view/workbench/packs/Remembered';
import { FOLLOWING_NOTHING, type FollowState } from '../../../src/view/workbench/packs/state';
import { onMessage } from '../../shared/follow-messages';
import type { Bench, OpenRoom } from '../bench';
import { followActions } from '../follow-actions';
import { keeperActions } from '../keeper-actions';
import { ownActions } from '../own-actions';
import { rememberedActions } from '../remembered-actions';
import { roomState } from '../room-state';

export function openRoom(bench: Bench): OpenRoom {
  const { packs, draw, isPrivate } = bench;
  const following = roomState<FollowState>(FOLLOWING_NOTHING, draw);
  const own = roomState<OwnState>(OWN_CLOSED, draw);
  const corrections = ownActions(bench, own.now, own.change);
  const desk = roomState<KeeperState>(DESK_CLOSED, draw);
  const keeping = keeperActions(bench, desk.now, desk.change);
  const past = roomState<RememberedState>(REMEMBERED_NONE, draw);
  const remembering = rememberedActions(past.change);
  const title = (id: string) => {
    const card = packs.state().shelf?.find((pack) => pack.id === id);
    return card ? titleOf(card) : id;
  };
  const { actions, read } = followActions(bench, following.now, following.change, title);
  if (!isPrivate) {
    // A pack that is removed or put back takes what is followed with it.
    packs.onShelf(() => {
      void read();
      // Another window may have corrected something too.
      void corrections.read();
      void keeping.read();
      void remembering.read();
    });
    onMessage('following-changed', () => {
      void read();
      void remembering.read();
    });
    browser.permissions.onRemoved.addListener(() => void read());
    browser.permissions.onAdded.addListener(() => void read());
  }
  return {
    content: () => (
      <PacksRoom
        state={packs.state()}
        actions={packs.actions}
        following={following.now()}
        followActions={actions}
        own={own.now()}
        ownActions={corrections.actions}
        desk={desk.now()}
        keeperActions={keeping.actions}
        remembered={past.now()}
        rememberedActions={remembering.actions}
      />
    ),
  };
}
