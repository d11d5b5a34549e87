import { render } from 'preact';
import '../../src/view/style/tokens.css';
import '../../src/view/style/base.css';
import '../../src/view/style/workbench.css';
import { workbenchTexts } from '../../src/text/catalogue/workbench';
import { roomOf } from '../../src/view/workbench/rooms';
import { type BenchState, Workbench } from '../../src/view/workbench/Workbench';
import { startBenchEngine } from './bench-engine';
import { packsActions } from './packs-actions';

// Effects by room, one state, one page: a room's actions tell what changes in that room, and nothing else draws.
let state: BenchState = {
  room: roomOf(location.hash),
  packs: { shelf: null, trouble: null, outcome: { state: 'none' }, removed: null },
};
document.title = workbenchTexts.title;

function show(change: Partial<BenchState>): void {
  state = { ...state, ...change };
  const root = document.getElementById('root');
  if (root) render(<Workbench state={state} actions={actions} />, root);
}

const engine = startBenchEngine(() => show({ packs: { ...state.packs, trouble: 'broken' } }));
const packs = packsActions(
  engine,
  (change) => show({ packs: { ...state.packs, ...change } }),
  () => {},
);
const actions = { packs: packs.actions };

addEventListener('hashchange', () => {
  show({ room: roomOf(location.hash) });
  scrollTo(0, 0);
});
show({});
packs.start();
