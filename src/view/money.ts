import { moneyText } from '../audit/money-text';

/** An estimated amount to the whole unit, written as the findings write it: a band knows no cents. */
export function wholeMoney(amount: number, currency: string): string {
  return moneyText(String(Math.round(amount)), currency);
}
