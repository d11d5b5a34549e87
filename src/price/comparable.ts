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

/**
 * An observation as a price of today's money in the wanted currency, with a weight by its age and likeness. The weights
 * are common practice, no source: an old price, another grade's or a sister's tells less.
 */
export function comparable(
  seen: Observation,
  wanted: Wanted,
  known: PriceKnowledge,
): Comparable | { leftOut: LeftOut } {
  if (!(seen.amount > 0) || !(seen.amount < MOST_AMOUNT)) return { leftOut: 'amount' };
  if (seen.date > wanted.asOf) return { leftOut: 'future' };
  // A repainted machine is another thing to buy than a plain one.
  if ((seen.finish ?? 'plain') !== wanted.finish) return { leftOut: 'finish' };
  const converted = convertNear(seen.amount, seen.currency, wanted.currency, known.rates, seen.date);
  if (converted === null) return { leftOut: 'no-rate' };
  const likened = likeness(seen, wanted, known);
  if ('leftOut' in likened) return likened;
  const indexed = known.index ? inMoneyOf(converted, known.index, seen.date, wanted.asOf) : null;
  const age = Math.max(0, yearsBetween(seen.date, wanted.asOf));
  const weight = likened.weight * 0.5 ** (age / (indexed === null ? HALF_LIFE.plain : HALF_LIFE.indexed));
  return { price: (indexed ?? converted) * likened.times, kind: seen.kind, weight: Math.max(weight, LEAST) };
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
