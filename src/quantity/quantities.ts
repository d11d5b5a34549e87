import { remembering } from '../text/remember';
import type { Span } from '../text/span';
import { decimalMark, nextNumeral, readNumeral, type ThreeDigits } from './numerals';

/** A number as measures are written, in a folded text: decimals, fractions, whole and fraction ("10 1/2"). */
export interface Quantity extends Span {
  value: number;
  hasFraction: boolean;
  /** Runs on from letters: "8" in "21lb8oz", "20" in "K20". By itself it is no quantity. */
  afterLetters: boolean;
}

/** "38x18", "14cmx7cm": not letters that the number runs on from. */
const TIMES = /(?:\d|["']|mm|cm|in)x$/;
const FRACTION = /(?:( |-| and |)(\d{1,2}))?\/(\d{1,2})(?![\d/])/y;
const DENOMINATORS = new Set([2, 3, 4, 5, 6, 8, 10, 12, 16, 32, 64]);

/** "1.340" is one and some in English and thousands in German; a comma with three digits the other way round. */
const threeDigits =
  (mark: '.' | ','): ThreeDigits =>
  (separator) =>
    separator === mark ? 'decimals' : 'group';

function fractionOf(top: string, bottom: string): number | null {
  const [over, under] = [Number(top), Number(bottom)];
  return DENOMINATORS.has(under) && over > 0 && over < under ? over / under : null;
}

function withFraction(folded: string, whole: Quantity): Quantity {
  FRACTION.lastIndex = whole.end;
  const match = FRACTION.exec(folded);
  if (!match || !Number.isInteger(whole.value)) return whole;
  const [written, joint, top, bottom] = match as unknown as [string, string?, string?, string?];
  const end = whole.end + written.length;
  if (top === undefined) {
    const value = fractionOf(String(whole.value), bottom!);
    return value === null ? whole : { ...whole, end, value, hasFraction: true };
  }
  const part = joint === '' ? null : fractionOf(top, bottom!);
  return part === null ? whole : { ...whole, end, value: whole.value + part, hasFraction: true };
}

/** All quantities of a folded text, in order, but for the second half of what is no fraction ("40/3"). */
export function quantitiesIn(folded: string, language: string | null): readonly Quantity[] {
  return decimalMark(language) === ',' ? inCommaLanguages(folded) : inPointLanguages(folded);
}

/** Weights and lengths are both read from them. Only the decimal mark is of a language's. */
const inPointLanguages = remembering((folded: string) => readQuantities(folded, threeDigits('.')));
const inCommaLanguages = remembering((folded: string) => readQuantities(folded, threeDigits(',')));

function readQuantities(folded: string, three: ThreeDigits): readonly Quantity[] {
  const found: Quantity[] = [];
  for (let number = nextNumeral(folded, 0); number; ) {
    const { value, end } = readNumeral(number, three);
    const before = folded.slice(Math.max(0, number.start - 3), number.start);
    const afterLetters = /\p{L}$/u.test(before) && !TIMES.test(before);
    const whole = { start: number.start, end, value: Number(value), hasFraction: false, afterLetters };
    const quantity = withFraction(folded, whole);
    if (!/#$|\d\/$/.test(before)) found.push(quantity);
    number = nextNumeral(folded, quantity.end);
  }
  return found;
}
