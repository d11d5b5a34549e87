import '../../../src/view/style/findings.css';
import '../../../src/view/style/likely.css';
import '../../../src/view/style/time-line.css';
import '../../../src/view/style/drafts.css';
import { NOTHING_SEEN } from '../../../src/session/seen';
import { DraftsRoom, type DraftsState } from '../../../src/view/workbench/DraftsRoom';
import { onMessage } from '../../shared/follow-messages';
import type { Bench, OpenRoom } from '../bench';
import { draftsActions } from '../drafts-actions';

export function openRoom({ engine, isPrivate, handed, packs, draw }: Bench): OpenRoom {
  let state: DraftsState = {
    ...{ drafts: null, chosen: null, sitting: 0, seen: NOTHING_SEEN, answered: null, kept: 'blank', copied: 'none' },
    ...{ removed: null, parted: null, trouble: null, isPrivate },
  };
  const drafts = draftsActions(
    engine,
    () => state,
    (change) => {
      state = { ...state, ...change };
      draw();
    },
  );
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
  return { content: () => <DraftsRoom state={state} actions={drafts.actions} />, close: drafts.flush };
}
