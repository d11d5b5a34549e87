import type { Json, JsonObject } from './json';

/*
 * Promises: what differs between two packs, entry by entry and field by field, so that people can read it, sign it, send
 * it, and put it on another edition of the pack. `diffPacks` (diff-packs.ts) says it, `applyChanges` (apply-changes.ts)
 * does it: what the one says makes of the first pack exactly the second, in about as many steps as the packs have
 * entries. A change that doesn't fit what is there is handed back with the reason: nothing is dropped, nothing is
 * overwritten that wasn't meant. All of it is pure, and the packs that are given stay as they are.
 */

/**
 * Where an entry stands. Lists of entries: see parts.ts ("models", "serials.runs", "prices.bands", ...). Single objects:
 * "" (the pack itself), "about", "serials", "prices", and "serials.columns" (which columns the table of runs has).
 */
export type PartName = string;

interface Place {
  part: PartName;
  /** The entry's id; where entries have none, what they are about ("k|K20001|K20100", "#2" the second one). "": none. */
  entry: string;
}

/** A new entry. */
export interface Added extends Place {
  do: 'add';
  value: JsonObject;
  /** The entry after which it stands; null: it is the first. */
  follows: string | null;
}

/** An entry that is no longer there. */
export interface Removed extends Place {
  do: 'remove';
  was?: JsonObject | undefined;
}

/** One field of an entry: its key, or a table's key and the key in it (["facts", "frame"]). */
export interface Changed extends Place {
  do: 'change';
  field: readonly string[];
  /** Left out: nothing was there. */
  was?: Json | undefined;
  /** Left out: nothing is there now. */
  now?: Json | undefined;
}

/** An entry that stands elsewhere in its list. */
export interface Moved extends Place {
  do: 'move';
  follows: string | null;
}

export type Change = Added | Removed | Changed | Moved;

/** Why a change doesn't fit: its entry is missing; another entry of that name is there; something else stands there. */
export type MisfitReason = 'no-entry' | 'there-already' | 'differs';

export interface Misfit {
  change: Change;
  reason: MisfitReason;
  /** What stands there instead; left out where nothing does. */
  here?: Json | undefined;
}

/** What a change is about, as one text: two changes of one slot can't both be made. */
export function slotOf(change: Change): string {
  if (change.do === 'move') return JSON.stringify([change.part, change.entry, 'place']);
  return JSON.stringify([change.part, change.entry, ...(change.do === 'change' ? [change.field] : [])]);
}
