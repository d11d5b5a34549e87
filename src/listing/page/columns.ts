import { amountsIn } from './amounts';
import { type Reading, sizeOf } from './reading';

/** The cells of a row, each by its box. */
function cellsOf({ boxes }: Reading, row: number): number[] {
  const found: number[] = [];
  for (let at = row + 1; at < boxes.length && boxes[at]!.from < boxes[row]!.to; at++)
    if (boxes[at]!.parent === row) found.push(at);
  return found;
}

/** What stands over a cell in a row of labels over one row of values ("Estimate | Hammer" over "£30 | £41"), or "". */
export function columnLabel(reading: Reading, line: number): string {
  const { boxes, lines, row } = reading;
  const own = row[lines[line]!.box]!;
  const rowAt = (index: number): number => (lines[index] ? row[lines[index].box]! : -1);
  if (own < 0 || !/\d/.test(lines[line]!.text)) return '';
  const above = rowAt(boxes[own]!.from - 1);
  if (above < 0 || boxes[above]!.parent !== boxes[own]!.parent) return '';
  const labels = cellsOf(reading, above);
  const values = cellsOf(reading, own);
  const below = rowAt(boxes[own]!.to);
  // More rows of values are a list.
  const isList =
    below >= 0 && boxes[below]!.parent === boxes[own]!.parent && cellsOf(reading, below).length === values.length;
  if (labels.length < 2 || labels.length !== values.length || isList) return '';
  const texts = labels.map((box) => (sizeOf(boxes[box]!) === 1 ? lines[boxes[box]!.from]!.text : ''));
  if (texts.some((text) => amountsIn(text).length > 0 || /\d$/.test(text))) return '';
  return texts[values.findIndex((box) => line >= boxes[box]!.from && line < boxes[box]!.to)] ?? '';
}
