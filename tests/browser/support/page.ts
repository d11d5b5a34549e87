import type { Tab } from '../../../src/cli/demo/driven';
import { until } from '../hands';

/**
 * One of our own pages in either browser: what a person does there, and what is to be seen. Something is meant by a
 * selector and, where that is not enough, by words that stand in it. Whatever is done waits until it is shown.
 */
export interface OwnPage {
  tab: Tab;
  /** Waits until something that is meant is shown. */
  shows(selector: string, words?: string): Promise<void>;
  /** Waits until nothing that is meant is there any more. */
  lacks(selector: string, words?: string): Promise<void>;
  isShown(selector: string): Promise<boolean>;
  count(selector: string): Promise<number>;
  /** The text of the first match, "" where there is none. */
  text(selector: string): Promise<string>;
  texts(selector: string): Promise<string[]>;
  attribute(selector: string, name: string): Promise<string | null>;
  valueOf(selector: string): Promise<string>;
  isFocused(selector: string): Promise<boolean>;
  focus(selector: string): Promise<void>;
  /** A real click of the mouse. */
  click(selector: string, words?: string): Promise<void>;
  press(key: string): Promise<void>;
  /** Real key presses, in the place of what stood in the field. */
  fill(selector: string, text: string): Promise<void>;
  choose(selector: string, ...paths: string[]): Promise<void>;
  reload(): Promise<void>;
}

const PATIENCE = 20_000;
/** As long as a press waits for what has just been seen. */
const AT_ONCE = 4_000;

/** In the page: those that match, hold the words and are shown; the first one is marked for the driver to find. */
function sought([selector, words, mark]: [string, string, string]): number {
  const all = [...document.querySelectorAll(selector)].filter((each) => each.textContent?.includes(words));
  const shown = all.filter((each) => each.checkVisibility() && each.getClientRects().length > 0);
  if (mark) {
    for (const each of document.querySelectorAll(`[${mark}]`)) each.removeAttribute(mark);
    shown[0]?.setAttribute(mark, '');
  }
  return shown.length;
}

const MARK = 'data-sought';

export function ownPage(tab: Tab): OwnPage {
  const read = <T>(selector: string, work: (element: HTMLInputElement) => T): Promise<T | null> =>
    tab.evaluate(`(() => { const element = document.querySelector(${JSON.stringify(selector)});
      return element && (${work})(element); })()`);
  const shows = (selector: string, words = '', mark = '') =>
    until(
      `${selector} with “${words}”`,
      async () => (await tab.evaluate(sought, [selector, words, mark] as [string, string, string])) > 0,
      PATIENCE,
    );
  const matches = (selector: string, words: string): Promise<number> =>
    tab.evaluate(
      ([wanted, said]: string[]) =>
        [...document.querySelectorAll(wanted ?? '')].filter((each) => each.textContent?.includes(said ?? '')).length,
      [selector, words],
    );

  const page: OwnPage = {
    tab,
    shows: (selector, words) => shows(selector, words),
    lacks: (selector, words = '') =>
      until(`no ${selector} with “${words}”`, async () => (await matches(selector, words)) === 0, PATIENCE),
    isShown: async (selector) => (await tab.evaluate(sought, [selector, '', ''] as [string, string, string])) > 0,
    count: (selector) => matches(selector, ''),
    text: async (selector) => (await read(selector, (element) => element.textContent)) ?? '',
    texts: (selector) =>
      tab.evaluate(
        (wanted: string) => [...document.querySelectorAll(wanted)].map((each) => each.textContent ?? ''),
        selector,
      ),
    attribute: (selector, name) =>
      tab.evaluate(
        ([wanted, asked]: string[]) => document.querySelector(wanted ?? '')?.getAttribute(asked ?? '') ?? null,
        [selector, name],
      ),
    valueOf: async (selector) => (await read(selector, (element) => element.value)) ?? '',
    isFocused: async (selector) =>
      Boolean(await tab.evaluate(`document.activeElement?.matches(${JSON.stringify(selector)})`)),
    async focus(selector) {
      await shows(selector);
      await read(selector, (element) => element.focus());
    },
    async click(selector, words) {
      // What is drawn anew between its mark and the press has lost the mark: it is sought once more.
      const end = Date.now() + PATIENCE;
      for (;;) {
        await shows(selector, words, MARK);
        try {
          return await tab.click(`[${MARK}]`, { timeout: AT_ONCE });
        } catch (error) {
          if (Date.now() > end) throw error;
          // A page behind another one draws nothing, so that a driver waits for ever for it to stand still.
          await tab.bringToFront();
        }
      }
    },
    press: (key) => tab.keyboard.press(key),
    async fill(selector, text) {
      await shows(selector);
      await read(selector, (element) => {
        element.focus();
        element.select();
      });
      if (text === '') await tab.keyboard.press('Delete');
      else await tab.keyboard.type(text);
    },
    choose: (selector, ...paths) => tab.setInputFiles(selector, paths),
    reload: async () => void (await tab.reload()),
  };
  return page;
}
