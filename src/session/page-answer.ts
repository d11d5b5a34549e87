import { settle } from '../listing/settle';
import type { Harvest } from '../listing/types';
import type { Knowledge } from '../pack/knowledge';
import type { Observation } from '../price/observation';
import { type Answer, answered } from './answer';
import { NOTHING_SEEN, type Seen } from './seen';
import { NONE_SHIPPED, type Shipped } from './words-of';

/** Settles what a page said and holds it against what the packs know; see `answerToDraft`. Stands apart from it: drafts need nothing of how pages are read. */
export function answerTo(
  harvest: Harvest,
  asOf: string,
  knowledge: Knowledge,
  seen: Seen = NOTHING_SEEN,
  shipped: Shipped = NONE_SHIPPED,
  prices: readonly Observation[] = [],
): Answer {
  return answered(() => settle(harvest, harvest.url), asOf, knowledge, seen, shipped, prices);
}
