import type { Pack } from '../../pack/schema/index';
import { applyChanges } from '../../sharing/propose/apply-changes';
import { type Change, slotOf } from '../../sharing/propose/changes';
import { diffPacks } from '../../sharing/propose/diff-packs';
import { isObject, type Json, type JsonObject } from '../../sharing/propose/json';
import { entriesOf, LISTS } from '../../sharing/propose/parts';
import { type EntryTold, entryNames, fieldLabel, tellChanges } from '../change-told';
import { isTypable, typedForm } from './typed-value';

/** Parts whose entries a user corrects: models with their facts, runs of numbers, price bands. */
const PARTS = ['models', 'serials.runs', 'prices.bands'] as const;

/** Keys of an entry by which it is found; another one would be another entry. */
const NAMING: Readonly<Record<string, readonly string[]>> = {
  models: ['id'],
  'serials.runs': ['scheme', 'first', 'last'],
  'prices.bands': ['model', 'grade', 'kind', 'currency', 'date'],
};
/** What a run may say and often doesn't, each with a value of its kind: what is typed first is taken for such a one. */
const MAY_BE_ADDED: Readonly<Record<string, Readonly<Record<string, Json>>>> = {
  'serials.runs': { year: 1900, place: '' },
};

/** A field that can be typed anew. */
export interface EditableField {
  field: readonly string[];
  label: string;
  /** As it is now, in the form in which it can be typed; "" where nothing is said. */
  typed: string;
  /** The value itself, with which the change is made. */
  value: Json | null;
  /** A value of the kind that what is typed must be of. */
  like: Json;
}

export interface EditableEntry {
  part: string;
  entry: string;
  name: string;
  fields: EditableField[];
}

/** What the user has changed of a pack, and what can be changed. */
export interface OwnTold {
  /** Entries whose names hold what is sought, as the user sees them; a few. */
  found: EditableEntry[];
  /** How many more there are. */
  more: number;
  /** The entry that was chosen, as it is now, whatever it is called by now; null: none was, or it is there no more. */
  chosen: EditableEntry | null;
  /** Own changes, entry by entry, with what each is known by. */
  changes: { slots: string[]; told: EntryTold }[];
  /** How many of them don't fit the pack any more, so that they don't speak. */
  clashing: number;
  base: { edition: number; hash: string };
  /** How many corrections this edition has taken up, so that they have just left the list. */
  cameBack: number;
}

const MOST = 8;

/** An entry by its part, and by its name there. */
export type EntryChosen = Pick<EditableEntry, 'part' | 'entry'>;

/** @param sought part of a name, or of a number in a run */
export function ownTold(
  pack: Pack,
  hash: string,
  changes: readonly Change[],
  sought: string,
  chosen: EntryChosen | null = null,
): Omit<OwnTold, 'cameBack'> {
  const { pack: own, misfits } = applyChanges(pack, changes);
  const names = entryNames(own);
  const wanted = sought.trim().toLowerCase();
  const found: EditableEntry[] = [];
  let more = 0;
  let mine: EditableEntry | null = null;
  for (const part of LISTS.filter(({ name }) => (PARTS as readonly string[]).includes(name))) {
    for (const [entry, value] of entriesOf(own, part)) {
      const name = names(part.name, entry, value);
      const told = () => ({ part: part.name, entry, name, fields: fieldsOf(own, part.name, value) });
      if (part.name === chosen?.part && entry === chosen.entry) mine = told();
      if (wanted === '' || !(isNamed(`${name} ${entry}`, wanted) || isWithin(own, part.name, value, wanted))) continue;
      if (found.length < MOST) found.push(told());
      else more += 1;
    }
  }
  return {
    found,
    more,
    chosen: mine,
    changes: grouped(pack, own, changes),
    clashing: misfits.length,
    base: { edition: pack.about.edition, hash },
  };
}

const isNamed = (text: string, wanted: string) => text.toLowerCase().includes(wanted);

/** Whether a number lies in a run; one that is written with letters, in those of a scheme with these letters. */
function isWithin(pack: Pack, part: string, { scheme, first, last }: JsonObject, wanted: string): boolean {
  const written = /^([a-z]*)\s*(\d{2,15})$/.exec(wanted);
  if (part !== 'serials.runs' || !written) return false;
  const [, letters = '', digits] = written;
  const prefix = pack.serials?.schemes.find(({ id }) => id === scheme)?.prefix ?? '';
  if (letters !== '' && letters !== prefix.toLowerCase()) return false;
  const [from, to] = [first, last].map((end) => Number(String(end).replace(/\D/g, '')));
  return from !== undefined && to !== undefined && Number(digits) >= from && Number(digits) <= to;
}

function fieldsOf(pack: Pack, part: string, entry: JsonObject): EditableField[] {
  const fields: EditableField[] = [];
  const add = (field: readonly string[], value: Json | undefined, like = value) => {
    const [label, typed] = [fieldLabel(pack, field), typedForm(value)];
    if (isTypable(value)) fields.push({ field, label, typed, value: value ?? null, like: like ?? '' });
  };
  for (const [key, value] of Object.entries(entry)) {
    if (NAMING[part]?.includes(key) || value === undefined || key === 'pictures') continue;
    if (key === 'facts' && isObject(value))
      for (const [attribute, fact] of Object.entries(value)) add([key, attribute], fact);
    else add([key], value);
  }
  for (const [key, like] of Object.entries(MAY_BE_ADDED[part] ?? {}))
    if (entry[key] === undefined) add([key], undefined, like);
  return fields;
}

/** The changes by their entries, told from the pack to what the user sees; those that don't fit by what they say. */
function grouped(pack: Pack, own: Pack, changes: readonly Change[]): OwnTold['changes'] {
  const made = tellChanges(diffPacks(pack, own), pack, own).entries;
  const groups = new Map<string, OwnTold['changes'][number]>();
  for (const change of changes) {
    const key = JSON.stringify([change.part, change.entry]);
    const told = made.find(({ part, entry }) => part === change.part && entry === change.entry);
    const group = groups.get(key) ?? {
      slots: [],
      told: told ?? (tellChanges([change], pack, own).entries[0] as EntryTold),
    };
    group.slots.push(slotOf(change));
    groups.set(key, group);
  }
  return [...groups.values()];
}
