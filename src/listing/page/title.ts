import { fold } from '../../text/fold';
import { readDate } from '../decide/dates';
import { BOLD, CONTROL, LINK, type Line } from '../types';
import { type Amount, amountsIn, isPriceLabel } from './amounts';
import { DESCRIPTION_WORDS } from './box-kinds';
import { headingLabel } from './heading-labels';
import { OLD_NAMES } from './price-names';
import { isOnly, type Reading, runsOf } from './reading';
import { rowLabel } from './row-labels';
import { sharedWords, wordsOf } from './shared-words';
import { isSaidWithout, lowerSiteName, SITE_NAMES } from './site-headings';
import { isNamedTitle, namedPart, SAID_LEAST, TITLE_MOST, withoutNumber } from './title-parts';
import { isState, withoutState } from './title-state';
import { AWAY, MAIN } from './zones';

export interface Heading {
  text: string;
  line: number;
  weight: number;
  /** It names the site, or a part of it. */
  isSite?: boolean;
}

const HEADINGS_MOST = 60;
/** Of the window's title a line says most: the rest is a place, or what the sale is like. */
const MOST_OF_IT = 0.5;
/** Of a heading's words so many are in the window's title. */
const SAID = 0.6;
/** What a line is worth by its form where there are headings. */
const BESIDE_HEADINGS = 0.15;

/**
 * The page's headings as titles of the advert, best first: rank, likeness to the window's title, and standing in the
 * main part speak for one; a heading that only labels a part of the page, or names the site, is none. `wholeTitle`: the
 * window's, with the site's name; `told`: the titles of the head.
 */
export function titlesOf(
  reading: Reading,
  windowTitle: string,
  siteName: string,
  wholeTitle: string,
  told: readonly string[],
): Heading[] {
  const { lines, boxes, level, heading, zones, cards } = reading;
  const found: Heading[] = [];
  const whole = fold(windowTitle).text;
  /** The window's title, or its beginning before a place and the like. */
  const saysWindow = (text: string): boolean => {
    if (windowTitle.length < SAID_LEAST || text.length < SAID_LEAST || text.length > windowTitle.length + 4)
      return false;
    if (text.length < windowTitle.length * 0.5) return false;
    const its = fold(text).text;
    return (
      its === whole ||
      (whole.startsWith(its) &&
        /^[\s,]*(?:[^\p{L}\p{N}\s]|(?:in|en|à|a|bei|te|i|w|v)\b)/u.test(whole.slice(its.length)))
    );
  };
  /** The element of a line that says the window's title, where another one beside it says the kind of advert. */
  const ownPart = ({ text, runs }: Line): string | null => {
    if (!runs || runs.length < 2 || text.length > TITLE_MOST || whole.length < SAID_LEAST) return null;
    if (!fold(text).text.includes(whole)) return null;
    const said = runsOf({ text, box: 0, runs }).find(
      ({ text: part, flags }) => !(flags & LINK) && fold(part.trim()).text === whole,
    );
    return said?.text.trim() ?? null;
  };
  let last = -1;
  let mostLike = 0;
  for (const [index, line] of lines.entries()) {
    const box = boxes[line.box]!;
    const rank = level[line.box]!;
    const isHeading = rank > 0;
    const own = ownPart(line) ?? (isHeading ? null : namedPart(line, box.hint)) ?? withoutNumber(line, told);
    const isSaid = !isHeading && (own !== null || saysWindow(line.text));
    if (!isHeading && !isSaid && !isNamedTitle(line, box.hint)) continue;
    if (zones[index] === AWAY || cards.lines.has(index)) continue;
    if (isHeading && heading[line.box] === last) {
      // A heading of several lines is one title.
      const previous = found.at(-1);
      // The window says the first of it alone: what follows is a line below the title.
      const isAlone = previous && isSaidWithout(previous.text, line.text, windowTitle);
      // The window leaves the first word out: the kind of advert, set before the title.
      if (previous && isSaidWithout(line.text, previous.text, windowTitle)) {
        previous.text = line.text;
        previous.line = index;
        continue;
      }
      if (previous && previous.line >= index - 8 && !isBadge(line.text) && !isAlone) previous.text += ` ${line.text}`;
      continue;
    }
    last = isHeading ? heading[line.box]! : -1;
    const text = withoutState(
      withoutPrice(own === null ? withoutBadge(line) : { text: own, box: line.box }, windowTitle),
    );
    if (text.length < 3 || isBadge(text) || headingLabel(text) || rowLabel(text)) {
      last = -1;
      continue;
    }
    if (siteName && sharedWords(text, siteName) === 1) continue;
    const worth = isHeading ? [0.75, 0.5, 0.4, 0.3, 0.25, 0.2][rank - 1]! : isSaid && isOnly(line, LINK) ? 0.2 : 0.4;
    const likeness = sharedWords(text, windowTitle);
    const isSite = SITE_NAMES.test(box.hint);
    if (!isSite) mostLike = Math.max(mostLike, likeness);
    // What stands over things for sale names them.
    const isOverCards = rank > 1 && (cards.lines.has(index + 1) || cards.lines.has(index + 2));
    const weight =
      worth * (isOverCards ? 0.5 : 1) + 0.2 * likeness - (zones[index] === MAIN ? 0 : 0.25) - (isSite ? 0.4 : 0);
    found.push({ text, line: index, weight, ...(isSite ? { isSite } : {}) });
    if (found.length >= 60) break;
  }
  // A window that says a word of one title speaks against those of which it says none.
  for (const one of found) {
    if (mostLike > 0 && sharedWords(one.text, windowTitle) === 0)
      one.weight -= isOnly(lines[one.line]!, LINK) ? 0.5 : 0.2;
    one.weight = Math.max(0.05, one.weight);
  }
  lowerSiteName(found, windowTitle, wholeTitle);
  // Where no heading says what the window says, a line that is none may be the title.
  const isHeaded = found.some(
    ({ text, line }) => level[lines[line]!.box]! > 0 && sharedWords(text, windowTitle) >= SAID,
  );
  const isBare = !found.some(({ line }) => level[lines[line]!.box]! > 0);
  if (isBare) found.push(...shortLines(reading, windowTitle, wholeTitle), ...lastCrumbs(reading));
  else if (!isHeaded) {
    const lines = shortLines(reading, windowTitle, wholeTitle);
    const isMost = ({ text }: Heading) => {
      const share = sharedWords(windowTitle, text);
      return wordsOf(text).length >= 3 && sharedWords(text, windowTitle) === 1 && share >= MOST_OF_IT && share < 1;
    };
    // Headings that say nothing of the window's title, beside a line that says most of it, are of parts of the page.
    if (lines.some(isMost))
      for (const one of found) if (sharedWords(one.text, windowTitle) === 0) one.weight = Math.min(one.weight, 0.3);
    for (const one of lines) found.push({ ...one, weight: isMost(one) ? 0.5 : Math.min(one.weight, BESIDE_HEADINGS) });
  }
  return found.sort((a, b) => b.weight - a.weight || a.line - b.line).slice(0, HEADINGS_MOST);
}

