import { fold } from '../../text/fold';
import { LINK, type PageText } from '../types';
import { isOnly, type Reading, runsOf } from './reading';
import { allWordsOf, sharedWords } from './shared-words';
import { AWAY } from './zones';

/** What the page tells beside its titles, by which a line is known as the title of the advert. */
export interface TitleEvidence {
  pictures: PageText['pictures'];
  description: string;
  /** Words of the page's address, after its host. */
  slug: string;
  /** Lines of the plain price and of the first of the seller's words; -1 where there is none. */
  price: number;
  words: number;
  /** Lines of everything that may be a title. */
  titles: readonly number[];
}

/** Characters of a longer word. */
const LONGER = 4;
/** Fewer words stand in many texts by chance. */
const WORDS_LEAST = 3;

/**
 * What speaks for a line as the title beside its form, -0.35 to about 0.6: photographs, the seller's first words, the
 * address say it again; it stands close to the price; nothing else that may be a title stands between it and what is sold.
 * Against it: a way through the site has the same name, so that it is a part of the site.
 */
export function supportOf(reading: Reading, title: string, line: number, evidence: TitleEvidence): number {
  return (
    takenUp(title, evidence) +
    toldAgain(title, evidence) +
    nearness(line, evidence.price) +
    leads(line, evidence) -
    (isWayThroughSite(reading, title) ? 0.35 : 0)
  );
}

function takenUp(title: string, { pictures, description }: TitleEvidence): number {
  if (title.split(' ').length < WORDS_LEAST) return 0;
  const isShown = pictures.some(({ alt }) => alt !== undefined && sharedWords(title, alt) >= 0.8);
  const isBegun = sharedWords(title, description.slice(0, title.length * 2)) >= 0.8;
  return (isShown ? 0.1 : 0) + (isBegun ? 0.2 : 0);
}

/** How many of its longer words the seller and the address use again. */
function toldAgain(title: string, { description, slug }: TitleEvidence): number {
  const words = [...new Set(allWordsOf(fold(title.slice(0, 300)).text).filter((word) => word.length >= LONGER))];
  if (words.length < 2) return 0;
  const share = (text: string) => words.filter((word) => text.includes(word)).length / words.length;
  return 0.12 * share(fold(description.slice(0, 3000)).text) + 0.15 * (share(fold(slug).text) >= 0.6 ? 1 : 0);
}

/** A title stands close to the price. */
const nearness = (line: number, price: number): number => {
  const distance = price < 0 ? Number.POSITIVE_INFINITY : Math.abs(line - price);
  return distance <= 4 ? 0.12 : distance <= 10 ? 0.06 : 0;
};

/** How much of a title photographs, the seller's words and the address tell again. */
export const toldOf = (title: string, evidence: TitleEvidence): number =>
  takenUp(title, evidence) + toldAgain(title, evidence);

/** Nothing else that may be a title stands between it and the price, or the seller's words. */
function leads(line: number, { price, words, titles }: TitleEvidence): number {
  const isLast = (to: number) => to > line && !titles.some((other) => other > line && other < to);
  // Behind both, it is over another part of the page.
  if (price >= 0 && words >= 0 && line > price && line > words) return -0.1;
  return (isLast(price) ? 0.08 : 0) + (isLast(words) ? 0.08 : 0);
}

/** Where a menu or the way to this page has a link of that name. */
function isWayThroughSite(reading: Reading, title: string): boolean {
  const name = fold(title).text;
  return name.length <= 60 && waysOf(reading).has(name);
}

/** The names of a page's ways, folded, by its zones: every title is held against them. */
const known = new WeakMap<Uint8Array, Set<string>>();

function waysOf({ lines, zones }: Reading): Set<string> {
  const before = known.get(zones);
  if (before) return before;
  const names = new Set<string>();
  for (const [index, line] of lines.entries()) {
    if (!line.runs || (zones[index] !== AWAY && !isWay(line))) continue;
    const runs = runsOf(line);
    for (const [at, { text, flags }] of runs.entries())
      if (flags & LINK && !(at === runs.length - 1 && at > 0)) names.add(fold(text.trim()).text);
  }
  known.set(zones, names);
  return names;
}

/** Several links in one line, or a link alone of few words. */
const isWay = (line: Reading['lines'][number]): boolean =>
  runsOf(line).filter(({ flags }) => flags & LINK).length > 1 && (isOnly(line, LINK) || line.text.length < 150);
