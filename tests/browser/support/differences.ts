import { it } from 'vitest';
import { TESTED } from './browser';

// What is not the same in both browsers, each with its reason: here and nowhere else.

const inFirefox = TESTED === 'firefox';

/** One of the browser's own pages, which no extension may read; each has its own. */
export const OWN_PAGE = inFirefox ? 'about:license' : 'chrome://version/';

/**
 * Firefox counts a file of this computer among the pages that a press of the button opens; Chromium asks for a setting
 * of its own in its page about extensions.
 */
export const PRESS_OPENS_FILES = inFirefox;

/** What is asked for at installation. Firefox has its side bar without asking. */
export const PERMISSIONS = [
  'activeTab',
  'alarms',
  'contextMenus',
  'scripting',
  ...(inFirefox ? [] : ['sidePanel']),
  'storage',
];

const long = Boolean(process.env.BEDPLATE_LONG);

/**
 * Of the market every fourth page is opened, for time; in the long run all of them. One engine reads them all, and it is held to every page without a browser.
 */
export const EACH_PAGE_OF = long ? 1 : 4;

/** Where pictures go; they are for people to look at, and made in the long run alone. */
export const PICTURES = long && (inFirefox ? '.shots/firefox' : '.shots');

/** Driven by Playwright, Chromium saves a PDF instead of showing it; Firefox shows it in a viewer of its own. */
export const SHOWS_PDF: Applies = { here: inFirefox, why: 'a driven Chromium saves a PDF instead of showing it' };

/** A Chromium without a window ends as a whole when the extension that it was started with is put in its place anew. */
export const OUTLIVES_RELOAD: Applies = { here: inFirefox, why: 'a driven Chromium ends when its extension reloads' };

/**
 * Chromium opens an extension's pages in an ordinary window, whatever window they are asked for in; the panel alone stands
 * beside a private page. In Firefox they stand in private windows too.
 */
export const PAGES_IN_PRIVATE = inFirefox;

/** Chromium's driver is told of a file chooser that opens; in Firefox that is a window which no driver reaches. */
export const TELLS_OF_CHOOSER = !inFirefox;

export interface Applies {
  here: boolean;
  why: string;
}

/**
 * A test that one of the browsers has nothing to do with: there it is not applicable, which is said in the run's output
 * and is no skipped test.
 */
export function onlyWhere({ here, why }: Applies): (name: string, work: () => Promise<void>) => void {
  if (here) return it;
  return (name) => console.log(`not applicable in ${TESTED}: ${name}: ${why}`);
}
