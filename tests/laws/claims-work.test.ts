import { describe, expect, it } from 'vitest';
import { deniedInList } from '../../src/claims/denied-list';
import { retracted } from '../../src/claims/frame/retraction';
import { headOf } from '../../src/claims/head-noun';
import { hitsIn } from '../../src/claims/hits';
import { cuesIn } from '../../src/claims/kind-cues';
import { namesIn } from '../../src/claims/names';
import { clauseAt, type TextPart, textPart, tokenAt } from '../../src/claims/part-text';
import { StanceReader } from '../../src/claims/stance';
import { partMeant } from '../../src/claims/subject';
import { valuesIn } from '../../src/claims/values';
import { otherWeighed } from '../../src/claims/weight-subject';
import { yearsIn } from '../../src/claims/years';
import { findWeights } from '../../src/quantity/measures';
import { demo } from '../unit/audit/support/demo';
import { readingOf } from '../unit/claims/support/reading';

const ENGLISH = new Set(['en']);

/** An advert's text that counts how often one of its clauses, tokens or phrases is looked up. */
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
  const hits = watched(hitsIn(whole, demo, ENGLISH));
  return { count, hits, part: { ...whole, tokens: watched(whole.tokens), clauses: watched(whole.clauses) } };
}

/** Looks taken by all that is asked about each phrase and weight of a text, and how many of these there are. */
function work(text: string): { looks: number; asked: number } {
  const { count, hits, part } = counted(text);
  const stances = new StanceReader(part, ENGLISH);
  const reading = { part, hits, stances, isEnglish: true, framer: null };
  const weights = findWeights(text, { language: 'en' });
  const asked = [...hits];
  count.looks = 0;
  for (const hit of asked) {
    stances.at(hit.firstToken, hit.lastToken);
    partMeant(part, hits, hit, null);
    const clause = clauseAt(part, hit.firstToken)!;
    retracted(part, clause, hit);
    deniedInList(part, clause, hit.firstToken, () => []);
  }
  for (const { start, end } of weights) otherWeighed(reading, tokenAt(part, start), tokenAt(part, end - 1));
  valuesIn(reading);
  yearsIn(reading);
  return { looks: count.looks, asked: asked.length + weights.length };
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
  '"zigzag, and more" ',
  'case (cast iron, 12 kg), ',
];
/** In one clause without an end. */
const UNENDING = [
  'zigzag ',
  'case zigzag ',
  'the case of cast iron ',
  'zigzag case 12 kg made in 1954 ',
  '12 kg ',
  'class 15 ',
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

  it.each(UNENDING)('nor in a clause without an end: %j', (text) => {
    const looks = (times: number): number => {
      const { count, hits, part } = counted(text.repeat(times));
      const asked = [...hits];
      const reading = { part, hits, stances: new StanceReader(part, ENGLISH), isEnglish: true, framer: null };
      const weights = findWeights(part.text, { language: 'en' });
      count.looks = 0;
      for (const hit of asked) partMeant(part, hits, hit, null);
      for (const { start, end } of weights) otherWeighed(reading, tokenAt(part, start), tokenAt(part, end - 1));
      yearsIn(reading);
      return count.looks;
    };
    expect(looks(4 * ONCE)).toBeLessThanOrEqual(atMostForTwice(looks(2 * ONCE)));
  });

  it.each(REPEATED)('%j over and over', (text) => {
    const once = work(text.repeat(ONCE));
    const twice = work(text.repeat(2 * ONCE));
    expect(once.asked).toBeGreaterThanOrEqual(ONCE);
    expect(twice.asked).toBeGreaterThanOrEqual(2 * ONCE);
    expect(twice.looks).toBeLessThanOrEqual(atMostForTwice(once.looks));
  });
});

describe('what an advert has on sale is found', () => {
  const looks = (text: string): number => {
    const { count, hits, part } = counted(text);
    const stances = new StanceReader(part, ENGLISH);
    const names = namesIn(part, demo, stances, [], new Set());
    const cues = cuesIn(part);
    count.looks = 0;
    headOf(part, hits, names, cues);
    return count.looks;
  };

  it.each([
    'two 1 1 1 sewing machines ',
    'sewing machines for ',
    'Cressiter for the ',
    'motor, for parts ',
    '2 x Cressiter. ',
    'class 15 bobbins fit ',
  ])('with no more work in a longer one: %j', (text) => {
    const once = looks(text.repeat(ONCE));
    expect(once).toBeGreaterThanOrEqual(ONCE);
    expect(looks(text.repeat(2 * ONCE))).toBeLessThanOrEqual(atMostForTwice(once));
  });
});

describe('what is asked about a name', () => {
  /** Looks at what is known of the names that a text gives. */
  const looks = (text: string): number => {
    let count = 0;
    const watched = <T extends object>(known: T): T =>
      new Proxy(known, {
        get(target, key) {
          count++;
          return Reflect.get(target, key);
        },
      });
    const names = {
      search: (tokens: TextPart['tokens']) =>
        demo.names.search(tokens).map((match) => ({ ...match, value: watched(match.value) })),
    };
    const part = textPart('description', text);
    namesIn(part, { ...demo, names: names as typeof demo.names }, new StanceReader(part, ENGLISH), [], new Set());
    return count;
  };

  it.each(['Q-42 ', 'Q 42, ', '42 Cressiter ', 'Grindlewade 12 ', 'model 42. '])('%j over and over', (text) => {
    const once = looks(text.repeat(ONCE));
    expect(once).toBeGreaterThanOrEqual(ONCE);
    expect(looks(text.repeat(2 * ONCE))).toBeLessThanOrEqual(atMostForTwice(once));
  });
});

describe('an advert of 20,000 characters of nothing is read', () => {
  it.each(['kg ', '12 kg ', '"', '" a ', ',', ', a', '\n', '\na'])('%j', (text) => {
    const reading = readingOf({ title: 'Sewing machine', description: text.repeat(20_000 / text.length) });
    expect(reading.values).toEqual([]);
    expect(reading.kind).toBe('item');
  });
});
