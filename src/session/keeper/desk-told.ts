import type { Trouble } from '../../keep/trouble';
import type { PackIssue } from '../../pack/issues';
import type { Json } from '../../sharing/propose/json';
import type { Decision, Row } from '../../sharing/propose/merge-proposals';

/** One place of the pack for which something is proposed, in words. */
export interface RowTold {
  slot: string;
  state: Row['state'];
  part: string;
  /** The entry as people call it, and the field; null: the entry as a whole. */
  name: string;
  field: string | null;
  /** What the pack says now; null: nothing. */
  here: string | null;
  offers: { words: string; from: string[] }[];
  /** What stands in the field in the form in which it can be typed; null: it can't be. */
  typed: string | null;
  /** The value that is offered first, for one that is typed in its place; null where there is none. */
  offered: Json | null;
  decision: Decision | null;
  /** It was decided, and something else is proposed or stands there since. */
  lapsed: boolean;
  /** What a decision that is made now is about. */
  saw: string;
}

export interface DeskTold {
  /** The number that the next edition gets. */
  next: number;
  proposals: { author: string; note: string; base: number }[];
  /** How many of the texts are no proposals to this pack. */
  strangers: number;
  rows: RowTold[];
  undecided: number;
  /** What is wrong with the pack with all that is decided. */
  issues: PackIssue[];
  /** here: its key is in this browser; none: it is unsealed, and a key is made; elsewhere: somebody else's. */
  key: 'here' | 'none' | 'elsewhere';
  published: { edition: number; files: { name: string; text: string }[] } | null;
}

export type PublishOutcome =
  | { state: 'published'; id: string; edition: number }
  | { state: 'not'; why: 'passphrase' | 'undecided' | 'issues' | 'key' | 'gone' | 'stale' }
  | { state: 'trouble'; trouble: Trouble };
