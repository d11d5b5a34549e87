import { describe, expect, it } from 'vitest';
import { cressiter, findingsOf, found } from '../support/demo';

/** A Cressiter in good order: 87 to 166 GBP, median 120. */
const check = (priceText: string): string[] => found('price', cressiter('', { priceText }));

describe('where the asking price stands', () => {
  it.each([
    ['£120', 'agrees: £120'],
    ['£175', 'caution: £175'],
    ['£500', 'caution: £500'],
    ['£80', 'caution: £80'],
    ['£10', 'caution: £10'],
  ])('%s', (priceText, expected) => expect(check(priceText)).toEqual([expected]));

  it('shows the band with its date and source', () => {
    const [finding] = findingsOf('price', cressiter('', { priceText: '£500' }));
    expect(finding?.known[0]?.text).toBe(
      'Grindlewade Cressiter, good, working: 80 of 100 go for £91 to £160. ' +
        'Behind it: the pack’s word of 2026-06, worth 22 prices, and 12 prices seen.',
    );
    expect(finding?.known[0]?.source).toMatch(/./);
  });

  it('says so where the number is another model’s than the one whose band it is', () => {
    const [finding] = findingsOf('price', cressiter('', { priceText: '£120', serialText: 'KD 330715' }));
    expect(finding?.text).toMatch(/ By its number it is another one: Grindlewade Wendelow\.$/);
    expect(findingsOf('price', cressiter('', { priceText: '£120' }))[0]?.text).not.toContain('By its number');
  });

  it('a price is never disproved', () =>
    expect(check('£100000').every((line) => line.startsWith('caution'))).toBe(true));

  it('nothing without a price, a band or a common currency', () => {
    expect(found('price', cressiter(''))).toEqual([]);
    expect(found('price', { title: 'Old sewing machine', priceText: '£500' })).toEqual([]);
    expect(check('CHF 500')).toEqual([]);
  });
});
