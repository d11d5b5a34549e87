import { describe, expect, it } from 'vitest';
import { isDoubtful } from '../../../src/listing/doubt';
import type { FieldNote, SourceName } from '../../../src/listing/types';

const note = (confidence: number, ...others: SourceName[]): FieldNote => ({
  source: 'page',
  confidence,
  alternatives: others.map((source) => ({ value: 'other', source })),
});

describe('a field that somebody should look at', () => {
  it('has rivals, and the reader isn’t sure', () => {
    expect(isDoubtful('price', note(0.5, 'json-ld'))).toBe(true);
    expect(isDoubtful('price', note(0.7, 'json-ld'))).toBe(false);
    expect(isDoubtful('condition', note(0.64, 'page'))).toBe(true);
  });

  it('is none that was found alone, save a price that is hardly one', () => {
    for (const field of ['title', 'condition', 'description'] as const)
      expect(isDoubtful(field, note(0.3))).toBe(false);
    expect(isDoubtful('price', note(0.52))).toBe(false);
    expect(isDoubtful('price', note(0.44))).toBe(true);
  });

  it('is no description that the head sums up in other words', () => {
    expect(isDoubtful('description', note(0.5, 'meta'))).toBe(false);
    expect(isDoubtful('description', note(0.5, 'meta', 'json-ld'))).toBe(true);
    expect(isDoubtful('title', note(0.5, 'meta'))).toBe(true);
  });

  it('is none once the user has decided', () => {
    expect(isDoubtful('price', { ...note(0.2, 'meta'), byUser: 'picked' })).toBe(false);
  });
});
