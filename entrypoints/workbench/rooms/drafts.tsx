import '../../../src/view/style/findings.css';
import '../../../src/view/style/likely.css';
import '../../../src/view/style/time-line.css';
import '../../../src/view/style/drafts.css';
import { NOTHING_SEEN } from '../../../src/session/seen';
import { DraftsRoom, type DraftsState } from '../../../src/view/workbench/DraftsRoom';
import { onMessage } from '../../shared/follow-messages';
import type { Bench, OpenRoom } from '../bench';
import { draftsActions } from '../drafts-actions';
import { roomState } from '../room-state';

export function openRoom({ engine, isPrivate, handed, packs, draw }: Bench): OpenRoom {
  const room = roomState<DraftsState>(
    {
      ...{ drafts: null, chosen: null, sitting: 0, seen: NOTHING_SEEN, answered: null, kept: 'blank', copied: 'none' },
      ...{ removed: null, parted: null, trouble: null, isPrivate },
    },
    draw,
  );
  const drafts = draftsActions(engine, room.now, room.change);
  onMessage('drafts-changed', () => void drafts.follow());
  packs.onShelf(drafts.packsChanged);
  const taken = () => {
    if (!handed.draft) return;
    drafts.begin(handed.draft.draft, handed.draft.seen);
    handed.draft = null;
  };
  void drafts.start().then(() => {
    taken();
    addEventListener('hashchange', taken);
  });
  return { content: () => <DraftsRoom state={room.now()} actions={drafts.actions} />, close: drafts.flush };
}
