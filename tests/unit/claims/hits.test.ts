import { describe, expect, it } from 'vitest';
import { hitsIn, ofKind } from '../../../src/claims/hits';
import { textPart } from '../../../src/claims/part-text';
import { demo } from '../audit/support/demo';

const hits = (text: string, language = 'en') => hitsIn(textPart('description', text), demo, new Set([language]));
const wordings = (text: string): string[] =>
  ofKind(hits(text), 'wording').map(
    ({ value, start, end }) => `${value.pack}/${value.entry.id} ${text.slice(start, end)}`,
  );
const values = (text: string): unknown[] => ofKind(hits(text), 'value').map(({ value }) => value.value);

describe('what the packs’ phrases find', () => {
  it('once each, however many ways of writing match it', () =>
    expect(wordings('A pre-war machine.')).toEqual(['trade/pre-war pre-war']));

  it('the longest phrase of a pack at a place speaks alone', () => {
    expect(wordings('Zigzag attachment.')).toEqual(['trade/zigzag-attachment Zigzag attachment']);
    expect(values('Takes class 15 bobbins.')).toEqual(['class-15']);
  });

  it('packs don’t silence each other', () =>
    expect(
      wordings('An industrial machine.')
        .map((line) => line.split(' ')[0])
        .sort(),
    ).toEqual(['grindlewade-circle/never-industrial', 'trade/industrial']));

  it('a feature named with the thing still names the thing', () => {
    const found = hits('A treadle sewing machine.');
    expect(ofKind(found, 'thing')).toHaveLength(1);
    expect(ofKind(found, 'value')).toHaveLength(1);
  });

  it('only phrases of the advert’s languages', () => {
    expect(ofKind(hits('Gusseisen', 'de'), 'wording')).toHaveLength(1);
    expect(ofKind(hits('Gusseisen', 'fr'), 'wording')).toHaveLength(0);
  });
});
