import type { KeptSubscription } from '../../../keep/schema';
import type { Trouble } from '../../../keep/trouble';
import type { OfferStep } from '../../../session/following/offer-told';
import type { AddressProblem } from '../../../sharing/subscribe/address';

/** What is being looked at: at an address that was typed, or for a pack that is followed. */
export interface Looking {
  /** The followed pack's id; null: the form's address. */
  pack: string | null;
  step: OfferStep | { state: 'not-begun'; problem: AddressProblem | 'no-leave' };
}

export type FollowOutcome =
  | { state: 'taken' | 'left'; title: string; edition: number }
  | { state: 'stopped'; title: string }
  | { state: 'stale' | 'gone' };

export interface FollowState {
  subscriptions: readonly KeptSubscription[];
  /** Ids of packs from whose hosts the browser doesn't let us fetch. */
  noLeave: ReadonlySet<string>;
  /** The pack that is being checked. */
  checking: string | null;
  looking: Looking | null;
  outcome: FollowOutcome | null;
  trouble: Trouble | 'memory' | null;
}

export const FOLLOWING_NOTHING: FollowState = {
  ...{ subscriptions: [], noLeave: new Set(), checking: null, looking: null, outcome: null, trouble: null },
};

/** Each is called straight from a press: what a browser asks its user, it asks from there alone. */
export interface FollowActions {
  look: (address: string) => void;
  check: (id: string) => void;
  /** Looks at what is there for a pack that is followed. */
  see: (id: string) => void;
  cancel: () => void;
  take: () => void;
  leave: () => void;
  stop: (id: string) => void;
}
