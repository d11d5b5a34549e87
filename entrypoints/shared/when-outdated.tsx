import { render } from 'preact';
import { browser } from 'wxt/browser';
import { saysOutdated } from '../../src/session/outdated';
import { settledWithin } from '../../src/session/settled-within';
import { Outdated } from '../../src/view/Outdated';

/** Milliseconds for which a reload waits until the last words are kept; who presses its button must not wait for ever. */
const LAST_WORDS = 3_000;

/**
 * Says so, instead of falling silent, once the browser has replaced the program that this page belongs to. Browsers
 * close such pages as a rule; one that is left over is known by having lost its id, or by what its calls fail with.
 * @param onOutdated is told before the page is drawn over, so that nothing draws there any more; the page
 *   is not reloaded before what it answers is done
 * @returns looks anew, for whoever has seen something fail: whether it has been replaced
 */
export function whenOutdated(place: 'panel' | 'workbench', onOutdated: () => unknown): () => boolean {
  let told = false;
  const tell = () => {
    if (told) return;
    told = true;
    const closed = settledWithin(Promise.resolve(onOutdated()), LAST_WORDS);
    const reload = () => void closed.then(() => location.reload());
    const root = document.getElementById('root');
    if (root) render(<Outdated place={place} reload={reload} />, root);
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
