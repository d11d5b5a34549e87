import { render } from 'preact';
import { browser } from 'wxt/browser';
import '../../src/view/style/tokens.css';
import '../../src/view/style/base.css';
import '../../src/view/style/workbench.css';
import type { PackCard } from '../../src/session/pack-card';
import { workbenchTexts as texts } from '../../src/text/catalogue/workbench';
import { BegunAnew } from '../../src/view/workbench/BegunAnew';
import type { PacksState } from '../../src/view/workbench/PacksRoom';
import { type Room, roomOf } from '../../src/view/workbench/rooms';
import { TroubleNote } from '../../src/view/workbench/TroubleNote';
import { Workbench } from '../../src/view/workbench/Workbench';
import { onMessage } from '../shared/follow-messages';
import { whenOutdated } from '../shared/when-outdated';
import type { Bench, OpenRoom } from './bench';
import { startBenchEngine } from './bench-engine';
import { packsActions } from './packs-actions';
import { lostOn, putAway } from './storage-seen';

// The shelf of packs, of which every room speaks, and a frame for the rooms. Each room is fetched when it is first
// opened, and is at home with its own state from then on: what is typed in one waits there while another is in front.
const fetchRoom: Record<Room, () => Promise<{ openRoom: (bench: Bench) => OpenRoom }>> = {
  drafts: () => import('./rooms/drafts'),
  enquiry: () => import('./rooms/enquiry'),
  sheets: () => import('./rooms/sheets'),
  prices: () => import('./rooms/prices'),
  packs: () => import('./rooms/packs'),
};

const isPrivate = browser.extension.inIncognitoContext;
let shelf: PacksState = { shelf: null, trouble: null, outcome: { state: 'none' }, removed: null, isPrivate };
const shelfTold: ((cards: readonly PackCard[]) => void)[] = [];
const rooms = new Map<Room, OpenRoom | 'failed'>();
let outdated = false;
/** The day on which all that was kept here was found to be gone. */
let lost: string | null = null;
document.title = texts.title;

function draw(): void {
  if (outdated) return;
  const room = roomOf(location.hash);
  const root = document.getElementById('root');
  const bench = (
    <Workbench room={room}>
      {lost && <BegunAnew day={lost} onRead={read} />}
      {contentOf(rooms.get(room))}
    </Workbench>
  );
  if (root) render(bench, root);
}

function read(): void {
  lost = null;
  draw();
  void putAway();
}

function contentOf(room: OpenRoom | 'failed' | undefined) {
  if (room === undefined) return <p role="status">{texts.rooms.opening}</p>;
  return room === 'failed' ? <TroubleNote trouble="broken" /> : room.content();
}

async function open(room: Room): Promise<void> {
  draw();
  if (rooms.has(room)) return;
  try {
    const { openRoom } = await fetchRoom[room]();
    // Its door may have been pressed twice.
    if (!rooms.has(room)) rooms.set(room, openRoom(bench));
  } catch (error) {
    console.error(error);
    // A script of ours that can't be fetched is one of a program that is no longer there, or a fault of ours.
    if (!whetherOutdated()) rooms.set(room, 'failed');
  }
  draw();
}

function showPacks(change: Partial<PacksState>): void {
  shelf = { ...shelf, ...change };
  draw();
  if (change.shelf) for (const tell of shelfTold) tell(change.shelf);
}

const whetherOutdated = whenOutdated('workbench', () => {
  outdated = true;
  return Promise.all([...rooms.values()].map((room) => room !== 'failed' && room.close?.()));
});
const engine = startBenchEngine(() => showPacks({ trouble: 'broken' }));
const packs = packsActions(engine, showPacks);
const bench: Bench = {
  engine,
  isPrivate,
  handed: { draft: null },
  draw,
  packs: {
    state: () => shelf,
    actions: packs.actions,
    onShelf(tell) {
      shelfTold.push(tell);
      if (shelf.shelf) tell(shelf.shelf);
    },
    changed: packs.changed,
  },
};

addEventListener('hashchange', () => {
  void open(roomOf(location.hash));
  scrollTo(0, 0);
});
onMessage('packs-changed', () => packs.follow());
void open(roomOf(location.hash));
packs.start();
void lostOn().then((day) => {
  lost = day;
  if (lost) draw();
});
