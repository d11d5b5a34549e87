import { describe, expect, it } from 'vitest';
import { audit } from '../../../src/engine';
import { fieldOf } from '../../../src/identify/field';
import { limitKey, limitLogs } from '../../../src/identify/limit-words';
import { readDraft } from '../../../src/listing/draft';
import { AS_OF } from '../../corpus/labelled';
import { demo } from '../audit/support/demo';
import { readingOf } from '../claims/support/reading';

const draft = (description: string) => ({ title: 'Grindlewade sewing machine', description, language: 'en' });
const at = (description: string, model: string): number | undefined => {
  const reading = readingOf(draft(description));
  const field = fieldOf(demo, reading.covering);
  return limitLogs(reading, field, demo).get(limitKey('trade/weight'))?.[
    field.positionOf(model, 'grindlewade-circle')!
  ];
};

describe('words that limit a measure', () => {
  it('are said more readily of what keeps the limit', () =>
    expect(at('It is lightweight.', 'haddercombe')).toBeGreaterThan(at('It is lightweight.', 'cressiter')!));
  it('said twice they tell no more; not said, nothing', () => {
    expect(at('Lightweight. It is lightweight.', 'cressiter')).toBe(at('It is lightweight.', 'cressiter'));
    expect(at('It works.', 'cressiter')).toBeUndefined();
  });
  it('are a ground, in their own words', () => {
    const { likely } = audit(readDraft(draft('It is lightweight.')), demo, { asOf: AS_OF });
    const grounds = likely.flatMap((one) => [...one.for, ...one.against]).map(({ text }) => text);
    expect(grounds).toContainEqual(
      expect.stringMatching(/^Weight: the advert says “lightweight”\. Known of this one: /),
    );
  });
});
