import { fitted } from '../../text/fitted';
import { BOLD, CONTROL, LINK } from '../types';
import { amountsIn } from './amounts';
import type { Block } from './description';
import { headingLabel } from './heading-labels';
import type { PagePrice } from './prices';
import { isOnly, levelOf, type Reading, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import { wordsOf } from './shared-words';
import { isNamedTitle } from './title-parts';
import { AWAY } from './zones';

/** The part of a page that is the advert, by what stands together in it, and the line that heads it. */
export interface AdvertHead {
  line: number;
  /** The part's lines, end exclusive. */
  from: number;
  to: number;
}

const THREE_LETTERS = fitted('u')`\p{L}{3}`;
const LEVELS_MOST = 6;
const LINES_MOST = 60;
const HEAD_MOST = 150;
/** Lines of a row of labels and values; in a longer one parts of the page stand side by side. */
const CELLS_MOST = 6;
/** From this weight on an amount is a price that belongs to what stands beside it. */
export const PRICE_LEAST = 0.4;

/**
 * The line that heads the smallest part of the page in which the seller's words stand together with a photograph or a
 * price: a heading, a bold line, one that a class calls a title, or the line right over the words. Null where that part
 * has none.
 */
export function advertHeadOf(
  reading: Reading,
  words: Block | undefined,
  prices: readonly PagePrice[],
): AdvertHead | null {
  const { lines, boxes, pictures } = reading;
  const first = words?.lines[0];
  if (words === undefined || first === undefined) return null;
  const last = words.lines.at(-1)!;
  let at = lines[first]!.box;
  while (at >= 0 && boxes[at]!.to <= last) at = boxes[at]!.parent;
  for (let step = 0; at >= 0 && step < LEVELS_MOST; step++, at = boxes[at]!.parent) {
    const { from, to, tag } = boxes[at]!;
    // Without a part of its own, it begins with the last heading over the words.
    if (/^(?:body|html)$/.test(tag) || to - from > LINES_MOST) {
      for (let line = first - 1; line >= from; line--)
        if (levelOf(reading, line) > 0) return mayHead(reading, line) ? { line, from: line, to } : null;
      return null;
    }
    const isSold =
      pictures.some(({ box, small }) => !small && box >= at && boxes[box]!.from >= from && boxes[box]!.to <= to) ||
      prices.some(({ line, weight }) => line >= from && line < to && weight >= PRICE_LEAST);
    if (!isSold) continue;
    const line = headIn(reading, from, first, last, to);
    if (line >= 0) return { line, from, to };
  }
  return null;
}

function headIn(reading: Reading, from: number, first: number, last: number, to: number): number {
  for (let line = from; line < first; line++) if (mayHead(reading, line) && isSetOff(reading, line)) return line;
  if (first > from && mayHead(reading, first - 1)) return first - 1;
  // Some boards set the words over the name.
  for (let line = last + 1; line < to; line++) if (levelOf(reading, line) > 0 && mayHead(reading, line)) return line;
  return -1;
}

/** It stands out from the lines around it, or is called a title. */
export const isSetOff = (reading: Reading, index: number): boolean => {
  const line = reading.lines[index]!;
  return levelOf(reading, index) > 0 || isOnly(line, BOLD) || isNamedTitle(line, reading.boxes[line.box]!.hint);
};

/** Some words that name something: no label, value, price, link or sentence. */
function mayHead({ lines, boxes, zones, cards, row }: Reading, index: number): boolean {
  const line = lines[index]!;
  const { text } = line;
  const before = lines[index - 1];
  const own = row[line.box]!;
  const isValue = before !== undefined && own >= 0 && row[before.box] === own && sizeOf(boxes[own]!) <= CELLS_MOST;
  return (
    zones[index] !== AWAY &&
    !cards.lines.has(index) &&
    text.length <= HEAD_MOST &&
    wordsOf(text).length > 1 &&
    THREE_LETTERS.test(text) &&
    !/[.,!?]$|:\s*\S*$/.test(text) &&
    !isOnly(line, LINK) &&
    !isOnly(line, CONTROL) &&
    !isValue &&
    headingLabel(text) === null &&
    rowLabel(text) === null &&
    amountsIn(text).length === 0
  );
}
