import type { KeptRate } from '../keep/schema';
import type { Rate } from '../pack/schema/prices';

/** A rate as the engine takes it, of one that is kept. */
export function rateOfKept({ from, to, date, rate }: KeptRate): Rate {
  return { from, to, date, rate: Number(rate) };
}

/** A rate as it is kept. */
export function keptRate({ from, to, date, rate }: Rate, id: string, keptAt: string): KeptRate {
  return { id, from, to, date, rate: String(rate), keptAt };
}
