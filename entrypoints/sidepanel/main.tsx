import { render } from 'preact';
import { browser } from 'wxt/browser';
import '../../src/view/style/tokens.css';
import '../../src/view/style/base.css';
import '../../src/view/style/panel.css';
import type { SessionEvent } from '../../src/session/events';
import { emptySession, type Session, step } from '../../src/session/reducer';
import { type Screen, screenOf } from '../../src/session/screen';
import { Panel } from '../../src/view/panel/Panel';
import { copyText } from '../shared/copy-text';
import { followPacks } from './follow-packs';
import { followReadings } from './follow-readings';
import { followTabs } from './follow-tabs';
import { markOf } from './mark-of';

// Effects on the left, the session in the middle, one screen on the right: nothing else happens in the panel.
let session: Session = emptySession;
let screen: Screen | null = null;

function emit(event: SessionEvent): void {
  session = step(session, event);
  const next = screenOf(session);
  if (next === screen) return;
  if (next.screen === 'broken') console.error(next.error);
  screen = next;
  const root = document.getElementById('root');
  if (root) render(<Panel screen={next} packsPage={browser.runtime.getURL('/workbench.html')} copy={copyText} />, root);
  markOf(next);
}

const { id: windowId } = await browser.windows.getCurrent();
if (windowId !== undefined) {
  followTabs(windowId, emit);
  followReadings(windowId, emit);
}
followPacks(emit);
