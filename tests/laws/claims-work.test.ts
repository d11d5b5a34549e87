import { describe, expect, it } from 'vitest';
import { deniedInList } from '../../src/claims/denied-list';
import { retracted } from '../../src/claims/frame/retraction';
import { hitsIn } from '../../src/claims/hits';
import { clauseAt, type TextPart, textPart, tokenAt } from '../../src/claims/part-text';
import { StanceReader } from '../../src/claims/stance';
import { partMeant } from '../../src/claims/subject';
import { otherWeighed } from '../../src/claims/weight-subject';
import { findWeights } from '../../src/quantity/measures';
import { demo } from '../unit/audit/support/demo';
import { readingOf } from '../unit/claims/support/reading';

/** An advert's text that counts how often one of its clauses or tokens is looked up. */
function counted(text: string) {
  const count = { looks: 0 };
  const watched = <T>(list: readonly T[]): T[] =>
    new Proxy([...list], {
      get(target, key) {
        if (typeof key === 'string' && /^\d/.test(key)) count.looks++;
        return Reflect.get(target, key);
      },
    });
  const whole = textPart('description', text);
  return { count, part: { ...whole, tokens: watched(whole.tokens), clauses: watched(whole.clauses) } };
}

const ENGLISH = new Set(['en']);

/** Looks taken by all that is asked about each phrase and weight of a text, and how many of these there are. */
function work(text: string): { looks: number; asked: number } {
  const { count, part } = counted(text);
  const hits = hitsIn(part, demo, ENGLISH);
  const stances = new StanceReader(part, ENGLISH);
  const reading = { part, hits, stances, isEnglish: true, framer: null };
  const weights = findWeights(text, { language: 'en' });
  count.looks = 0;
  for (const hit of hits) {
    stances.at(hit.firstToken, hit.lastToken);
    partMeant(part, hits, hit, null);
    const clause = clauseAt(part, hit.firstToken)!;
    retracted(part, clause, hit);
    deniedInList(part, clause, hit.firstToken, () => []);
  }
  for (const { start, end } of weights) otherWeighed(reading, tokenAt(part, start), tokenAt(part, end - 1));
  return { looks: count.looks, asked: hits.length + weights.length };
}

const REPEATED = [
  'zigzag, ',
  'zigzag.\n',
  'zigzag? ',
  '"zigzag, cast iron" ',
  'no zigzag, cast iron or free arm, ',
  'no zigzag, cast iron or free arm. ',
  'What it lacks: zigzag. ',
  'Zigzag: no. ',
  'case, made of cast iron, ',
  'the case, 12 kg, ',
  'the case, 12 kg.\n',
  '12 kg, ',
];
const ONCE = 250;
/** Halving a list twice as long takes one look more: far from the double that a search from its start takes. */
const atMostForTwice = (once: number) => 2.5 * once + 500;

describe('what is asked about a phrase costs no more in a longer advert', () => {
  it('the counting notices a search from the start', () => {
    const careless = (times: number): number => {
      const { count, part } = counted('zigzag, '.repeat(times));
      const all: TextPart['clauses'] = [...part.clauses];
      count.looks = 0;
      for (const clause of all) part.clauses.indexOf(clause);
      return count.looks;
    };
    expect(careless(2 * ONCE)).toBeGreaterThan(atMostForTwice(careless(ONCE)));
  });

  it.each(REPEATED)('%j over and over', (text) => {
    const once = work(text.repeat(ONCE));
    const twice = work(text.repeat(2 * ONCE));
    expect(once.asked).toBeGreaterThanOrEqual(ONCE);
    expect(twice.asked).toBeGreaterThanOrEqual(2 * ONCE);
    expect(twice.looks).toBeLessThanOrEqual(atMostForTwice(once.looks));
  });
});

describe('an advert of 20,000 characters of nothing is read', () => {
  it.each(['kg ', '12 kg ', '"', '" a ', ',', ', a', '\n', '\na'])('%j', (text) => {
    const reading = readingOf({ title: 'Sewing machine', description: text.repeat(20_000 / text.length) });
    expect(reading.values).toEqual([]);
    expect(reading.kind).toBe('item');
  });
});
