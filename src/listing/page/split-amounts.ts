import { currencyBefore, isCurrency } from './money-spots';
import type { Reading } from './reading';

/** A number alone, as prices are written: no more than that, so that years and counts beside words are none, nor the cents of another line. */
const BARE = /^(?!0\d)\d{1,3}(?:[.,'’ \u00a0\u202f]?\d{3})*(?:[.,]\d{2})?(?:[.,]?\s?[-–—]{1,2})?$/;
/** Levels up to the box around both. */
const LEVELS_MOST = 3;
const LINES_MOST = 12;

/** An amount whose number and currency a page sets into lines of their own, as a person reads the two; null for others. */
export function joinedAmount(reading: Reading, index: number): string | null {
  const { lines } = reading;
  const number = lines[index]!.text;
  if (number.length > 20 || !BARE.test(number)) return null;
  const behind = currencyBefore(lines[index + 1]?.text ?? '');
  if (behind && areClose(reading, index, index + 1)) return `${number} ${behind}`;
  const before = lines[index - 1]?.text ?? '';
  return isCurrency(before) && areClose(reading, index - 1, index) ? `${before} ${number}` : null;
}

/** One small box holds both lines. */
function areClose({ lines, boxes }: Reading, one: number, next: number): boolean {
  let at = lines[one]!.box;
  for (let step = 0; step < LEVELS_MOST && at >= 0; step++, at = boxes[at]!.parent) {
    const { from, to } = boxes[at]!;
    if (from <= one && to > next) return to - from <= LINES_MOST;
  }
  return false;
}
