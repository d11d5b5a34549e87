import type { Pack } from '../../pack/schema/index';
import type { Change, Changed, Misfit, MisfitReason } from './changes';
import { isObject, type Json, type JsonObject, ownKey, sameJson, setKey } from './json';
import { at, entriesOf, LISTS, type ListPart, OBJECTS, RUNS } from './parts';
import { placeEntries, type Unplaced } from './place-entries';
import { columnsOf, isColumn, OPTIONAL_COLUMNS } from './rows';

export interface Applied {
  /** Still to be checked: a change can name what isn't there. */
  pack: Pack;
  /** What didn't fit, and was not made. */
  misfits: Misfit[];
  /** What was so already. */
  already: Change[];
}

/**
 * Makes changes to a pack: see changes.ts. The order of the changes doesn't matter unless two are of one slot.
 * @param held false: what was there isn't held against what is; for changes whose outcome is proved in another way
 */
export function applyChanges(pack: Pack, changes: readonly Change[], held = true): Applied {
  const draft = new Draft(pack, held);
  const byPart = new Map<string, Change[]>();
  for (const change of changes) {
    const others = byPart.get(change.part);
    if (others) others.push(change);
    else byPart.set(change.part, [change]);
  }
  const of = (name: string): Change[] => keysFirst(byPart.get(name) ?? []);
  for (const part of LISTS) draft.list(part, of(part.name));
  // What comes into being comes outer things first, what ceases to be inner things first.
  for (const { name } of OBJECTS) for (const change of of(name)) if (!ceases(change)) draft.object(change);
  for (const { name } of [...OBJECTS].reverse())
    for (const change of of(name)) if (ceases(change)) draft.object(change);
  const known = new Set([...LISTS, ...OBJECTS].map(({ name }) => name));
  for (const change of changes) if (!known.has(change.part)) draft.misfit(change, 'no-entry');
  return draft.done();
}

/** A table's keys before the table itself, which can cease to be once they are gone. */
function keysFirst(changes: readonly Change[]): Change[] {
  const isKey = (change: Change): boolean => change.do === 'change' && change.field.length > 1;
  return [...changes.filter(isKey), ...changes.filter((change) => !isKey(change))];
}

const ceases = (change: Change): boolean => change.do === 'change' && change.now === undefined;

class Draft {
  readonly #misfits: Misfit[] = [];
  readonly #already: Change[] = [];
  #pack: JsonObject;

  readonly #held: boolean;

  constructor(pack: Pack, held: boolean) {
    this.#held = held;
    this.#pack = pack as unknown as JsonObject;
  }

  done(): Applied {
    return { pack: this.#pack as unknown as Pack, misfits: this.#misfits, already: this.#already };
  }

  misfit(change: Change, reason: MisfitReason, here?: Json): void {
    this.#misfits.push({ change, reason, ...(here === undefined ? {} : { here }) });
  }

  list(part: ListPart, changes: readonly Change[]): void {
    if (changes.length === 0) return;
    const entries = entriesOf(this.#pack as unknown as Pack, part);
    const before = [...entries.keys()];
    const unplaced = new Map<string, Unplaced>();
    const moves: Change[] = [];
    let changed = false;
    for (const change of changes) {
      const made = this.#entry(change, entries.get(change.entry));
      if (made === 'not') continue;
      if (change.do === 'move') moves.push(change);
      else changed = true;
      if (made === undefined) entries.delete(change.entry);
      else entries.set(change.entry, made);
      if (change.do === 'remove') unplaced.delete(change.entry);
      else if (change.do !== 'change') unplaced.set(change.entry, { entry: change.entry, follows: change.follows });
    }
    const staying = [...entries.keys()].filter((entry) => !unplaced.has(entry));
    const order = unplaced.size > 0 ? placeEntries(staying, [...unplaced.values()]) : staying;
    const asBefore = order.length === before.length && order.every((entry, i) => entry === before[i]);
    if (asBefore) this.#already.push(...moves);
    if (!changed && asBefore) return;
    this.#put(
      part,
      order.map((entry) => entries.get(entry)!),
    );
  }

  /** The entry after the change, undefined where it is taken away, 'not' where nothing is done. */
  #entry(change: Change, here: JsonObject | undefined): JsonObject | undefined | 'not' {
    switch (change.do) {
      case 'add':
        if (here === undefined) return change.value;
        return this.#not(change, sameJson(here, change.value) ? 'already' : 'there-already', here);
      case 'remove':
        if (here === undefined) return this.#not(change, 'already');
        if (change.was !== undefined && this.#differs(here, change.was)) return this.#not(change, 'differs', here);
        return undefined;
      case 'move':
        return here ?? this.#not(change, 'no-entry');
      case 'change':
        return here === undefined ? this.#not(change, 'no-entry') : this.#field(change, here);
    }
  }

  #not(change: Change, why: MisfitReason | 'already', here?: Json): 'not' {
    if (why === 'already') this.#already.push(change);
    else this.misfit(change, why, here);
    return 'not';
  }

