import { render } from 'preact';
import '../../src/view/style/tokens.css';
import '../../src/view/style/base.css';
import '../../src/view/style/workbench.css';
import { workbenchTexts } from '../../src/text/catalogue/workbench';
import { type BenchState, Workbench } from '../../src/view/workbench/Workbench';
import { benchActions } from './actions';

let state: BenchState = { shelf: null, trouble: null, outcome: { state: 'none' }, removed: null };

document.title = workbenchTexts.title;

const { actions, start } = benchActions((change) => {
  state = { ...state, ...change };
  const root = document.getElementById('root');
  if (root) render(<Workbench state={state} actions={actions} />, root);
});
start();
