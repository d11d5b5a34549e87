import { type Folded, fold } from '../text/fold';
import type { Span } from '../text/span';
import { type Quantity, quantitiesIn } from './quantities';
import type { Measure } from './types';
import type { Unit } from './units';

/** What kind of measure is read: its units, and when a word that could be a unit is one. */
export interface MeasureKind {
  unit: Measure['unit'];
  units: ReadonlyMap<string, Unit>;
  accepts(written: WrittenUnit): boolean;
}

/** A quantity with the word for a unit behind it, in the folded text. */
export interface WrittenUnit extends Span {
  text: string;
  folded: Folded;
  quantity: Quantity;
  word: string;
  unit: Unit;
  /** The smaller unit that follows is written out: "2 st 4 lb". */
  hasSmaller: boolean;
}

/** "14cmx7cm", '14"x7"': the x of dimensions belongs to no unit. */
const UNIT = / {0,2}-?(\p{L}{1,14}?(?=x\d|(?!\p{L}))|"|'{1,2})/uy;
const BETWEEN_UNITS = /^\.?(?:,? ?| and | und | & | et )$/;
const RANGE = /^(?: ?-{1,2} ?| ?\/ ?| to | bis | a | or | oder | ou )$/;
const RANGE_BETWEEN = /^ (?:and|und|et) $/;
const OPENS_RANGE = /(?:between|zwischen|entre) $/;
const WIDEST_RANGE = 4;
const TIMES = /^ ?(?:x|×|\*|by|mal|sur) ?$/;

const APPROXIMATE =
  /(?:(?:^|[^\p{L}])(?:approx|approximately|about|around|roughly|some|nearly|almost|over|under|circa|ca|c|etwa|rund|ungefahr|zirka|fast|knapp|uber|unter|environ|env|a peu pres|presque|between|zwischen|entre)[.:]?|[~≈]) ?$/u;
const APPROXIMATE_AFTER = /^(?: ?-?ish| or so| oder so| environ| approx| ca)(?!\p{L})/u;

/** Rid of what binary fractions add: far more digits than any scale shows. */
const exact = (value: number) => Number(value.toPrecision(12));

function unitAfter(kind: MeasureKind, text: string, folded: Folded, quantity: Quantity): WrittenUnit | null {
  UNIT.lastIndex = quantity.end;
  const match = UNIT.exec(folded.text);
  const unit = match && kind.units.get(match[1]!);
  if (!match || !unit) return null;
  const end = quantity.end + match[0].length;
  return { text, folded, quantity, word: match[1]!, unit, start: quantity.start, end, hasSmaller: false };
}

interface Read extends Span {
  low: number;
  high: number;
  unit: Unit;
}

/** One value in one unit or in two ("21 lb 8 oz"), and how many quantities it took. */
function readOne(
  kind: MeasureKind,
  text: string,
  folded: Folded,
  quantities: readonly Quantity[],
  at: number,
): { read: Read; used: number } | null {
  const first = unitAfter(kind, text, folded, quantities[at]!);
  if (!first || first.quantity.afterLetters) return null;
  const { unit, quantity } = first;
  const next = quantities[at + 1];
  if (
    unit.smaller &&
    next &&
    next.value < unit.holds! &&
    BETWEEN_UNITS.test(folded.text.slice(first.end, next.start))
  ) {
    const second = unitAfter(kind, text, folded, next);
    const isWritten = second?.unit.name === unit.smaller;
    // "2 stone 4" needs no "lb".
    const isMeant = !second && first.word.startsWith('stone') && folded.text[next.start - 1] === ' ';
    if ((isWritten || isMeant) && kind.accepts({ ...first, hasSmaller: true })) {
      const value = (quantity.value + next.value / unit.holds!) * unit.size;
      return {
        read: { start: first.start, end: isWritten ? second!.end : next.end, low: value, high: value, unit },
        used: 2,
      };
    }
  }
  if (!kind.accepts(first)) return null;
  const value = quantity.value * unit.size;
  return { read: { start: first.start, end: first.end, low: value, high: value, unit }, used: 1 };
}

/** Is the text between two quantities, the first at `start`, what joins the ends of a range? */
function joinsRange(folded: string, start: number, between: string): boolean {
  return (
    RANGE.test(between) ||
    (RANGE_BETWEEN.test(between) && OPENS_RANGE.test(folded.slice(Math.max(0, start - 10), start)))
  );
}

/** The lower end of a range without a unit of its own ("11-12 kg"), or null. */
function lowerEnd(folded: string, before: Quantity | undefined, high: Read): number | null {
  if (!before || before.afterLetters || !joinsRange(folded, before.start, folded.slice(before.end, high.start)))
    return null;
  const low = before.value * high.unit.size;
  return low < high.low && high.low <= low * WIDEST_RANGE ? low : null;
}

/** "11kg-12kg": the second is the upper end of the first. */
function continuesRange(folded: string, low: Read, high: Read): boolean {
  const isWider =
    low.unit === high.unit && low.low === low.high && low.low < high.low && high.low <= low.low * WIDEST_RANGE;
  return isWider && joinsRange(folded, low.start, folded.slice(low.end, high.start));
}

/** All measures of one kind in a text, in order. Never throws. */
export function readMeasures(text: string, language: string | null, kind: MeasureKind): Measure[] {
  const folded = fold(text);
  const quantities = quantitiesIn(folded.text, language);
  const reads: Read[] = [];
  let taken = 0;
  for (let at = 0; at < quantities.length; at++) {
    const one = readOne(kind, text, folded, quantities, at);
    if (!one) continue;
    const { read } = one;
    const before = at > taken ? quantities[at - 1] : undefined;
    const low = lowerEnd(folded.text, before, read);
    const last = reads.at(-1);
    if (low !== null) reads.push({ ...read, low, start: before!.start });
    else if (last && continuesRange(folded.text, last, read))
      reads[reads.length - 1] = { ...read, low: last.low, start: last.start };
    else {
      // "38 x 18 x 28 cm": the unit is that of all three.
      const sides: Read[] = [];
      let right = read.start;
      for (let left = at - 1; left >= taken; left--) {
        const side = quantities[left]!;
        if (!TIMES.test(folded.text.slice(side.end, right))) break;
        const value = side.value * read.unit.size;
        sides.push({ start: side.start, end: side.end, low: value, high: value, unit: read.unit });
        right = side.start;
      }
      reads.push(...sides.reverse(), read);
    }
    at += one.used - 1;
    taken = at + 1;
  }
  return reads.map((read) => toMeasure(text, folded, read, kind.unit));
}

function toMeasure(text: string, folded: Folded, read: Read, unit: Measure['unit']): Measure {
  const before = folded.text.slice(Math.max(0, read.start - 24), read.start);
  const after = folded.text.slice(read.end, read.end + 12);
  const { start, end } = folded.toOriginal(read.start, read.end);
  return {
    start,
    end,
    low: exact(read.low),
    high: exact(read.high),
    unit,
    quote: text.slice(start, end),
    approximate: APPROXIMATE.test(before) || APPROXIMATE_AFTER.test(after),
  };
}
