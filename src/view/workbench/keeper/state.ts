import type { Trouble } from '../../../keep/trouble';
import type { DeskTold, PublishOutcome, RowTold } from '../../../session/keeper/desk-told';
import type { Decision } from '../../../sharing/propose/merge-proposals';

export interface KeeperState {
  /** The pack whose desk is open; null: none. */
  pack: string | null;
  told: DeskTold | null;
  outcome: PublishOutcome | null;
  trouble: Trouble | null;
}

export const DESK_CLOSED: KeeperState = { pack: null, told: null, outcome: null, trouble: null };

export interface KeeperActions {
  open: (pack: string) => void;
  bring: (files: File[]) => void;
  clear: () => void;
  decide: (row: RowTold, decision: Decision | null) => void;
  acceptAll: () => void;
  publish: (passphrase: string) => void;
  save: (file: { name: string; text: string }) => void;
}
