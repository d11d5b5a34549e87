import type { Rate } from '../pack/schema/prices';

/**
 * An amount in another currency by the newest dated rate not after `asOf` (or the oldest there is), in either
 * direction. Null where no pack gives one.
 */
export function convert(amount: number, from: string, to: string, rates: readonly Rate[], asOf: string): number | null {
  if (from === to) return amount;
  const fitting = rates
    .filter((rate) => (rate.from === from && rate.to === to) || (rate.from === to && rate.to === from))
    .sort((a, b) => b.date.localeCompare(a.date));
  const rate = fitting.find((one) => one.date <= asOf) ?? fitting.at(-1);
  if (!rate) return null;
  return rate.from === from ? amount * rate.rate : amount / rate.rate;
}
