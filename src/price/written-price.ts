import { readMoney } from '../quantity/money';
import { MOST_AMOUNT } from './observation';

/** A price as somebody writes it: an amount with its currency, or what is wrong with it. */
export type WrittenPrice =
  | { ok: true; amount: number; currency: string }
  /** form: no price at all; currency: none is said; amount: none that a single thing could cost. */
  | { ok: false; wrong: 'form' | 'currency' | 'amount' };

/** A minus before the first digit, also before the currency's sign: "-£20". */
const NEGATIVE = /^[^\d]*[-−]\s*[^\d]*\d/;

export function isNegative(written: string): boolean {
  return NEGATIVE.test(written);
}

/** "£480", "95 EUR". */
export function writtenPrice(written: string): WrittenPrice {
  const money = readMoney(written);
  if (!money) return { ok: false, wrong: isNegative(written) ? 'amount' : 'form' };
  if (money.currency === null) return { ok: false, wrong: 'currency' };
  const amount = Number(money.amount);
  if (!(amount > 0) || !(amount < MOST_AMOUNT) || isNegative(written)) return { ok: false, wrong: 'amount' };
  return { ok: true, amount, currency: money.currency };
}
