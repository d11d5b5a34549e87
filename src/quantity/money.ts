import { type Folded, fold } from '../text/fold';
import { isPlainPrice } from './bare-price';
import { minorUnits } from './currencies';
import { type Amount, readAmounts } from './money-amounts';
import {
  findFree,
  followsPriceOnly,
  howMeant,
  isCurrent,
  isNegotiable,
  isSecondary,
  namesOther,
  namesPrice,
} from './money-words';
import type { Money } from './types';

/** What is known of the page: the currency expected where a sign leaves it open (ISO 4217), and its language tag. */
export interface MoneyOptions {
  currency?: string | null;
  language?: string | null;
}

/** How far beside an amount the words reach that say how it is meant. */
const REACH = 48;

function wordsBefore(folded: string, at: number): string {
  const stretch = folded.slice(Math.max(0, at - REACH), at);
  return stretch.slice(stretch.lastIndexOf('\n') + 1);
}

function wordsAfter(folded: string, at: number): string {
  const stretch = folded.slice(at, at + REACH);
  const lineEnd = stretch.indexOf('\n');
  return lineEnd < 0 ? stretch : stretch.slice(0, lineEnd);
}

function toMoney(text: string, folded: Folded, amount: Amount): Money {
  const before = wordsBefore(folded.text, amount.start);
  const after = wordsAfter(folded.text, amount.end);
  const span = folded.toOriginal(amount.start, amount.end);
  const how = howMeant(before, after);
  return {
    ...span,
    amount: amount.value,
    currency: amount.currency,
    quote: text.slice(span.start, span.end),
    how: amount.isRange && how === 'asking' ? 'from' : how,
    negotiable: isNegotiable(before, after),
  };
}

function expectedCurrency(options: MoneyOptions): string | null {
  const code = options.currency?.toUpperCase() ?? null;
  return code !== null && minorUnits(code) !== null ? code : null;
}

/**
 * All amounts of money in running text, in order. An amount needs a sign, word or code of a currency beside it, the
 * dash of a whole price ("20,-"), or words that only follow a price ("450 VB"). Of a range the lower end is taken.
 * Never throws.
 */
export function findMoney(text: string, options: MoneyOptions = {}): Money[] {
  const folded = fold(text);
  const expected = expectedCurrency(options);
  return (
    readAmounts(text, folded, { expected, language: options.language ?? null, isPriceField: false })
      .filter((amount) => amount.isPrice || followsPriceOnly(wordsAfter(folded.text, amount.end)))
      .map((amount) => toMoney(text, folded, amount))
      // Both numbers of one "½" stand in the same place.
      .filter((money, at, all) => at === 0 || money.start >= all[at - 1]!.end)
  );
}

/** Lower is better: the price itself before what it was, what it cost new and what sending costs. */
function rank(folded: string, amount: Amount): number {
  const before = wordsBefore(folded, amount.start);
  const after = wordsAfter(folded, amount.end);
  const role = isSecondary(before, after) ? 2 : isCurrent(before) ? 0 : 1;
  const isNamed = followsPriceOnly(after) || namesPrice(before);
  return role * UNNAMED + (amount.isPrice ? 0 : isNamed ? 1 : UNNAMED - 1);
}
const UNNAMED = 3;

/**
 * The best single reading of a price field, or null. A bare number counts here where nothing says that it is a year,
 * a size, a model or a phone number; "free" and its like are an amount of "0". Never throws.
 */
export function readMoney(text: string, options: MoneyOptions = {}): Money | null {
  const folded = fold(text);
  const expected = expectedCurrency(options);
  const amounts = readAmounts(text, folded, { expected, language: options.language ?? null, isPriceField: true });
  const prices = amounts.filter(
    (amount) =>
      (amount.isPrice || isPlainPrice(folded.text, amount)) && !namesOther(wordsBefore(folded.text, amount.start)),
  );
  let best: Amount | null = null;
  let bestRank = Number.POSITIVE_INFINITY;
  for (const amount of prices) {
    const its = rank(folded.text, amount);
    if (its < bestRank) [best, bestRank] = [amount, its];
  }
  const rivals = prices.filter((amount) => rank(folded.text, amount) === bestRank);
  // Two bare numbers and no word for either: there is no telling which is the price.
  if (best && !best.isPrice && rivals.length > 1 && bestRank % UNNAMED === UNNAMED - 1) return null;
  if (best) return toMoney(text, folded, best);
  const free = findFree(folded.text);
  if (!free) return null;
  const span = folded.toOriginal(free.start, free.end);
  return {
    ...span,
    amount: '0',
    currency: expected,
    quote: text.slice(span.start, span.end),
    how: 'asking',
    negotiable: false,
  };
}
