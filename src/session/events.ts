import type { Trouble } from '../keep/trouble';
import type { Answer } from './answer';
import type { Reading } from './reading';
import type { Seen, SeenValue } from './seen';
import type { Where } from './where';

/** What can happen to the panel of one window. */
export type SessionEvent =
  /** Another tab came to the front of the panel's window. */
  | { type: 'tabChosen'; where: Where }
  /** A reading was begun, or came to something: "read", "refused", "left", "failed". */
  | { type: 'reading'; reading: Reading }
  /** A tab was closed, or its reading was cleared away. */
  | { type: 'forgotten'; where: Where }
  /** The packs were read: for the first time, or anew after a change. `stamp` differs each time. */
  | { type: 'packsReady'; stamp: number }
  | { type: 'packsFailed'; trouble: Trouble }
  /** What was seen of a listing before was read, or has changed elsewhere. `about` is its page's address. */
  | { type: 'seenKept'; about: string; seen: Seen }
  /** The user has said what they see, or that they can't tell (null). */
  | { type: 'saw'; about: string; attribute: string; value: SeenValue }
  | { type: 'tookBack'; about: string; attribute: string }
  /** The engine has answered. */
  | { type: 'answered'; wanted: Wanted; answer: Answer };

/** One audit that is wanted: of that press on that tab, with the packs and with what was seen as they were then. */
export interface Wanted extends Where {
  number: number;
  stamp: number;
  /** How often what was seen of that listing had changed. */
  turn: number;
}
