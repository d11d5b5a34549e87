import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { claimsOf } from '../../src/audit/explain/claims';
import { clauseAt, tokenAt } from '../../src/claims/part-text';
import { readClaims } from '../../src/claims/read';
import { readDraft } from '../../src/listing/draft';
import type { Draft } from '../../src/listing/types';
import { demoKnowledge } from '../corpus/labelled';
import { anyDraft } from './audit-arbitraries';
import { TIMES } from './pack-arbitrary/times';

const known = demoKnowledge();
const read = (draft: Draft) => readClaims(readDraft(draft), known);

const always = <Values extends [unknown, ...unknown[]]>(property: fc.IProperty<Values>) =>
  fc.assert(property, { numRuns: 200 * TIMES });

/** Numbers of any script, and the words for them that ages and counts are read from. */
const NUMBER =
  /\p{N}|\b(?:ten|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|fifties|sixties|zehn|zwanzig|fünfzig|hundert|dix|vingt|cinquante|cent)\b/iu;

describe('claims come from words', () => {
  it('a clause without a phrase, a name or a number claims nothing', () => {
    let clauses = 0;
    always(
      fc.property(anyDraft, (draft) => {
        const reading = read(draft);
        const claims = claimsOf(reading);
        for (const part of reading.parts)
          for (const { first, last, start, end } of part.clauses) {
            const within = (one: { firstToken: number; lastToken: number }) =>
              one.lastToken >= first && one.firstToken <= last;
            const isEmpty =
              !known.phrases.search(part.tokens).some(within) &&
              !known.names.search(part.tokens).some(within) &&
              !NUMBER.test(part.text.slice(start, end));
            if (!isEmpty) continue;
            clauses++;
            const here = claims.filter(
              ({ what, claim }) =>
                claim.field === part.field &&
                claim.start >= start &&
                claim.end <= end &&
                !(what === 'name' && claim.misspelt),
            );
            expect(here.map(({ what, claim }) => `${what} ${claim.quote}`)).toEqual([]);
          }
      }),
    );
    expect(clauses).toBeGreaterThan(50);
  });

  it('every claim and every denial is the text between its offsets, within its field', () =>
    always(
      fc.property(anyDraft, (draft) => {
        const reading = read(draft);
        for (const { claim } of claimsOf(reading)) {
          const part = reading.parts.find(({ field }) => field === claim.field);
          if (!part) continue;
          expect(part.text.slice(claim.start, claim.end)).toBe(claim.quote);
          const denial = 'denial' in claim ? claim.denial : undefined;
          if (!denial) continue;
          expect(part.text.slice(denial.start, denial.end)).toBe(denial.quote);
          expect(denial.start <= claim.start && denial.end >= claim.end).toBe(true);
          const sentenceAt = (place: number) => clauseAt(part, tokenAt(part, place))?.sentence;
          expect(sentenceAt(denial.start)).toBe(sentenceAt(denial.end - 1));
        }
      }),
    ));
});

/** Sentences that speak of another machine only, with features and a name that the packs know. */
const OTHERS = [
  'My neighbour has another machine, a modern plastic one.',
  'I also have a Wendelow with a vibrating shuttle.',
  "My sister's machine is aluminium and does zigzag.",
  'My other machine is a free arm in a plastic body, made in 1975.',
  'A friend has one with drop feed that weighs 6 kg.',
  'I used to have a Haddercombe, which was lightweight.',
  'Not to be confused with the Wendelow, which has a vibrating shuttle.',
  'My mother had one in aluminium.',
  'Somebody is selling an aluminium one nearby.',
  'The Wendelow is the one with the vibrating shuttle.',
  'I am also looking for a zigzag machine.',
  'Would swap for a free arm machine.',
  'Also listed: a Tullawick in an oak case, weighing 20 kg.',
  'My old machine was from 1901 and lighter, about 9 kg.',
  'We also sell a lightweight aluminium machine from 1960.',
  'The one on the left has drop feed and is not for sale.',
];

/** What is said of this thing, without places; of names, which one it is. */
function ofThis(draft: Draft): string[] {
  const reading = read(draft);
  return [
    ...claimsOf(reading)
      .filter(({ what, claim }) => what !== 'name' && (!('subject' in claim) || claim.subject === 'this'))
      .map(({ what, claim }) => `${what} ${claim.field} ${claim.quote} ${'stance' in claim ? claim.stance : ''}`)
      .sort(),
    ...reading.claimedModels.map(({ ref }) => ref),
  ];
}

const OWN = [
  'It is cast iron.',
  'It does not do zigzag.',
  'It weighs 14.5 kg.',
  'Made in 1955.',
  'Perhaps a rotary hook.',
  'Class 15 bobbins.',
  'The motor runs.',
  'No drop feed.',
  'Serial number KD372118.',
  'Collection only.',
];

const put = fc
  .tuple(fc.shuffledSubarray(OWN, { minLength: 1 }), fc.constantFrom(...OTHERS), fc.nat({ max: OWN.length }))
  .map(([own, other, place]) => {
    const title = 'Grindlewade Cressiter sewing machine';
    const without = { title, description: own.join(' ') };
    const description = [...own.slice(0, place), other, ...own.slice(place)].join(' ');
    return { without: ofThis(without), put: ofThis({ title, description }), next: own[place] ?? '' };
  });

describe('what is said of another machine', () => {
  it('changes nothing of what is said of this one, wherever it stands, where the next sentence doesn’t open with "it"', () =>
    always(
      fc.property(put, (one) => {
        fc.pre(!one.next.startsWith('It '));
        expect(one.put).toEqual(one.without);
      }),
    ));

  it('makes nothing more be said of this one: an "it" right behind may be either', () =>
    always(
      fc.property(put, (one) => {
        expect(one.without).toEqual(expect.arrayContaining(one.put));
      }),
    ));
});
