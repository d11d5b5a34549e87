import { LINK } from '../types';
import { COLON } from './box-kinds';
import { headingLabel } from './heading-labels';
import { isSentence, PROSE } from './prose';
import { isOnly, levelOf, type Reading, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import { isOfTrade } from './trade';

/** What stands under "Lot description: Corner", or a number of the article by itself, is no more than a fact. */
export const FACTS_ALONE = 0.44;
export const ROWS_ALONE = 0.55;

const NAMED_FACT = /^[^:!?]{2,40}(?::\s*.{0,60}|\s\S*\d{4,})$/;
export function isFact(reading: Reading, index: number): boolean {
  const { lines, boxes, row } = reading;
  const line = lines[index]!;
  if (isOnly(line, LINK) || isOfTrade(reading, index)) return true;
  if (isInLabelledRow(reading, index)) return headingLabel(lines[boxes[row[line.box]!]!.from]!.text) !== 'description';
  // Lines of a paragraph, or of a list, were written by the seller.
  const { tag } = boxes[line.box]!;
  const isTyped = sizeOf(boxes[line.box]!) > 1 || tag === 'p' || tag === 'li';
  const isRow = /^[\d\W]+$/.test(line.text) || (!isTyped && NAMED_FACT.test(line.text));
  return !isSentence(line) && (levelOf(reading, index) > 0 || isRow);
}

/** A short text in one of several filled cells of a row; a cell that holds sentences is laid out by a table, no more. */
export function isInLabelledRow({ lines, boxes, row }: Reading, index: number): boolean {
  const line = lines[index]!;
  const around = row[line.box]!;
  if (around < 0 || line.text.length >= 120 || sizeOf(boxes[around]!) > 6) return false;
  let cell = line.box;
  while (boxes[cell]!.parent !== around && boxes[cell]!.parent >= 0 && cell !== around) cell = boxes[cell]!.parent;
  return sizeOf(boxes[cell]!) < sizeOf(boxes[around]!);
}

/** A label and its value in a box of their own, beside another box like it: "Lot description" over "Corner". */
export function isOneOfPairs({ lines, boxes }: Reading, label: number): boolean {
  const pair = boxes[boxes[lines[label]?.box ?? -1]?.parent ?? -1];
  if (pair?.from !== label || sizeOf(pair) !== 2) return false;
  const isAlike = (line: number) => {
    let at = lines[line]?.box ?? -1;
    while (at >= 0 && boxes[at]!.parent !== pair.parent) at = boxes[at]!.parent;
    const one = boxes[at];
    return one !== undefined && one.tag === pair.tag && one.hint === pair.hint && sizeOf(one) === 2;
  };
  return isAlike(pair.from - 1) || isAlike(pair.to);
}

export const isInPairs = (reading: Reading, index: number): boolean =>
  [index, index - 1].some((label) => isOneOfPairs(reading, label) && reading.lines[label]!.text.length < PROSE);

/** An item beside one that says where the thing is, when it was listed, what number it has: the site's own list. */
export function isInListOfAdvert({ lines, boxes }: Reading, index: number): boolean {
  const { tag, parent } = boxes[lines[index]!.box]!;
  if (tag !== 'li' || parent < 0) return false;
  return lines
    .slice(boxes[parent]!.from, boxes[parent]!.to)
    .some(({ text }) => ['place', 'listedDate', 'skip'].includes(rowLabel(COLON.exec(text)?.[1] ?? '') ?? ''));
}
