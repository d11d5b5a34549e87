import { type Line, STRUCK } from '../types';
import { type Amount, amountsIn } from './amounts';
import { runsOf } from './reading';

/** Longer lines are sentences: an amount in them is told, seldom asked. */
const SHORT_LINE = 60;
/** Where the price stands, but no amount: "Free", "Offers". */
export const WORDS_MOST = 40;

export function isSentence(text: string): boolean {
  return text.length > SHORT_LINE || (text.length > 30 && /[.!?]$/.test(text) && text.split(' ').length > 5);
}

/** The run of an amount's first digit. */
function runOf({ text, runs }: Line, { start, end }: Amount) {
  const digit = start + Math.max(0, text.slice(start, end).search(/\d/));
  return runs?.findLast(({ at }) => at <= digit);
}

export const hintOf = (line: Line, amount: Amount): string => runOf(line, amount)?.hint ?? '';

/** In an element of its own, with no space before it: what stands before belongs to another part of the page. */
export const isGlued = ({ text, runs }: Line, { start }: Amount): boolean =>
  start > 0 && !/\s/.test(text[start - 1]!) && (runs?.some(({ at }) => at === start) ?? false);

/** The same amount, by what stands behind it alone. */
export const alone = ({ text }: Line, one: Amount): Amount => ({
  ...one,
  other: amountsIn(text.slice(one.start))[0]?.other ?? true,
});

/** The same amount, without the words behind it in another element, which holds a place behind it: those are said of that. */
export function apart({ text, runs }: Line, one: Amount, place: number | undefined): Amount {
  const at =
    place === one.end
      ? runs?.find((run) => run.at >= place)?.at
      : place && runs?.findLast((run) => run.at <= place)?.at;
  if (!at || at < one.end) return one;
  return amountsIn(text.slice(0, at)).find(({ start }) => start === one.start) ?? one;
}

/** A line with spaces in the place of what is struck out. */
export const unstruck = (line: Line): string =>
  line.runs?.some(({ flags }) => flags & STRUCK)
    ? runsOf(line)
        .map(({ text, flags }) => (flags & STRUCK ? ' '.repeat(text.length) : text))
        .join('')
    : line.text;

/** True where the first digit of an amount is struck out. */
export const isStruck = (line: Line, amount: Amount): boolean => ((runOf(line, amount)?.flags ?? 0) & STRUCK) !== 0;

/**
 * The amount with the words that belong to it ("£45 ono", "£40 - £50"), but not another amount beside it. Of a sentence
 * all, since its words say which amount is meant.
 */
export function written(line: Line, amount: Amount | null, all: Amount[], isHeading: boolean): string {
  const { text, runs } = line;
  if (!amount || (isSentence(text) && !isHeading)) return text;
  if (isGlued(line, amount)) return text.slice(amount.start, amount.end);
  // "€39,-" glued to "1 in stock" of another element.
  const glued = runs?.find(({ at }) => at >= amount.end && at <= amount.end + 1 && at > 0 && !/\s/.test(text[at - 1]!));
  if (glued && /^\d/.test(text.slice(glued.at))) return text.slice(amount.start, glued.at).trim();
  if (all.length < 2 && text.length <= WORDS_MOST && !isHeading) return text;
  const next = all.find(({ start }) => start > amount.start);
  const between = next && text.slice(amount.end, next.start);
  if (next && between && /^\s*(?:[-–—]|to|bis|à)\s*$/.test(between)) return text.slice(amount.start, next.end);
  const after = text.slice(amount.end, Math.min(next?.start ?? text.length, amount.end + 14));
  // Up to the mark or the broken word that no longer belongs to it.
  const words = next ? after.replace(/[\s+(,;|/·•–—-]+(?:\p{L}+\s*)?$/u, '') : after.replace(/\s\S*$/, '');
  return (text.slice(amount.start, amount.end) + words).trim();
}
