import { render } from 'preact';
import { browser } from 'wxt/browser';
import { Outdated } from '../../src/view/Outdated';

/**
 * Says so, instead of falling silent, once the browser has replaced the program that this page belongs to. Browsers
 * close such pages as a rule; one that is left over is known by having lost its id, or by what its calls fail with.
 * @param onOutdated is told before the page is drawn over, so that nothing draws there any more
 */
export function whenOutdated(place: 'panel' | 'workbench', onOutdated: () => void): void {
  let told = false;
  const tell = () => {
    if (told) return;
    told = true;
    onOutdated();
    const root = document.getElementById('root');
    if (root) render(<Outdated place={place} reload={() => location.reload()} />, root);
  };
  const check = () => {
    if (!isOurs()) tell();
  };
  addEventListener('focus', check);
  document.addEventListener('visibilitychange', check);
  addEventListener('unhandledrejection', ({ reason }) => {
    if (/context invalidated/i.test(String(reason))) tell();
  });
}

function isOurs(): boolean {
  try {
    return browser.runtime.id !== undefined;
  } catch {
    return false;
  }
}
