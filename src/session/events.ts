import type { Trouble } from '../keep/trouble';
import type { Knowledge } from '../pack/knowledge';
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
  /** The packs were read for the first time, or changed in the workbench. */
  | { type: 'packsChanged'; knowledge: Knowledge }
  | { type: 'packsFailed'; trouble: Trouble };