  #differs(here: Json | undefined, was: Json | undefined): boolean {
    return this.#held && !sameJson(here, was);
  }

  #field(change: Changed, object: JsonObject): JsonObject | 'not' {
    const [key = '', inner] = change.field;
    if (inner === undefined) {
      const here = ownKey(object, key);
      if (sameJson(here, change.now)) return this.#not(change, 'already');
      if (this.#differs(here, change.was)) return this.#not(change, 'differs', here);
      return withKey(object, key, change.now);
    }
    const table = ownKey(object, key);
    if (table !== undefined && !isObject(table)) return this.#not(change, 'differs', table);
    const here = ownKey(table, inner);
    if (sameJson(here, change.now)) return this.#not(change, 'already');
    if (this.#differs(here, change.was)) return this.#not(change, 'differs', here);
    return withKey(object, key, withKey(table ?? {}, inner, change.now));
  }

  /** A change of one of the objects that hold lists and fields. */
  object(change: Change): void {
    const { path } = OBJECTS.find(({ name }) => name === change.part)!;
    const object = at(this.#pack, path);
    if (change.do !== 'change' || !isObject(object)) {
      // Nothing can be taken from what isn't there.
      this.#not(change, ceases(change) ? 'already' : 'no-entry');
      return;
    }
    const [key = '', inner] = change.field;
    const held = inner === undefined && HELD.get([...path, key].join('.'));
    let made: JsonObject | 'not';
    if (change.part === 'serials.columns' && isColumn(key)) made = this.#column(change, object, key);
    else made = held ? this.#holder(change, object, key, held) : this.#field(change, object);
    if (made !== 'not') this.#pack = withPath(this.#pack, path, made);
  }

  /** A list or an inner object appears empty, or ceases to be with nothing in it. */
  #holder(change: Changed, object: JsonObject, key: string, empty: Json): JsonObject | 'not' {
    const here = ownKey(object, key);
    if ((here === undefined) === (change.now === undefined)) return this.#not(change, 'already');
    if (change.now === undefined)
      return isEmpty(here) ? withKey(object, key, undefined) : this.#not(change, 'differs', here);
    return withKey(object, key, empty);
  }

  /** A column that need not be there; one in which something stands stays. */
  #column(change: Changed, runs: JsonObject, key: string): JsonObject | 'not' {
    const here = ownKey(runs, key);
    const optional = (OPTIONAL_COLUMNS as readonly string[]).includes(key);
    if (!optional || (here === undefined) === (change.now === undefined)) return this.#not(change, 'already');
    if (change.now === undefined) return isEmpty(here) ? withKey(runs, key, undefined) : this.#not(change, 'differs');
    return withKey(runs, key, new Array(Array.isArray(runs.scheme) ? runs.scheme.length : 0).fill(null) as Json[]);
  }

  #put(part: ListPart, entries: readonly JsonObject[]): void {
    let value: Json = entries;
    if (part.name === RUNS) {
      const runs = at(this.#pack, part.path) as JsonObject | undefined;
      const rest = Object.entries(runs ?? {}).filter(([key]) => !isColumn(key));
      value = { ...columnsOf(entries, new Set(Object.keys(runs ?? {}))), ...Object.fromEntries(rest) } as JsonObject;
    }
    if (part.path[0] === 'serials' && this.#pack.serials === undefined)
      this.#pack = withKey(this.#pack, 'serials', { schemes: [], runs: columnsOf([], new Set()) as JsonObject });
    this.#pack = withPath(this.#pack, part.path, value);
  }
}

/** What a list or an inner object is when nothing is in it. */
const HELD: ReadonlyMap<string, Json> = new Map<string, Json>([
  ['about', {}],
  ['serials', { schemes: [], runs: columnsOf([], new Set()) as JsonObject }],
  ['prices', {}],
  ...LISTS.map(({ name, path }): [string, Json] => [
    path.join('.'),
    name === RUNS ? (columnsOf([], new Set()) as JsonObject) : [],
  ]),
]);

/** Is there nothing in it: no entry, no value, and in what it holds neither? */
function isEmpty(value: Json | undefined): boolean {
  if (value === undefined || value === null) return true;
  if (Array.isArray(value)) return value.every((inner) => inner === null);
  return isObject(value) && Object.values(value).every(isEmpty);
}

function withKey(object: JsonObject, key: string, value: Json | undefined): JsonObject {
  const copy: Record<string, unknown> = { ...object };
  setKey(copy, key, value);
  return copy as JsonObject;
}

function withPath(object: JsonObject, path: readonly string[], value: Json): JsonObject {
  const [key, ...rest] = path;
  if (key === undefined) return value as JsonObject;
  const inner = ownKey(object, key);
  return withKey(object, key, rest.length === 0 ? value : withPath(isObject(inner) ? inner : {}, rest, value));
}
