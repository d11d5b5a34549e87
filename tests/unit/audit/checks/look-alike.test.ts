import { describe, expect, it } from 'vitest';
import { cressiter, findingsOf, found } from '../support/demo';

const check = (text: string): string[] => found('look-alike', cressiter(text));

describe('a model that others are taken for', () => {
  it('is asked for what tells them apart', () => {
    expect(check('Sews well.')).toEqual(['unproved: Cressiter']);
    const [finding] = findingsOf('look-alike', cressiter('Sews well.'));
    expect(finding?.id).toBe('look-alike:grindlewade-circle/cressiter:grindlewade-circle/wendelow');
    expect(finding?.known.map(({ entry }) => entry).sort()).toHaveLength(2);
    expect(finding?.ask).toMatch(/\?$/);
  });

  it('a feature that tells it from one leaves the next one', () =>
    expect(findingsOf('look-alike', cressiter('Cast iron body.'))[0]?.id ?? '').not.toMatch(/wendelow$/));

  it('is settled by a serial that the tables know', () => expect(check('Serial number KD372118.')).toEqual([]));

  it('is settled by a number with a slip in it, where all that it can be is of this model', () =>
    expect(check('Serial number KD3721I8.')).toEqual([]));

  it('is no question for a brand-free kind of machine', () =>
    expect(found('look-alike', { title: 'Old sewing machine', description: '', language: 'en' })).toEqual([]));
});
