import { render } from 'preact';
import { browser } from 'wxt/browser';
import { saysOutdated } from '../../src/session/outdated';
import { Outdated } from '../../src/view/Outdated';

/**
 * Says so, instead of falling silent, once the browser has replaced the program that this page belongs to. Browsers
 * close such pages as a rule; one that is left over is known by having lost its id, or by what its calls fail with.
 * @param onOutdated is told before the page is drawn over, so that nothing draws there any more
 * @returns looks anew, for whoever has seen something fail: whether it has been replaced
 */
export function whenOutdated(place: 'panel' | 'workbench', onOutdated: () => void): () => boolean {
  let told = false;
  const tell = () => {
    if (told) return;
    told = true;
    onOutdated();
    const root = document.getElementById('root');
    if (root) render(<Outdated place={place} reload={() => location.reload()} />, root);
  };
  const look = (reason?: unknown) => {
    if (saysOutdated(reason) || !hasId()) tell();
    return told;
  };
  addEventListener('focus', () => look());
  document.addEventListener('visibilitychange', () => look());
  addEventListener('unhandledrejection', ({ reason }) => look(reason));
  addEventListener('error', ({ error, message }) => look(error ?? message));
  return look;
}

function hasId(): boolean {
  try {
    return browser.runtime.id !== undefined;
  } catch {
    return false;
  }
}
