import type { KeptObservation } from '../keep/schema';
import type { Observation } from '../price/observation';

/** A price as the engine takes it, of one that is kept. */
export function priceOfKept({ id: _id, keptAt: _keptAt, amount, ...rest }: KeptObservation): Observation {
  return { ...rest, amount: Number(amount) };
}

/** A price as it is kept. */
export function keptPrice(seen: Observation, id: string, keptAt: string): KeptObservation {
  const { amount, ...rest } = seen;
  const said = Object.fromEntries(Object.entries(rest).filter(([, value]) => value !== undefined));
  return { ...(said as Omit<KeptObservation, 'id' | 'amount' | 'keptAt'>), id, amount: String(amount), keptAt };
}
