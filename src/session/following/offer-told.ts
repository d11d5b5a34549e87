import type { Trouble } from '../../keep/trouble';
import type { PackIssue } from '../../pack/issues';
import type { ChangesTold } from '../change-told';
import type { KeyHandedOver } from '../judged';
import type { CheckProblem } from './finding';

/**
 * Why an edition can't be looked at. older: the host offers an earlier one than was here; other-bytes: the file isn't the
 * one that the notice names; not-as-said: it is another edition; is-shipped: a pack of that id came with the program.
 */
export type OfferProblem = CheckProblem | 'older' | 'other-bytes' | 'not-as-said' | 'is-shipped';

/** An edition that can be taken, as plain data to be shown; the edition itself waits in storage. */
export interface OfferTold {
  about: {
    id: string;
    edition: number;
    title: string;
    language: string;
    licence: string;
    /** The key that sealed it, as it is read aloud; null: unsealed. */
    sealedBy: string | null;
    demo: boolean;
  };
  /** SHA-256 of its text: what the user says yes to. */
  hash: string;
  address: string;
  /** The edition that stands here, or null; the very same text is here already; another text under the same number is. */
  here: number | null;
  isHere: boolean;
  otherText: boolean;
  bytes: { fetched: number; whole: number };
  /** The last day of the edition, or null. */
  expires: string | null;
  keepers: string[];
  handedOver: KeyHandedOver[];
  /** What it changes of what is here; null where nothing is here, or nothing changes. */
  changes: ChangesTold | null;
  holds: { models: number; runs: number };
}

/** How far looking at an edition has come; the last five end it. */
export type OfferStep =
  | { state: 'asking' }
  /** Bytes. */
  | { state: 'fetching'; done: number; all: number }
  | { state: 'checking' }
  | { state: 'offered'; told: OfferTold }
  | { state: 'nothing-new'; edition: number }
  | { state: 'failed'; problem: OfferProblem }
  | { state: 'refused'; issues: PackIssue[] }
  | { state: 'trouble'; trouble: Trouble | 'memory' };
