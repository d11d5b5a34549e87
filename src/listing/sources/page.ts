import { cardsOf } from '../page/cards';
import { descriptionsOf } from '../page/description';
import { type Marks, marksOf } from '../page/marks';
import { headedParticulars, lastPart, particularsOf, placesToldOf, timesOf, writtenDates } from '../page/particulars';
import { photosOf } from '../page/photos';
import { pricesOf } from '../page/prices';
import { isOnly, type Reading, readingOf } from '../page/reading';
import { rowLabel } from '../page/row-labels';
import { rowsOf } from '../page/rows';
import { sharedWords, titlesOf } from '../page/title';
import { AWAY, zonesOf } from '../page/zones';
import { type Candidate, CONTROL, type PageText } from '../types';

/** From this weight on a price stands plainly. */
const PLAIN_PRICE = 0.5;

export interface PageFindings {
  candidates: Candidate[];
  /** Things for sale side by side. */
  cards: number;
  /** The page's own title, or "". */
  title: string;
  /** Weight of the page's own price, 0 where there is none outside the cards. */
  price: number;
  marks: Marks;
  /** Characters of the seller's own words. */
  words: number;
  /** Labelled rows of known and of other labels. */
  rows: number;
  photos: number;
}

/** A short line by which a seller labels something among other words: "Condition: rusty but whole". */
const PLAIN_ROW = /^[^:]{3,30}:\s[^:]{2,60}$/;
const isKnown = (text: string): boolean =>
  ['condition', 'place'].includes(rowLabel(text.slice(0, text.indexOf(':'))) ?? '');

/** What the head says that helps to read the page. */
export interface Head {
  /** The window's title without the site's name, and that name; "" where not known. */
  windowTitle: string;
  siteName: string;
  /** The window's whole title and the summaries, one after the other. */
  told: string;
  language: string | null;
}

/** What a person sees on the page, as candidates for each field. */
export function fromPage(page: PageText, head: Head): PageFindings {
  const { windowTitle, siteName } = head;
  const reading = readingOf(page);
  reading.zones = zonesOf(reading);
  reading.cards = cardsOf(reading, windowTitle);
  const titles = titlesOf(reading, windowTitle, siteName);
  reading.titleLine = titles[0]?.line ?? -1;

  const candidates: Candidate[] = [];
  const blocks = descriptionsOf(reading);
  const prices = pricesOf(reading);
  const plain = prices.find(({ weight }) => weight >= PLAIN_PRICE)?.line ?? null;
  for (const { text, weight, line } of [...titles, ...aboveThePrice(reading, plain)]) {
    const support = takenUp(text, reading.pictures, blocks[0]?.text ?? '') + nearness(line, plain);
    candidates.push({ field: 'title', value: text, source: 'page', weight: Math.min(0.95, weight + support) });
  }
  for (const { text, weight } of blocks) candidates.push({ field: 'description', value: text, source: 'page', weight });
  for (const { text, weight, how } of prices) {
    candidates.push({ field: 'price', value: text, source: 'page', weight, ...(how ? { how } : {}) });
  }

  const own = new Set(blocks[0]?.lines);
  const isRowOfWords = (line: number) => PLAIN_ROW.test(reading.lines[line]!.text);
  const isWords = (line: number) => own.has(line) && !(isRowOfWords(line) && isKnown(reading.lines[line]!.text));
  const rows = rowsOf(reading, (line) => isWords(line) || line === reading.titleLine);
  for (const { label, value } of rows) {
    const field = rowLabel(label);
    // A price row was weighed among the prices already.
    if (field === 'price' || field === 'postage' || field === 'skip') continue;
    if (field) candidates.push({ field, value, source: 'page', weight: 0.85 });
    else candidates.push({ field: 'details', value: `${label}: ${value}`, source: 'page', weight: 0.7 });
  }
  candidates.push(
    ...particularsOf(reading, {
      title: titles[0]?.text || windowTitle,
      siteName,
      windowTitle: head.told.split('\n')[0] ?? '',
      told: head.told,
      description: blocks[0]?.text ?? '',
    }),
    ...headedParticulars(reading),
    ...placesToldOf(reading),
    ...timesOf(reading),
    ...writtenDates(reading, head.language),
  );
  for (const value of photosOf(reading, titles[0]?.text || windowTitle, [
    siteName,
    lastPart(head.told.split('\n')[0] ?? ''),
  ]))
    candidates.push({ field: 'photo', value, source: 'page', weight: 0.6 });

  const title = titles[0]?.text ?? '';
  return {
    candidates,
    cards: reading.cards.count,
    title,
    price: prices[0]?.weight ?? 0,
    marks: marksOf(reading, rows, title || windowTitle, blocks),
    words: blocks[0]?.text.length ?? 0,
    rows: rows.length,
    photos: candidates.filter(({ field }) => field === 'photo').length,
  };
}

/** What else says a title again: the texts of photographs, the first words of the seller. */
function takenUp(title: string, pictures: PageText['pictures'], description: string): number {
  if (title.split(' ').length < 3) return 0;
  const isShown = pictures.some(({ alt }) => alt !== undefined && sharedWords(title, alt) >= 0.8);
  const isBegun = sharedWords(title, description.slice(0, title.length * 2)) >= 0.8;
  return (isShown ? 0.1 : 0) + (isBegun ? 0.2 : 0);
}

/** A title stands close to the price. */
const nearness = (line: number, price: number | null): number => {
  const distance = price === null ? Number.POSITIVE_INFINITY : Math.abs(line - price);
  return distance <= 4 ? 0.12 : distance <= 10 ? 0.06 : 0;
};

/** The line of some words right over a price, whatever it is set in. */
function aboveThePrice(
  { lines, zones, cards }: Reading,
  price: number | null,
): { text: string; weight: number; line: number }[] {
  for (let line = (price ?? 0) - 1; line >= 0 && line >= (price ?? 0) - 3; line--) {
    const { text } = lines[line]!;
    const isTitle =
      text.length <= 150 && text.split(' ').length >= 3 && !/[.:]$/.test(text) && !/\d[.,]\d\d\b/.test(text);
    if (isTitle && zones[line] !== AWAY && !cards.lines.has(line) && !isOnly(lines[line]!, CONTROL))
      return [{ text, line, weight: 0.3 }];
  }
  return [];
}
