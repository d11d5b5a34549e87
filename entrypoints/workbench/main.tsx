import { render } from 'preact';
import { browser } from 'wxt/browser';
import '../../src/view/style/tokens.css';
import '../../src/view/style/base.css';
import '../../src/view/style/findings.css';
import '../../src/view/style/likely.css';
import '../../src/view/style/workbench.css';
import '../../src/view/style/drafts.css';
import '../../src/view/style/enquiry.css';
import { NOTHING_ASKED } from '../../src/session/machine-asked';
import { NOTHING_SEEN } from '../../src/session/seen';
import { workbenchTexts } from '../../src/text/catalogue/workbench';
import { roomOf } from '../../src/view/workbench/rooms';
import { type BenchState, Workbench } from '../../src/view/workbench/Workbench';
import { onDraftsChanged, onPacksChanged } from '../shared/follow-messages';
import { whenOutdated } from '../shared/when-outdated';
import { startBenchEngine } from './bench-engine';
import { draftsActions } from './drafts-actions';
import { enquiryActions } from './enquiry-actions';
import { packsActions } from './packs-actions';

// Effects by room, one state, one page: a room's actions tell what changes in that room, and nothing else draws.
const isPrivate = browser.extension.inIncognitoContext;
let state: BenchState = {
  room: roomOf(location.hash),
  packs: { shelf: null, trouble: null, outcome: { state: 'none' }, removed: null, isPrivate },
  drafts: {
    drafts: null,
    chosen: null,
    seen: NOTHING_SEEN,
    answered: null,
    kept: 'blank',
    copied: 'none',
    removed: null,
    trouble: null,
    isPrivate,
  },
  enquiry: { asked: NOTHING_ASKED, told: null, serial: '', name: '', pack: null, numbered: null, trouble: null },
};
let outdated = false;
document.title = workbenchTexts.title;

function show(change: Partial<BenchState>): void {
  state = { ...state, ...change };
  if (outdated) return;
  const root = document.getElementById('root');
  if (root) render(<Workbench state={state} actions={actions} />, root);
}

whenOutdated('workbench', () => {
  outdated = true;
});
const engine = startBenchEngine(() => show({ packs: { ...state.packs, trouble: 'broken' } }));
const drafts = draftsActions(
  engine,
  () => state.drafts,
  (change) => show({ drafts: { ...state.drafts, ...change } }),
);
const enquiry = enquiryActions(
  engine,
  () => state.enquiry,
  (change) => show({ enquiry: { ...state.enquiry, ...change } }),
);
const packs = packsActions(
  engine,
  (change) => {
    show({ packs: { ...state.packs, ...change } });
    if (change.shelf) enquiry.shelfRead(change.shelf);
  },
  drafts.packsChanged,
);
const actions = { packs: packs.actions, drafts: drafts.actions, enquiry: enquiry.actions };

addEventListener('hashchange', () => {
  show({ room: roomOf(location.hash) });
  scrollTo(0, 0);
});
onPacksChanged(packs.follow);
onDraftsChanged(drafts.follow);
show({});
packs.start();
drafts.start();
