import { fold } from '../../text/fold';
import { sharedWords, wordsOf } from './shared-words';
import type { Heading } from './title';
import { withoutState } from './title-state';

/** Names of the site's own name and mark. */
export const SITE_NAMES = /\b(?:logo|site-?name|site-?title|brand-?name|navbar-?brand|wordmark)(?!\w)/;

/** True where the window says all of the one text and not a word of the other. */
export const isSaidWithout = (text: string, more: string, windowTitle: string): boolean =>
  wordsOf(text).length > 1 && sharedWords(text, windowTitle) === 1 && sharedWords(more, windowTitle) === 0;

/**
 * "Hand crank with key - Fettle" over <h1>Fettle</h1><h2>Hand crank with key</h2>: a heading that is the lesser part of
 * the window's title, of which another heading is the greater, names the site; so does one that the whole title ends with
 * where it begins with another.
 */
export function lowerSiteName(found: Heading[], windowTitle: string, wholeTitle: string): void {
  const shareOf = (text: string, title: string) => (sharedWords(text, title) === 1 ? sharedWords(title, text) : 0);
  const shares = found.map(({ text }) => shareOf(text, windowTitle));
  const most = Math.max(0, ...shares);
  const whole = fold(withoutState(wholeTitle)).text;
  const beginning = found.reduce(
    (longest, { text }) => (text.length > longest && whole.startsWith(fold(text).text) ? text.length : longest),
    0,
  );
  for (const [index, heading] of found.entries()) {
    const share = shares[index]!;
    const its = fold(heading.text).text;
    const at = whole.indexOf(its);
    // "Hand crank (Works of the Valley)": what stands in brackets says more of the title before it.
    const isBracketed = at > 1 && /[([]$/.test(whole.slice(0, at)) && beginning > 0;
    const leads = at === 0 && /^\s*[([]/.test(whole.slice(its.length));
    if (isBracketed) heading.weight = Math.max(0.05, heading.weight - 0.4);
    const isLesser = share > 0 && share < 0.4 && most > 0.5 && !leads;
    const isEnd = whole.endsWith(its) && its.length < beginning && its.length + beginning <= whole.length;
    if (!isLesser && !isEnd) continue;
    heading.weight = Math.max(0.05, heading.weight - 0.4);
    heading.isSite = true;
  }
}
