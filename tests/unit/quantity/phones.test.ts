import { describe, expect, it } from 'vitest';
import { isPhoneNumber } from '../../../src/quantity/phones';

describe('isPhoneNumber', () => {
  it.each([
    ['07700 900123', true],
    ['+44 (0)7700 900123', true],
    ['Tel. 0163/1234567', true],
    ['555-123-4567', true],
    ['(555) 123 4567', true],
    ['serial 20417', false],
    ['1 234 567 890', false],
    ['1954', false],
  ])('%j: %s', (text, isPhone) => {
    expect(isPhoneNumber(text, text.search(/\d/))).toBe(isPhone);
    expect(isPhoneNumber(text, text.length - 1)).toBe(isPhone);
  });
});