/** A heading that only numbers the thing: "Lot 214". */
const NUMBERED =
  /^(?:lot|kavel|los|lote|lotto|lotnummer|item|artikel|article|annonce|anzeige|ad|advert|ref|nr|no|n°)\.?(?: ?(?:no|nr|number|n°)\.?)? ?[#:]? ?\d+$/i;

const PRICE_WORDS = /\b(?:price|preis|prix|prijs|precio|prezzo)(?!\w)/;
/** A price or the state of a sale that a page sets into its heading, on a line of its own. */
function isBadge(text: string): boolean {
  const [amount] = amountsIn(text);
  return (
    (/\d$/.test(text) && NUMBERED.test(text)) ||
    (amount !== undefined && (amount.start === 0 || amount.end - amount.start >= text.length * 0.5)) ||
    isState(text)
  );
}

/** Names of the badges that a site sets before a title. */
const BADGE = /\b(?:label|badge|tag|prefix|flag|ribbon|status|state|pill|chip|sticker)(?!\w)/;

/** A heading without a badge in an element of its own before it. */
function withoutBadge(line: Line): Line {
  const runs = runsOf(line);
  const [first] = runs;
  if (runs.length < 2 || !BADGE.test(first!.hint) || first!.text.trim().split(' ').length > 2) return line;
  const text = line.text.slice(first!.text.length);
  if (text.trim().length < 8) return line;
  const lead = text.length - text.trimStart().length + first!.text.length;
  return {
    ...line,
    text: text.trimStart(),
    runs: (line.runs ?? []).slice(1).map((run) => ({ ...run, at: Math.max(0, run.at - lead) })),
  };
}

const PARTING_ENDS = /^[\s|·,:–—-]+|[\s|·,:–—-]+$/g;

/**
 * A heading without the price that a page sets into it: the part that a class calls the title, else all but what a class
 * calls the price or what stands at an end, set off by a mark.
 */
function withoutPrice(line: Line, windowTitle: string): string {
  const amounts = amountsIn(line.text);
  if (amounts.length === 0) return line.text;
  const runs = runsOf(line);
  const named = runs.find(
    ({ hint, text }) => /\btitle/.test(hint) && amountsIn(text).length === 0 && text.trim().length > 8,
  );
  if (named && runs.some(({ hint }) => PRICE_WORDS.test(hint))) return named.text.replace(PARTING_ENDS, '');
  const isOld = ({ hint, text }: { hint: string; text: string }) => OLD_NAMES.test(hint) && isBadge(text.trim());
  const priced = runs.filter((run) => PRICE_WORDS.test(run.hint) || isOld(run));
  if (priced.length > 0)
    return runs
      .filter((run) => !priced.includes(run))
      .map(({ text }) => text)
      .join('')
      .replace(PARTING_ENDS, '');
  const [{ start, end }] = amounts as [Amount];
  const [before, after] = [line.text.slice(0, start), line.text.slice(end)];
  const own = after.replace(PARTING_ENDS, '');
  // The window says the same without it.
  if (own.length >= SAID_LEAST && fold(windowTitle).text.startsWith(fold(own).text)) return own;
  if (before.trim().length >= 8 && fold(before.replace(PARTING_ENDS, '')).text === fold(windowTitle).text)
    return before.replace(PARTING_ENDS, '');
  // What stands in brackets behind it is said of the thing, or names the place.
  if (/^\s*(?:\([^()]*\))?\s*$/.test(after) && /[|·,:–—-]\s*$/.test(before))
    return withoutPriceLabel(before.replace(PARTING_ENDS, '')) + after.trimEnd();
  if (before.trim() === '' && /^\s*[|·,:–—-]/.test(after)) return after.replace(PARTING_ENDS, '');
  return line.text;
}

/** "Hand crank, asking price", as it stands before the price. */
function withoutPriceLabel(before: string): string {
  const [label = '', words = ''] = /[,;|·–—]\s*([^,;|·–—]{3,30})$/.exec(before) ?? [];
  return words && isPriceLabel(words) ? before.slice(0, -label.length).trim() : before;
}

/** Where a way through the site ends with the page itself: links, and after them what is none. */
function lastCrumbs({ lines, cards }: Reading): Heading[] {
  const found: Heading[] = [];
  for (const [index, line] of lines.slice(0, FIRST_LINES).entries()) {
    const runs = runsOf(line);
    const end = runs.at(-1)!;
    const links = runs.filter(({ flags }) => flags & LINK).length;
    const text = end.text.replace(/^[\s\p{P}\p{S}]+/u, '').trim();
    if (links < 2 || end.flags & LINK || cards.lines.has(index) || wordsOf(text).length < 3) continue;
    found.push({ text, line: index, weight: 0.4 });
  }
  return found;
}

/** A line that tells a day, as the lines about the advert itself do. */
export const isDated = (text: string): boolean =>
  /(?<!\d)\d{1,2}([./-])\d{1,2}\1(?:\d{4}|\d{2})(?!\d)/.test(text) || readDate(text, null) !== null;

/** How a heading begins that offers something. English; German; French; Dutch; Italian; Spanish. */
const SELLS = /^(?:for sale|wanted|zu verkaufen|verkaufe|suche|a vendre|vends|te koop|vendo|vendesi|se vende)(?!\w)/;
/** A line of so many words says what the window says in parts: so much of each is in the other. */
const PARTS_LEAST = 4;
const MUTUAL = 0.75;
/** Lines looked through for a title where the page has no heading, but those that only lead elsewhere. */
const FIRST_LINES = 80;
const SHORT_MOST = 40;

/**
 * On a page without headings: its short lines that are no label, price, link or sentence. Bold ones and the first of some
 * words may be the title by themselves; the others by what stands around them and says them again.
 */
function shortLines({ lines, boxes, zones, cards, row }: Reading, windowTitle: string, wholeTitle: string): Heading[] {
  const found: Heading[] = [];
  let isPriced = false;
  let isFirst = true;
  let left = FIRST_LINES;
  for (const [index, line] of lines.entries()) {
    if (zones[index] !== MAIN || cards.lines.has(index) || isOnly(line, LINK) || isOnly(line, CONTROL)) continue;
    if (left-- === 0) break;
    if (DESCRIPTION_WORDS.test(boxes[line.box]!.hint)) continue;
    const text = withoutState(withoutPrice(line, windowTitle));
    if (isBadge(text) || headingLabel(line.text) || rowLabel(line.text) || isDated(text)) {
      isPriced = true;
      continue;
    }
    if (amountsIn(text).length > 0 && text === line.text) isPriced = true;
    const links = runsOf(line).filter(({ flags }) => flags & LINK).length;
    const count = wordsOf(text).length;
    if (links > 1 || text.length > TITLE_MOST || text.length < 6 || count > SHORT_MOST || count === 0) continue;
    const isBold = isOnly(line, BOLD);
    const isSentence = /[.!?]$/.test(text) && count > 8;
    // A value in the cell beside its label; a label with its value.
    if (isSentence || (row[line.box]! >= 0 && rowLabel(lines[index - 1]?.text ?? ''))) continue;
    if (rowLabel(/^([^:]{2,30}):\s/.exec(text)?.[1] ?? '')) continue;
    const sells = SELLS.test(fold(line.text).text);
    // A menu's name over its links.
    const next = lines[index + 1];
    const isMenu =
      next !== undefined &&
      (cards.lines.has(index + 1) || (next.box === line.box && (runsOf(next)[0]!.flags & LINK) !== 0));
    const own = isMenu
      ? 0.05
      : count >= PARTS_LEAST && sharedWords(text, wholeTitle) >= MUTUAL && sharedWords(wholeTitle, text) >= MUTUAL
        ? 0.5
        : isBold && count > 1
          ? sells
            ? 0.7
            : 0.4
          : isFirst && !isPriced && count > 2
            ? 0.3
            : 0.12;
    if (count > 2) isFirst = false;
    found.push({ text, line: index, weight: own });
    if (sells && isBold) break;
  }
  return found;
}
