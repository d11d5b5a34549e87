import { type Box, LINK } from '../types';
import { headingLabel } from './heading-labels';
import { boxOf, isOnly, levelOf, type Reading, sizeOf } from './reading';

/**
 * The lines that a heading (or a label on a line of its own) stands over: `[from, to)`.
 * Where the label is the first thing in a box of its own, that box; else all that follows in the box around it; in both
 * cases up to the next heading of its rank or the next label. `mayHold` says of a still wider box that the label begins
 * whether it may be the part.
 */
export function sectionAfter(
  reading: Reading,
  label: number,
  mayHold: (box: number) => boolean = () => false,
): [number, number] {
  const { lines, boxes, heading } = reading;
  const own = lines[label]!;
  let at = own.box;
  // Climb while the label is all that the box holds.
  while (sizeOf(boxes[at]!) <= 1 && boxes[at]!.parent >= 0) at = boxes[at]!.parent;
  let wider = boxes[at]!.parent;
  while (wider >= 0 && boxes[wider]!.from === label && mayHold(wider)) {
    at = wider;
    wider = boxes[at]!.parent;
  }
  const limit = boxes[at]!.to;
  const rank = levelOf(reading, label) || 7;
  // Headings of the part itself, inside it, are no other part: "Description" over a panel that begins with "Details".
  let from = label + 1;
  while (isHeadingInside(reading, label, from)) from++;
  let to = from;
  // Where the first line below is of the label's kind, every paragraph is.
  const kin = boxes[lines[from]?.box ?? -1]?.hint === boxes[own.box]!.hint ? null : boxes[own.box]!;
  for (; to < limit; to++) {
    const box = boxOf(reading, to);
    if (kin && sizeOf(box) === 1 && isLabelLike(box, kin) && lines[to]!.text.length <= LABEL_MOST) break;
    const level = levelOf(reading, to);
    if (level && level <= rank && heading[lines[to]!.box] !== heading[own.box]) break;
    if (box.tag === 'dt' && boxes[own.box]!.tag === 'dt') break;
    if (isOnly(lines[to]!, LINK)) continue;
    // A label among other text of its line's box is only a word; alone in its box it begins another part.
    if (sizeOf(box) === 1 && !isOwnLabel(reading, from, to) && headingLabel(lines[to]!.text, level === 0)) break;
  }
  return [from, Math.max(from, to)];
}

/** "FEATURES:" beside the first paragraph of a text that has a box to itself: whoever wrote the text wrote it. */
function isOwnLabel({ lines, boxes }: Reading, from: number, at: number): boolean {
  const around = boxes[lines[at]!.box]!.parent;
  const first = lines[from]!.box;
  return (
    lines[at]!.text.endsWith(':') &&
    boxes[around]?.from === from &&
    (first === around || boxes[first]!.parent === around)
  );
}

/** Longer than any label. */
const LABEL_MOST = 60;

/** A paragraph beside a label that has the label's own name: "h2", "tab-title". */
const isLabelLike = (box: Box, label: Box): boolean =>
  label.hint !== '' && box.hint === label.hint && box.tag === label.tag && box.parent === label.parent;

/** After a label, with nothing but headings before it, one of a box beside it that holds more than these. */
function isHeadingInside(reading: Reading, label: number, at: number): boolean {
  const { boxes, heading, lines } = reading;
  const own = lines[at] ? heading[lines[at].box]! : -1;
  const beside = boxes[heading[lines[label]!.box]!]?.parent;
  const around = boxes[own]?.parent ?? -1;
  return (
    around >= 0 &&
    boxes[around]!.parent === beside &&
    boxes[around]!.from === label + 1 &&
    sizeOf(boxes[around]!) > at - label
  );
}
