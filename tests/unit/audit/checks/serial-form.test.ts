import { describe, expect, it } from 'vitest';
import { cressiter, found } from '../support/demo';

const check = (text: string): string[] => found('serial-form', cressiter(text));

describe('a serial that no table knows', () => {
  it('may be a slip of the eye for one that they know', () =>
    expect(check('Serial number KD37Z118.').concat(check('Serial number KO372118.'))).toEqual([
      'unproved: KD37Z118',
      'unproved: KO372118',
    ]));

  it('has not the form of its maker’s', () =>
    expect(check('Serial number XZ99412345.')).toEqual(['unproved: XZ99412345']));

  it.each(['Serial number KD372118.', 'Serial number KD297000.'])('has the form: %s', (text) =>
    expect(check(text)).toEqual([]),
  );

  it('is nobody’s where no maker is named', () =>
    expect(
      found('serial-form', { title: 'Old sewing machine', description: 'Serial number XZ99412345.', language: 'en' }),
    ).toEqual([]));
});
