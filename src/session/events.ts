import type { Trouble } from '../keep/trouble';
import type { Answer } from './answer';
import type { Reading } from './reading';
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
  /** The engine has answered. */
  | { type: 'answered'; wanted: Wanted; answer: Answer };

/** One audit that is wanted: of that press on that tab, with the packs as they were at that stamp. */
export interface Wanted extends Where {
  number: number;
  stamp: number;
}
