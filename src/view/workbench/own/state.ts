import type { Trouble } from '../../../keep/trouble';
import type { EditableEntry, EditableField, EntryChosen, OwnTold } from '../../../session/own/editable';

/**
 * Why a field was not kept. form: not written as such a value is; order: the pack would not be in order with it; stale:
 * another window has changed it meanwhile.
 */
export type Wrong =
  | { why: 'form'; example: string }
  | { why: 'order'; what: string; expected: string }
  | { why: 'stale' };

export interface OwnState {
  /** The pack whose part is open; null: none. */
  pack: string | null;
  sought: string;
  told: OwnTold | null;
  /** The entry that is being corrected, by part and name in its part. */
  chosen: EntryChosen | null;
  /** What came of the field that was kept last. */
  field: { name: string; wrong: Wrong | null } | null;
  proposal: { text: string } | 'failed' | 'nameless' | null;
  trouble: Trouble | null;
}

export const OWN_CLOSED: OwnState = {
  ...{ pack: null, sought: '', told: null, chosen: null, field: null, proposal: null, trouble: null },
};

export interface OwnActions {
  open: (pack: string) => void;
  seek: (sought: string) => void;
  choose: (entry: EditableEntry | null) => void;
  keep: (entry: EditableEntry, field: EditableField, typed: string) => void;
  takeBack: (slots: readonly string[]) => void;
  propose: (name: string, note: string) => void;
  save: (text: string) => void;
}
