import { remembering } from '../text/remember';
import { inchMarks } from './inch-marks';
import { type MeasureKind, readMeasures, type WrittenUnit } from './measure-reader';
import { decimalMark } from './numerals';
import { arePoundsWeight } from './pounds';
import type { Measure } from './types';
import { LENGTHS, WEIGHTS } from './units';

/** The page's language tag, which decides what "1.340" is; an English reading without one. */
export interface MeasureOptions {
  language?: string | null;
}

const MONEY_BEFORE = /\p{Sc} ?$/u;
const NAMED_BY_NUMBER = /(?<!\p{L})(?:class|klasse|classe|model|modell|modele|type|typ|no|nr|mark|mk)\.? $/u;
const WEIGHED =
  /(?<!\p{L})(?:weigh|weighs|weighing|weight|wiegt|gewicht)(?: (?:is|in at|about|approx|around|nearly|over))?[.:]? $/u;

function isAfterMoneySign({ folded, start }: WrittenUnit): boolean {
  return MONEY_BEFORE.test(folded.text.slice(Math.max(0, start - 2), start));
}

/** "5m2", "3g4": letters between digits are no unit, except where a smaller unit follows ("21lb8oz"). */
function runsIntoNumber({ folded, end, hasSmaller }: WrittenUnit): boolean {
  return !hasSmaller && /\d/.test(folded.text[end] ?? '');
}

/** "class 15 g": the number is the class's. */
function isNamed({ folded, start, quantity }: WrittenUnit): boolean {
  return Number.isInteger(quantity.value) && NAMED_BY_NUMBER.test(folded.text.slice(Math.max(0, start - 12), start));
}

function isNoMeasure(written: WrittenUnit): boolean {
  return isAfterMoneySign(written) || runsIntoNumber(written) || isNamed(written);
}

function isWeight(written: WrittenUnit): boolean {
  if (isNoMeasure(written)) return false;
  const { folded, word, start, end, hasSmaller, quantity } = written;
  if (word === 'pound' || word === 'pounds') return hasSmaller || arePoundsWeight(folded.text, start, end);
  // "1st", "2 St." (pieces): a stone only where pounds follow or weighing is spoken of.
  if (word === 'st') return hasSmaller || WEIGHED.test(folded.text.slice(Math.max(0, start - 24), start));
  // "21880G" is a number of its own; so much is written in kilograms.
  if (word === 'g' && quantity.value > MOST_GRAMS) return false;
  return true;
}

const MOST_GRAMS = 20_000;

const DIMENSION_AFTER =
  /^\.?(?: ?[x×*)\]/;,]| ?- ?\d|\.? *$|\.? *\n|\. [^\d]| (?:x|by|wide|width|long|length|deep|depth|high|height|tall|across|thick|diameter|dia|square|in (?:length|width|height|diameter)|bed|arm|[hwld])(?!\p{L}))/u;
const FEET_OF_LENGTH =
  /^ (?:x|by|wide|long|deep|high|tall|of (?:cable|cord|lead|flex|wire)|cable|cord|lead|flex)(?!\p{L})/u;

function isLength(written: WrittenUnit, marks: ReadonlySet<number>): boolean {
  if (isNoMeasure(written)) return false;
  const { folded, word, end, quantity, hasSmaller } = written;
  const after = folded.text.slice(end, end + 24);
  switch (word) {
    case '"':
      return marks.has(end - 1);
    // "5' 6"" is feet; "50's" and a closing quote are not.
    case "'":
      return hasSmaller;
    // "3 in 1", "2 in stock".
    case 'in':
      return quantity.hasFraction ? !/^ \d/.test(after) : DIMENSION_AFTER.test(after);
    // A machine comes with 5 feet that are no length at all.
    case 'foot':
    case 'feet':
      return hasSmaller || FEET_OF_LENGTH.test(after);
    default:
      return true;
  }
}

const WEIGHT_KIND: MeasureKind = { unit: 'kg', units: WEIGHTS, accepts: isWeight };

/** One reader for the languages with a decimal point and one for those with a comma: all else is the same in each. */
function inEitherMark(read: (text: string, language: string) => readonly Measure[]) {
  const point = remembering((text: string) => read(text, 'en'));
  const comma = remembering((text: string) => read(text, 'de'));
  return (text: string, { language = null }: MeasureOptions = {}): readonly Measure[] =>
    decimalMark(language) === ',' ? comma(text) : point(text);
}

/**
 * All weights written in a text, in kg: kilograms, grams, pounds, stones, ounces and their compounds and ranges.
 * "21 pounds" is a weight only beside words of weighing or with ounces (see pounds.ts); else it is money.
 */
export const findWeights = inEitherMark((text, language) => readMeasures(text, language, WEIGHT_KIND));

/** All lengths written in a text, in mm: millimetres to metres, inches and feet, fractions, ranges, "38 x 18 x 28 cm". */
export const findLengths = inEitherMark((text, language) => {
  let marks: Set<number> | null = null;
  const accepts = (written: WrittenUnit) => {
    marks ??= inchMarks(written.text, written.folded);
    return isLength(written, marks);
  };
  return readMeasures(text, language, { unit: 'mm', units: LENGTHS, accepts });
});
