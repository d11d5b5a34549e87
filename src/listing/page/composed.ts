import type { Line } from '../types';
import type { Reading } from './reading';

/** Lines without those that say a long one again: a whole text stands beside its cut beginning, for small screens. */
function withoutRepeats({ lines }: Reading, indexes: number[]): number[] {
  const beginnings = new Map<string, number>();
  const left = new Set(indexes);
  for (const index of indexes) {
    const { text } = lines[index]!;
    if (text.length < REPEATED_LEAST) continue;
    const key = text.slice(0, REPEATED_LEAST);
    const before = beginnings.get(key);
    const earlier = before === undefined ? '' : lines[before]!.text;
    const shorter = text.length < earlier.length ? text : earlier;
    const shared = shorter.length * REPEATED_SHARE;
    const isSame = before !== undefined && earlier.slice(0, shared) === text.slice(0, shared);
    const isRepeated = isSame && (text === earlier || /\.\.\.|…/.test(shorter.slice(-CUT_WITHIN)));
    if (isRepeated && earlier.length >= text.length) left.delete(index);
    else {
      if (isRepeated) left.delete(before);
      beginnings.set(key, index);
    }
  }
  return left.size === indexes.length ? indexes : [...left];
}

/** Characters of a line that are not the same by chance; and what share of the shorter one a repeated one says. */
const REPEATED_LEAST = 80;
const REPEATED_SHARE = 0.8;
/** Characters from the end in which a cut beginning says so: "... read more". */
const CUT_WITHIN = 30;

/** The lines as a person reads them: cells of one row side by side, all else below each other. */
export function composed(reading: Reading, all: number[]): string {
  const { lines, row, boxes } = reading;
  const indexes = withoutRepeats(reading, all);
  const cellOf = (box: number) => {
    let at = box;
    while (at >= 0 && boxes[at]!.parent !== row[box]) at = boxes[at]!.parent;
    return at;
  };
  let text = '';
  let last: Line | null = null;
  for (const index of indexes) {
    const line = lines[index]!;
    const sameRow =
      last !== null && row[line.box]! >= 0 && row[last.box] === row[line.box] && cellOf(last.box) !== cellOf(line.box);
    text += text === '' ? line.text : `${sameRow ? ' ' : '\n'}${line.text}`;
    last = line;
  }
  return text;
}
