import { fold } from '../../text/fold';
import { isOnly } from '../page/reading';
import { sharedWords } from '../page/title';
import { LINK, type PageText } from '../types';

/** Titles longer than this are none that anything could be told from. */
const TITLE_MOST = 2000;
/** Lines in which a page repeats its title. */
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
  if (parts.length < 3 || parts.length > PARTS_MOST) return title;
  const shown = new Set(
    lines
      .slice(0, OPENING)
      .filter(
        (line) =>
          line.text.length <= title.length && (!isOnly(line, LINK) || /^h[1-4]$/.test(boxes[line.box]?.tag ?? '')),
      )
      .map((line) => fold(line.text).text),
  );
  let longest = '';
  for (let from = 0; from < parts.length; from += 2)
    for (let to = from + 1; to <= parts.length; to += 2) {
      const part = parts.slice(from, to).join('').trim();
      if (part.length > longest.length && shown.has(fold(part).text)) longest = part;
    }
  const single = parts.filter((_, index) => index % 2 === 0).map((part) => part.trim());
  const [most, next] = single.map(wordsIn).sort((a, b) => b - a) as [number, number];
  // The site's name is shown too: a title is no shorter than what else the window says.
  if (longest !== '' && (wordsIn(longest) >= Math.max(TITLE_WORDS, most) || sharedWords(title, longest) >= 0.5))
    return longest;
  return most > TITLE_WORDS && most > next ? single.find((part) => wordsIn(part) === most)! : title;
}

const wordsIn = (text: string): number => text.match(/[\p{L}\p{N}]+/gu)?.length ?? 0;
