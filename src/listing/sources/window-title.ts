import { fitted } from '../../text/fitted';
import { fold } from '../../text/fold';
import { isOnly, runsOf } from '../page/reading';
import { allWordsOf, sharedWords } from '../page/shared-words';
import { LINK, type PageText } from '../types';

/** Titles longer than this are none that anything could be told from. */
const TITLE_MOST = 2000;
/** Lines in which a page repeats its title, without those of menus. */
const OPENING = 200;
/** With what stands between them. */
const PARTS_MOST = 41;
/** What stands between a site's name and a title, in parentheses so that it is kept when split. */
const PARTING = /(\s+[|–—·•»:-]\s+|\s*[|»]\s*)/;

/** A title without the parts, at either end, that name the site: its stated name or the words of its host. */
export function withoutSite(title: string, siteName: string, host: string): string {
  if (title.length > TITLE_MOST) return title;
  const parts = title.split(PARTING);
  const isSite = (part: string): boolean => {
    const bare = part.trim();
    if (bare === '') return true;
    if (siteName && (bare.toLowerCase() === siteName.toLowerCase() || sharedWords(bare, siteName) === 1)) return true;
    const joined = bare.toLowerCase().replace(/[^a-z0-9]/g, '');
    return (
      (joined.length >= 3 &&
        host
          .replace(/[^a-z0-9.]/g, '')
          .split('.')
          .includes(joined)) ||
      (host !== '' && bare.toLowerCase() === host.replace(/^www\./, ''))
    );
  };
  while (parts.length > 1 && isSite(parts.at(-1)!)) parts.splice(-2);
  while (parts.length > 1 && isSite(parts[0]!)) parts.splice(0, 2);
  return parts.join('').trim();
}

/** Words of a part that may be a title by itself; fewer are a category, a place, a price. */
const TITLE_WORDS = 3;

/**
 * The greatest part of a window's title that the page shows on a line of its own: "Hand crank - Fettle" over a line
 * "Hand crank", where nothing says that "Fettle" is the site. A line that is all link may be one of a way through the
 * site, unless it is a heading; one or two words are a title only where they are half of it. Where the page shows none, the part of most words,
 * if it has clearly the most.
 */
export function asShown(title: string, { lines, boxes }: Pick<PageText, 'lines' | 'boxes'>): string {
  const parts = title.length > TITLE_MOST ? [] : title.split(PARTING);
  if (parts.length > PARTS_MOST || title.length > TITLE_MOST) return title;
  const shown = openingOf({ lines, boxes }, title.length);
  const within = shownWithin(title, shown);
  if (parts.length < 3) return within ?? title;
  let longest = '';
  for (let from = 0; from < parts.length; from += 2)
    for (let to = from + 1; to <= parts.length; to += 2) {
      const part = parts.slice(from, to).join('').trim();
      if (part.length > longest.length && shown.has(fold(part).text)) longest = part;
    }
  const single = parts.filter((_, index) => index % 2 === 0).map((part) => part.trim());
  const [most, next] = single.map(wordsIn).sort((a, b) => b - a) as [number, number];
  // One part alone is shown, and is not the last, which mostly names the site.
  const told = single.filter((part) => shown.has(fold(part).text));
  if (told.length === 1 && wordsIn(told[0]!) >= TITLE_WORDS && told[0] !== single.at(-1))
    return within?.startsWith(told[0]!) ? within : told[0]!;
  // The site's name is shown too: a title is no shorter than what else the window says.
  if (longest !== '' && (wordsIn(longest) >= Math.max(TITLE_WORDS, most) || sharedWords(title, longest) >= 0.5))
    return longest;
  if (within !== null) return within;
  return most > TITLE_WORDS && most > next + 1 ? single.find((part) => wordsIn(part) === most)! : title;
}

/** The first lines of each page that was asked about, folded, by their length: a head may name many titles. */
const openings = new WeakMap<PageText['lines'], { folded: string; length: number }[]>();

/** Lines among the first of the page's own that are no longer than a title, folded; those that are all link only as headings. */
function openingOf({ lines, boxes }: Pick<PageText, 'lines' | 'boxes'>, most: number): ReadonlySet<string> {
  let known = openings.get(lines);
  if (!known) {
    const own: PageText['lines'] = [];
    for (const line of lines) {
      if (isOnly(line, LINK) && !/^h[1-4]$/.test(boxes[line.box]?.tag ?? '')) continue;
      if (line.text.length <= TITLE_MOST) own.push(line);
      if (own.length === OPENING) break;
    }
    known = own
      .flatMap((line) => [line.text, line.text.replace(/[®™]/g, ''), ...partsOf(line)])
      .map((text) => ({ folded: fold(text).text, length: text.length }));
    openings.set(lines, known);
  }
  return new Set(known.filter(({ length }) => length <= most).map(({ folded }) => folded));
}

/** The parts of a line in elements of their own, that lead nowhere. */
const partsOf = (line: PageText['lines'][number]): string[] =>
  line.runs && line.runs.length > 1
    ? runsOf(line)
        .filter(({ flags, text }) => !(flags & LINK) && wordsIn(text) >= TITLE_WORDS)
        .map(({ text }) => text.trim())
    : [];

/** What follows a title in the window without a mark: where it is, what it costs. The languages of the labels. */
const GOES_ON = fitted(
  'u',
)`^[\s,]*(?:[^\p{L}\p{N}\s]|\d{5,}\b|(?:in|at|en|à|a|de|di|da|bei|te|i|w|v|(?:for|für|pour|por|per|voor) ?(?=[\d\p{Sc}]))\b)`;

/** The longest line of three words or more, and of four in ten of a title's, that the title begins with or ends with after a mark. */
function shownWithin(title: string, shown: ReadonlySet<string>): string | null {
  const folded = fold(title);
  let longest: string | null = null;
  for (const line of shown) {
    if (line.length <= (longest?.length ?? 0) || wordsIn(line) < TITLE_WORDS) continue;
    const at = folded.text.indexOf(line);
    const end = at + line.length;
    if (at < 0 || wordsIn(line) < wordsIn(title) * 0.4) continue;
    const isFirst = at === 0 || /[:\])]\s*$/.test(folded.text.slice(0, at));
    const isLast = end === folded.text.length || GOES_ON.test(folded.text.slice(end));
    if (!isFirst || !isLast) continue;
    const span = folded.toOriginal(at, end);
    longest = title.slice(span.start, span.end);
  }
  return longest;
}

const wordsIn = (text: string): number => allWordsOf(text).length;
