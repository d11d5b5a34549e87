import { expect, it } from 'vitest';
import { moneyText } from '../../../src/audit/money-text';

it.each([
  ['260', 'GBP', '£260'],
  ['1340.50', 'EUR', '€1,340.50'],
  ['1340', null, '1,340'],
  ['5', 'XXXX', 'XXXX 5'],
] as const)('%s %s reads %s', (amount, currency, expected) => expect(moneyText(amount, currency)).toBe(expected));
