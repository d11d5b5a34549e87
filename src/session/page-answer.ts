import { settle } from '../listing/settle';
import type { Harvest } from '../listing/types';
import type { Knowledge } from '../pack/knowledge';
import { type Answer, answered, NO_PRICES, type OwnPrices } from './answer';
import { NOTHING_SEEN, type Seen } from './seen';
import { NONE_SHIPPED, type Shipped } from './words-of';

/** Settles what a page said and holds it against what the packs know; see `answerToDraft`. Stands apart from it: drafts need nothing of how pages are read. */
export function answerTo(
  harvest: Harvest,
  asOf: string,
  knowledge: Knowledge,
  seen: Seen = NOTHING_SEEN,
  shipped: Shipped = NONE_SHIPPED,
  own: OwnPrices = NO_PRICES,
): Answer {
  return answered(() => settle(harvest, harvest.url, asOf), asOf, knowledge, seen, shipped, own);
}
