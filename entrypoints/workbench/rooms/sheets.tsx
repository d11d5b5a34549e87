import '../../../src/view/style/disclosure.css';
import '../../../src/view/style/drafts.css';
import '../../../src/view/style/likely.css';
import '../../../src/view/style/sheet.css';
import { NOTHING_SEEN } from '../../../src/session/seen';
import { sheetInLink } from '../../../src/session/sheet-link';
import { SheetsRoom } from '../../../src/view/workbench/sheet/SheetsRoom';
import type { SheetsState } from '../../../src/view/workbench/sheet/state';
import { onMessage } from '../../shared/follow-messages';
import type { Bench, OpenRoom } from '../bench';
import { roomState } from '../room-state';
import { sheetsActions } from '../sheets-actions';

export function openRoom({ engine, isPrivate, packs, draw }: Bench): OpenRoom {
  const room = roomState<SheetsState>(
    {
      ...{ sheets: null, chosen: null, told: null, seen: NOTHING_SEEN, language: null, removed: null, saved: false },
      ...{ trouble: null, isPrivate },
    },
    draw,
  );
  const desk = sheetsActions(engine, room.now, room.change);
  const named = (): boolean => {
    const about = sheetInLink(location.hash);
    if (about !== null) void desk.open(about);
    return about !== null;
  };
  addEventListener('hashchange', named);
  onMessage('seen-changed', ({ about }) => void desk.follow(about));
  packs.onShelf(desk.packsChanged);
  if (!named()) void desk.start();
  return { content: () => <SheetsRoom state={room.now()} actions={desk.actions} /> };
}
