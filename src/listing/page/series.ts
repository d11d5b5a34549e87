import { fitted } from '../../text/fitted';
import { fold } from '../../text/fold';
import type { Box } from '../types';
import { amountsIn, isOtherMoney, isPriceLabel } from './amounts';
import { levelOf, type Reading, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import { AWAY } from './zones';

/** So many boxes alike, each a name with one amount, are a list of things: with name and amount apart, and on one line. */
const APART_LEAST = 3;
const TWO_LETTERS = fitted('u')`\p{L}{2}`;
const THREE_LETTERS = fitted('u')`\p{L}{3}`;
/** Two words, or a long one. */
const WORDS = fitted('u')`[\p{L}\p{N}][^\p{L}]+\p{L}|\p{L}{9}`;
const ROWS_LEAST = 5;
const LINES_LEAST = 6;
const LINES_OF_ONE = 12;
const WORDS_MOST = 400;
const DESCRIPTION =
  /\b(?:description|descriptif|beschreibung|omschrijving|beschrijving|descrizione|descripcion|content|message|postbody)(?!\w)/;

/**
 * Things for sale side by side that lead nowhere and have no picture: boxes alike that follow each other, each with a name
 * and one amount of money. Those between them that have no amount ("SOLD", "free") belong to it. Labelled amounts of one
 * thing (price, postage) are none. Answers the boxes of each list.
 */
export function seriesOf(reading: Reading): number[][] {
  const { boxes } = reading;
  const found: number[][] = [];
  const childrenOf = new Map<number, number[]>();
  for (const [index, box] of boxes.entries()) {
    if (sizeOf(box) === 0) continue;
    const same = childrenOf.get(box.parent);
    if (same) same.push(index);
    else childrenOf.set(box.parent, [index]);
  }
  for (const [parent, children] of childrenOf) {
    if (children.length < APART_LEAST || (parent >= 0 && DESCRIPTION.test(boxes[parent]!.hint))) continue;
    let run: number[] = [];
    const end = () => {
      const list = thingsOf(reading, run);
      if (list.length > 0) found.push(list);
      run = [];
    };
    for (const child of children) {
      const before = run.at(-1);
      if (before !== undefined && (!isAlike(boxes[before]!, boxes[child]!) || isGap(reading, before, child))) end();
      run.push(child);
    }
    end();
  }
  return found;
}

/** Of one tag and with the same names, numbers left out: "item-3000", "item-3001". */
const isAlike = (a: Box, b: Box): boolean =>
  a.tag === b.tag && (a.hint === b.hint || withoutNumbers(a.hint) === withoutNumbers(b.hint));

const withoutNumbers = (hint: string): string => hint.replace(/\d+/g, '#');

/** Something else stands between two boxes. */
const isGap = ({ boxes }: Reading, before: number, next: number): boolean => boxes[before]!.to !== boxes[next]!.from;

function thingsOf(reading: Reading, run: number[]): number[] {
  if (run.length < APART_LEAST) return [];
  const { boxes } = reading;
  const priced = run.filter((child) => isPriced(reading, child));
  if (priced.length < APART_LEAST || priced.length < run.length * 0.5) return [];
  const [first, last] = [run.indexOf(priced[0]!), run.indexOf(priced.at(-1)!)];
  const { tag } = boxes[priced[0]!]!;
  const isApart = priced.every((child) => sizeOf(boxes[child]!) > 1);
  const least = !isApart ? LINES_LEAST : tag === 'tr' ? ROWS_LEAST : APART_LEAST;
  return priced.length >= least ? run.slice(first, last + 1) : [];
}

/** A name of some words and one amount that is a price; nothing long, no label, not the page's own heading. */
function isPriced(reading: Reading, child: number): boolean {
  const { boxes, lines, zones, titleLine } = reading;
  const { from, to, tag } = boxes[child]!;
  if (to - from > LINES_OF_ONE || /^(?:td|th|dt|dd|h[1-6])$/.test(tag)) return false;
  let prices = 0;
  let others = 0;
  let name = '';
  let length = 0;
  for (let index = from; index < to; index++) {
    const { text } = lines[index]!;
    if (zones[index] === AWAY || index === titleLine || levelOf(reading, index) === 1) return false;
    length += text.length;
    const amounts = amountsIn(text);
    prices += amounts.filter(({ other }) => !other).length;
    others += amounts.length;
    const rest = (amounts.length === 0 ? text : text.slice(0, amounts[0]!.start)).trim();
    if (TWO_LETTERS.test(rest) && rest.length > name.length) name = rest;
  }
  if (length > WORDS_MOST || prices === 0 || others > 3) return false;
  const bare = name.replace(/[\s:.,–—-]+$/u, '');
  if (!THREE_LETTERS.test(bare) || !WORDS.test(bare)) return false;
  return !rowLabel(bare) && !isPriceLabel(bare) && !isOtherMoney(fold(bare).text) && !/[:：]$/.test(name);
}
