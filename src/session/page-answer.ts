import type { Lapsed } from '../listing/picks';
import { settle } from '../listing/settle';
import { settlePicked } from '../listing/settle-picked';
import type { Harvest } from '../listing/types';
import type { Knowledge } from '../pack/knowledge';
import { type Answer, answered, NO_PRICES, type OwnPrices } from './answer';
import { picksIn, withoutPicks } from './picks';
import { NOTHING_SEEN, type Seen } from './seen';
import { NONE_SHIPPED, type Shipped } from './words-of';

/**
 * Settles what a page said and holds it against what the packs know; see `answerToDraft`. Stands apart from it: drafts
 * need nothing of how pages are read. What was seen holds how the user says that the page is to be read, too.
 */
export function answerTo(
  harvest: Harvest,
  asOf: string,
  knowledge: Knowledge,
  seen: Seen = NOTHING_SEEN,
  shipped: Shipped = NONE_SHIPPED,
  own: OwnPrices = NO_PRICES,
): Answer {
  const picks = picksIn(seen);
  let lapsed: Lapsed[] = [];
  const read = () => {
    if (Object.keys(picks).length === 0) return settle(harvest, harvest.url, asOf);
    const picked = settlePicked(harvest, harvest.url, asOf, picks);
    lapsed = picked.lapsed;
    return picked.listing;
  };
  const answer = answered(read, asOf, knowledge, withoutPicks(seen), shipped, own);
  return answer.ok ? { ...answer, lapsed } : answer;
}
