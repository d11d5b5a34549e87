import { render } from 'preact';
import { browser } from 'wxt/browser';
import '../../src/view/style/tokens.css';
import '../../src/view/style/base.css';
import '../../src/view/style/findings.css';
import '../../src/view/style/likely.css';
import '../../src/view/style/time-line.css';
import '../../src/view/style/panel.css';
import type { SessionEvent } from '../../src/session/events';
import { emptySession, type Session, step } from '../../src/session/reducer';
import { screenOf } from '../../src/session/screen';
import { wantedAudit, wantedSeen } from '../../src/session/wanted';
import { panelTexts } from '../../src/text/catalogue/panel';
import { Panel } from '../../src/view/panel/Panel';
import { copyText } from '../shared/copy-text';
import { onMessage } from '../shared/follow-messages';
import { saveFile } from '../shared/save-file';
import { whenOutdated } from '../shared/when-outdated';
import { startEngine } from './engine';
import { followReadings } from './follow-readings';
import { followTabs } from './follow-tabs';
import { makeSheet } from './make-sheet';
import { markOf } from './mark-of';
import { seenKeeper } from './seen-keeper';

// Effects on the left, the session in the middle, one screen on the right: nothing else happens in the panel.
let session: Session = emptySession;
let outdated = false;
document.title = panelTexts.title;
const workbench = browser.runtime.getURL('/workbench.html');

function emit(event: SessionEvent): void {
  const before = session;
  session = step(session, event);
  if (session !== before) show();
}

function show(): void {
  if (outdated) return;
  const about = wantedSeen(session);
  if (about !== null) keeper.find(about);
  const next = wantedAudit(session);
  if (next) engine.audit(next.wanted, next.reading, next.seen);
  const screen = screenOf(session);
  if (screen.screen === 'broken') console.error(screen.problem);
  const root = document.getElementById('root');
  if (root)
    render(
      <Panel
        screen={screen}
        workbench={workbench}
        copy={copyText}
        save={saveFile}
        makeSheet={incognito ? null : makeSheet}
        seen={keeper}
        isPrivate={incognito}
      />,
      root,
    );
  markOf(screen);
}

whenOutdated('panel', () => {
  outdated = true;
});
const { id: windowId, incognito } = await browser.windows.getCurrent();
const keeper = seenKeeper(emit, incognito);
const engine = startEngine(emit);
onMessage('packs-changed', () => engine.packsChanged());
onMessage('prices-changed', () => engine.packsChanged());
onMessage('seen-changed', ({ about }) => keeper.refresh(about));
if (windowId !== undefined) {
  followTabs(windowId, emit);
  followReadings(windowId, emit);
}
show();
