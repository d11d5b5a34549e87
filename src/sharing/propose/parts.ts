import type { Pack } from '../../pack/schema/index';
import { isObject, type Json, type JsonObject } from './json';
import { rowsOf } from './rows';

/*
 * A pack as lists of entries with names. Most entries have an id. Those without one are named by what they are about, so
 * that a corrected amount is a change of that band and not another band; a second of the same name is its "#2".
 */

export interface ListPart {
  name: string;
  /** The keys that lead to the list. */
  path: readonly string[];
  /** The fields that make an entry's name. */
  naming: readonly string[];
}

/** "ash", "k|K20001|K20100": what an entry is called, but for the "#2" of a second one. */
export function nameOf({ naming }: ListPart, entry: JsonObject): string {
  return naming.map((field) => plain(entry[field])).join('|');
}

function plain(value: Json | undefined): string {
  return typeof value === 'string' || typeof value === 'number' ? String(value) : '';
}

export const RUNS = 'serials.runs';

export const LISTS: readonly ListPart[] = [
  ...['attributes', 'families', 'models', 'types', 'wording', 'cautions', 'photographs', 'terms'].map((name) => ({
    ...{ name, path: [name], naming: ['id'] },
  })),
  { name: 'places', path: ['places'], naming: ['host', 'field', 'path'] },
  { name: 'serials.schemes', path: ['serials', 'schemes'], naming: ['id'] },
  { name: RUNS, path: ['serials', 'runs'], naming: ['scheme', 'first', 'last'] },
  { name: 'prices.grades', path: ['prices', 'grades'], naming: ['id'] },
  { name: 'prices.factors', path: ['prices', 'factors'], naming: ['id'] },
  {
    name: 'prices.bands',
    path: ['prices', 'bands'],
    naming: ['model', 'grade', 'kind', 'currency', 'date'],
  },
  {
    name: 'prices.observations',
    path: ['prices', 'observations'],
    naming: ['model', 'grade', 'kind', 'amount', 'currency', 'date'],
  },
  { name: 'prices.index', path: ['prices', 'index'], naming: ['currency'] },
  { name: 'prices.wages', path: ['prices', 'wages'], naming: ['currency'] },
  { name: 'prices.rates', path: ['prices', 'rates'], naming: ['from', 'to', 'date'] },
];

/** Objects that hold lists or fields, outer ones first. */
export const OBJECTS: readonly { name: string; path: readonly string[] }[] = [
  { name: '', path: [] },
  { name: 'about', path: ['about'] },
  { name: 'serials', path: ['serials'] },
  { name: 'serials.columns', path: ['serials', 'runs'] },
  { name: 'prices', path: ['prices'] },
];

/** Fields that are tables: their keys change one by one. */
export const TABLES: ReadonlySet<string> = new Set(['facts', 'necessary', 'where', 'sources', 'covers']);

/** What lies at the end of a path of keys. */
export function at(pack: unknown, path: readonly string[]): unknown {
  let value: unknown = pack;
  for (const key of path) value = isObject(value) && Object.hasOwn(value, key) ? value[key] : undefined;
  return value;
}

/** A list's entries by name, in their order. */
export function entriesOf(pack: Pack, part: ListPart): Map<string, JsonObject> {
  const value = at(pack, part.path);
  const list = part.name === RUNS ? rowsOf(value as JsonObject | undefined) : Array.isArray(value) ? value : [];
  const entries = new Map<string, JsonObject>();
  const times = new Map<string, number>();
  for (const entry of list as JsonObject[]) {
    const name = nameOf(part, entry);
    if (!entries.has(name)) {
      entries.set(name, entry);
      continue;
    }
    let count = (times.get(name) ?? 1) + 1;
    while (entries.has(`${name}#${count}`)) count++;
    times.set(name, count);
    entries.set(`${name}#${count}`, entry);
  }
  return entries;
}
