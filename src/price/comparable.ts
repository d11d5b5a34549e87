import { yearsBetween } from './dates';
import { MOST_AMOUNT, type Observation } from './observation';
import type { Comparable } from './posterior-band';
import { convertNear, type RateKnown } from './rates';
import { inMoneyOf, type Points } from './series';

/** What prices are to be compared with. */
export interface Wanted {
  /** The model, by its refs in every pack that has it. */
  models: ReadonlySet<string>;
  /** Where it is a brand-free type: the models that are of it. */
  members: ReadonlySet<string>;
  grade: string | null;
  finish: 'plain' | 'refinished';
  currency: string;
  /** ISO 8601 date. */
  asOf: string;
}

export interface PriceKnowledge {
  rates: readonly RateKnown[];
  /** Price index of the wanted currency, or null. */
  index: Points | null;
  /** The stated median of a model in a grade, in one currency; null where none is stated. */
  mid: (model: string, grade: string | null) => number | null;
}

/** Why an observation says nothing here. */
export type LeftOut = 'future' | 'no-rate' | 'finish' | 'another-model' | 'another-grade' | 'amount';

/** Years after which a price counts half: with an index, and without one to bring it to today's money. */
const HALF_LIFE = { indexed: 8, plain: 4 };
/** Another grade, brought to this one by the ratio of the stated medians. */
const OTHER_GRADE = 0.5;
/** No grade said. */
const NO_GRADE = 0.7;
/** A sister model, brought to this one in the same way. */
const SISTER = 0.1;
/** A model of the type in question: a type's price is whatever its models' are. */
const MEMBER = 0.4;
/** Something is missing from it. */
const INCOMPLETE = 0.5;
/** However old it is, an observation counts for so much at least. */
const LEAST = 0.01;

/** An observation as a price of today's money in the wanted currency, or why it says nothing. */
export type Compare = (seen: Observation) => Comparable | { leftOut: LeftOut };

/**
 * Makes observations comparable, each with a weight by its age and likeness. The weights are common practice, no source:
 * an old price, another grade's or a sister's tells less. What a day's money means is worked out once: many prices share one.
 */
export function comparing(wanted: Wanted, known: PriceKnowledge): Compare {
  const days = new Map<string, DayKnown | null>();
  const dayOf = ({ currency, date }: Observation): DayKnown | null => {
    const key = `${currency} ${date}`;
    const met = days.get(key);
    if (met !== undefined) return met;
    const day = dayKnown(currency, date, wanted, known);
    days.set(key, day);
    return day;
  };
  return (seen) => {
    if (!(seen.amount > 0) || !(seen.amount < MOST_AMOUNT)) return { leftOut: 'amount' };
    if (seen.date > wanted.asOf) return { leftOut: 'future' };
    // A repainted machine is another thing to buy than a plain one.
    if ((seen.finish ?? 'plain') !== wanted.finish) return { leftOut: 'finish' };
    const day = dayOf(seen);
    if (day === null) return { leftOut: 'no-rate' };
    const likened = likeness(seen, wanted, known);
    if ('leftOut' in likened) return likened;
    return {
      ...{ price: seen.amount * day.times * likened.times, kind: seen.kind },
      weight: Math.max(likened.weight * day.fades, LEAST),
    };
  };
}

/** What a price in a currency on a date comes to. */
interface DayKnown {
  /** By what it is multiplied: the exchange rate of then, and the index, where one reaches back so far. */
  times: number;
  /** What is left of its weight by its age. */
  fades: number;
}

/** Null where no rate is known for that currency near that date. */
function dayKnown(currency: string, date: string, wanted: Wanted, { rates, index }: PriceKnowledge): DayKnown | null {
  const rate = convertNear(1, currency, wanted.currency, rates, date);
  if (rate === null) return null;
  const age = Math.max(0, yearsBetween(date, wanted.asOf));
  const times = index && inMoneyOf(1, index, date, wanted.asOf);
  return { times: rate * (times ?? 1), fades: 0.5 ** (age / (times === null ? HALF_LIFE.plain : HALF_LIFE.indexed)) };
}

function likeness(
  seen: Observation,
  wanted: Wanted,
  { mid }: PriceKnowledge,
): { times: number; weight: number } | { leftOut: LeftOut } {
  const sameModel = wanted.models.has(seen.model);
  const isMember = wanted.members.has(seen.model);
  const sameGrade = seen.grade === undefined || seen.grade === wanted.grade;
  const weight =
    (sameModel ? 1 : isMember ? MEMBER : SISTER) *
    (sameGrade ? 1 : OTHER_GRADE) *
    (seen.grade === undefined ? NO_GRADE : 1) *
    (seen.complete === false ? INCOMPLETE : 1);
  // Where no grade is asked for, any of them is an answer.
  const likeAsItIs = (sameModel || isMember) && (sameGrade || wanted.grade === null);
  if (likeAsItIs) return { times: 1, weight };
  const grade = seen.grade ?? wanted.grade;
  const [here, there] = [first([...wanted.models], (model) => mid(model, wanted.grade)), mid(seen.model, grade)];
  if (here !== null && there !== null) return { times: here / there, weight };
  return { leftOut: sameModel ? 'another-grade' : 'another-model' };
}

function first<T, R>(all: readonly T[], of: (one: T) => R | null): R | null {
  for (const one of all) {
    const found = of(one);
    if (found !== null) return found;
  }
  return null;
}
