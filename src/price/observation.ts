/** A price that somebody saw. */
export interface Observation {
  /** packId/modelId */
  model: string;
  /** A dealer's "sold out" is neither. */
  kind: 'asked' | 'paid';
  amount: number;
  /** ISO 4217 */
  currency: string;
  /** ISO 8601, as far as it is known: a year, a month or a day. */
  date: string;
  /** A grade's id in the model's pack. */
  grade?: string | undefined;
  complete?: boolean | undefined;
  finish?: 'plain' | 'refinished' | undefined;
  place?: string | undefined;
  seller?: 'private' | 'trade' | undefined;
  /** Where it was seen, an address of the web. */
  link?: string | undefined;
  note?: string | undefined;
}

/** No price of a single thing reaches this, in any currency; what does is a slip. */
export const MOST_AMOUNT = 1e12;
