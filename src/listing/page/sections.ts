import { LINK } from '../types';
import { headingLabel } from './heading-labels';
import { boxOf, isOnly, levelOf, type Reading, sizeOf } from './reading';

/**
 * The lines that a heading (or a label on a line of its own) stands over: `[from, to)`.
 * Where the label is the first thing in a box of its own, that box; else all that follows in the box around it; in both
 * cases up to the next heading of its rank or the next label.
 */
export function sectionAfter(reading: Reading, label: number): [number, number] {
  const { lines, boxes, heading } = reading;
  const own = lines[label]!;
  let at = own.box;
  // Climb while the label is all that the box holds.
  while (sizeOf(boxes[at]!) <= 1 && boxes[at]!.parent >= 0) at = boxes[at]!.parent;
  const limit = boxes[at]!.to;
  const rank = levelOf(reading, label) || 7;
  let to = label + 1;
  for (; to < limit; to++) {
    const box = boxOf(reading, to);
    const level = levelOf(reading, to);
    if (level && level <= rank && heading[lines[to]!.box] !== heading[own.box]) break;
    if (box.tag === 'dt' && boxes[own.box]!.tag === 'dt') break;
    if (isOnly(lines[to]!, LINK)) continue;
    // A label among other text of its line's box is only a word; alone in its box it begins another part.
    if (sizeOf(box) === 1 && headingLabel(lines[to]!.text, level === 0)) break;
  }
  return [label + 1, to];
}
