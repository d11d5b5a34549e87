import { firstNotBefore } from '../text/in-order';
import type { CueMatch } from './kind-cues';
import type { Noun } from './nouns';
import { type TextPart, tokenAt } from './part-text';

const WORDS_BETWEEN = 3;
const DIGITS_WITHIN = 4;
const UNITS = /^(?:inch(?:es)?|in|"|'|cm|mm|kg|lbs?|hp|volts?|watts?|v|w|zoll|pouces)$/;
const OF_ONE =
  /^(?:colou?r|coloured|tone|toned|piece|speed|step|way|drawer|spool|needle|owner|farbige?|farben|ton|tons|couleurs?|vitesses)$/;
const NUMBERS_OF_THINGS = /^(?:two|three|four|five|zwei|drei|vier|deux|trois|quatre)$/;

/** "Three machines", "30 heads": the advert counts them without their full name. */
export function countsMachines(part: TextPart, cues: readonly CueMatch[]): boolean {
  const numbers = new Set(numbersIn(part, cues).map(({ lastToken }) => lastToken));
  return cues.some(({ value, firstToken }) => {
    if (value !== 'counted') return false;
    return [1, 2, 3].some((back) => numbers.has(firstToken - back)) || digitBefore(part, firstToken);
  });
}

/** "Three old sewing machines", "3 sewing machines". */
export function countsThings(part: TextPart, nouns: readonly Noun[], cues: readonly CueMatch[]): boolean {
  const numbers = numbersIn(part, cues);
  return nouns.some(
    ({ what, plural, firstToken }) =>
      what === 'thing' && plural && (wordBefore(part, numbers, firstToken) || digitBefore(part, firstToken)),
  );
}

/** "2x Name", "3 × Name". */
export function isTimes(part: TextPart, at: number): boolean {
  const [count, times] = [part.tokens[at - 2], part.tokens[at - 1]];
  return count?.kind === 'number' && /^(?:[2-9]|1\d)$/.test(count.folded) && /^[x×]$/.test(times?.folded ?? '');
}

/** "Two Names", "zwei schwarze Names". */
export function countsAt(part: TextPart, start: number): boolean {
  const at = tokenAt(part, start);
  // "Pretty two colour Name".
  const reach = OF_ONE.test(part.tokens[at - 1]?.folded ?? '') ? 0 : 2;
  return part.tokens.slice(Math.max(0, at - reach), at).some(({ folded }) => NUMBERS_OF_THINGS.test(folded));
}

/** "One of my two machines" is one. */
function numbersIn({ tokens }: TextPart, cues: readonly CueMatch[]): CueMatch[] {
  return cues.filter(
    ({ value, firstToken }) =>
      value === 'number' && !(tokens[firstToken - 2]?.folded === 'of' && tokens[firstToken - 3]?.folded === 'one'),
  );
}

/** A word of number stands before, with at most so many words between. */
function wordBefore(part: TextPart, numbers: readonly CueMatch[], at: number): boolean {
  const nearest = numbers[firstNotBefore(numbers, ({ lastToken }) => lastToken < at) - 1];
  if (!nearest) return false;
  let words = 0;
  for (let i = at - 1; i > nearest.lastToken && words <= WORDS_BETWEEN; i--)
    if (part.tokens[i]!.kind === 'word') words++;
  return words <= WORDS_BETWEEN;
}

/** "3 sewing machines", "5x sewing machines". */
function digitBefore(part: TextPart, at: number): boolean {
  for (let i = Math.max(0, at - DIGITS_WITHIN); i < at; i++) {
    const { kind, folded, glued } = part.tokens[i]!;
    // "T2": of a name.
    if (glued && part.tokens[i - 1]?.kind === 'word') continue;
    // "14 inch mowers".
    if (UNITS.test(part.tokens[i + 1]?.folded ?? '')) continue;
    const isPercent = part.tokens[i + 1]?.folded.startsWith('%');
    if (kind === 'number' && /^\d{1,2}$/.test(folded) && Number(folded) > 1 && !isPercent) return true;
  }
  return false;
}
