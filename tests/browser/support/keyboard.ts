import { setTimeout as sleep } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import type { Tab } from '../../../src/cli/demo/driven';
import { TELLS_OF_CHOOSER } from './differences';

/** What a keyboard does to one of our pages, in a tab or in the panel. */
export interface Keys {
  press(key: string): Promise<void>;
  evaluate(script: string): Promise<unknown>;
}

export const keysOf = (tab: Tab): Keys => ({
  press: (key) => tab.keyboard.press(key),
  evaluate: (script) => tab.evaluate(script),
});

/** What has the focus, in words for a failure; and what is wrong with how it shows, '' where nothing is. */
const FOCUS = `(() => {
  const at = document.activeElement;
  if (!at || at === document.body || at === document.documentElement) return { at: '', wrong: '' };
  const name = at.outerHTML.slice(0, 120);
  // A file's input is unseen: its label, which stands beside it, shows the focus.
  const shows = at.type === 'file' ? at.labels[0] : at;
  const { outlineStyle, outlineWidth } = getComputedStyle(shows);
  const box = shows.getClientRects()[0] ?? shows.getBoundingClientRect();
  const wrong = [
    !at.matches(':focus-visible') && 'not :focus-visible',
    (outlineStyle === 'none' || parseFloat(outlineWidth) < 2) && 'no outline',
    (box.bottom <= 0 || box.top >= innerHeight || box.width === 0) && 'out of sight',
  ].filter(Boolean).join(', ');
  return { at: name, wrong };
})()`;

export interface Focus {
  /** The beginning of the focused element's markup, "" where nothing has the focus. */
  at: string;
  wrong: string;
}

/** How long a focus may take to come into sight, in milliseconds: a busy browser moves the page a moment later. */
const COMES_INTO_SIGHT = 2_000;

/** Where the focus is. @throws Error where something has it and doesn't show it */
export async function focusIn(keys: Keys): Promise<Focus> {
  const end = Date.now() + COMES_INTO_SIGHT;
  for (;;) {
    const focus = (await keys.evaluate(FOCUS)) as Focus;
    if (!focus.wrong) return focus;
    if (Date.now() > end) throw new Error(`${focus.wrong}: ${focus.at}`);
    await sleep(50);
  }
}

/** Presses Tab until the focus is on what the selector names, and looks at each stop on the way. */
export async function tabTo(keys: Keys, selector: string): Promise<void> {
  for (let presses = 0; presses < 150; presses += 1) {
    await keys.press('Tab');
    await focusIn(keys);
    if (await keys.evaluate(`document.activeElement?.matches(${JSON.stringify(selector)}) ?? false`)) return;
  }
  throw new Error(`the focus never came to ${selector}`);
}

const MARK_ALL = `(() => {
  const all = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
    .filter((each) => !each.disabled && each.tabIndex >= 0 && each.checkVisibility());
  for (const each of all) delete each.dataset.reached;
  // The way begins where a page begins.
  document.body.tabIndex = -1;
  document.body.focus();
  document.body.removeAttribute('tabindex');
  return all.length;
})()`;
const MISSED = `[...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
  .filter((each) => !each.disabled && each.tabIndex >= 0 && each.checkVisibility() && !('reached' in each.dataset))
  .map((each) => each.outerHTML.slice(0, 120))`;
const REACH = `(() => { const at = document.activeElement;
  if (at && at !== document.body) at.dataset.reached = ''; })()`;

/** Tabs once through all of a page. @returns what the focus never came to; empty where Tab is trapped nowhere */
export async function missedByTab(keys: Keys): Promise<string[]> {
  const count = (await keys.evaluate(MARK_ALL)) as number;
  let missed: string[] = [];
  // Some more, for what a press may put there.
  for (let presses = 0; presses < count + 3; presses += 1) {
    await keys.press('Tab');
    await focusIn(keys);
    missed = (await keys.evaluate(`(${REACH}, ${MISSED})`)) as string[];
    if (missed.length === 0) break;
  }
  return missed;
}

export async function type(keys: Keys, text: string): Promise<void> {
  for (const character of text) await keys.press(character);
}

/** Opens the file chooser by the key, with the focus on its input, and gives it the file. */
export async function chooseFile(tab: Tab, selector: string, path: string): Promise<void> {
  if (TELLS_OF_CHOOSER) {
    const chooser = (tab as Page).waitForEvent('filechooser');
    // The browser has to be told of that wish before the key comes, or it opens a chooser of its own.
    await tab.evaluate('0');
    await tab.keyboard.press('Enter');
    return (await chooser).setFiles(path);
  }
  const input = `document.querySelector(${JSON.stringify(selector)})`;
  await tab.evaluate(`${input}.addEventListener('click', (event) => {
    event.preventDefault();
    window.chooserAsked = event.isTrusted;
  }, { once: true })`);
  await tab.keyboard.press('Enter');
  if (!(await tab.evaluate('window.chooserAsked === true'))) throw new Error('the key opened no file chooser');
  await tab.setInputFiles(selector, path);
}
