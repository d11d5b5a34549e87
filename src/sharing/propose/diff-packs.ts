import type { Pack } from '../../pack/schema/index';
import type { Change } from './changes';
import { diffFields } from './diff-fields';
import { increasing } from './increasing';
import type { Json, JsonObject } from './json';
import { sameJson } from './json';
import { at, entriesOf, LISTS, type ListPart, OBJECTS } from './parts';
import { isColumn, OPTIONAL_COLUMNS } from './rows';

/**
 * What makes the second pack of the first, entry by entry: see changes.ts. Both are packs in order.
 * Steps: about as many as both have entries; where entries have moved, times the logarithm of their number.
 */
export function diffPacks(before: Pack, after: Pack): Change[] {
  return [...LISTS.flatMap((part) => diffList(part, before, after)), ...diffObjects(before, after)];
}

function diffList(part: ListPart, before: Pack, after: Pack): Change[] {
  if (at(before, part.path) === at(after, part.path)) return [];
  const was = entriesOf(before, part);
  const now = entriesOf(after, part);
  const changes: Change[] = [];
  for (const [entry, value] of was)
    if (!now.has(entry)) changes.push({ do: 'remove', part: part.name, entry, was: value });
  const staying = stayingOf(was, now);
  let follows: string | null = null;
  for (const [entry, value] of now) {
    const there = was.get(entry);
    if (there === undefined) changes.push({ do: 'add', part: part.name, entry, value, follows });
    else {
      if (!staying.has(entry)) changes.push({ do: 'move', part: part.name, entry, follows });
      if (there !== value && !sameJson(there, value))
        for (const change of diffFields(there, value))
          changes.push({ do: 'change', part: part.name, entry, ...change });
    }
    follows = entry;
  }
  return changes;
}

/** The entries of both that can stay where they are, so that the fewest have to move. */
function stayingOf(was: ReadonlyMap<string, unknown>, now: ReadonlyMap<string, unknown>): Set<string> {
  const place = new Map<string, number>();
  for (const entry of was.keys()) if (now.has(entry)) place.set(entry, place.size);
  const both = [...now.keys()].filter((entry) => place.has(entry));
  return new Set(increasing(both.map((entry) => place.get(entry)!)).map((i) => both[i]!));
}

/** Fields beside the lists, and which lists and columns are there at all. */
function diffObjects(before: Pack, after: Pack): Change[] {
  return OBJECTS.flatMap(({ name, path }) => {
    const shown = (pack: Pack): JsonObject => outline(name, at(pack, path) as JsonObject | undefined);
    return diffFields(shown(before), shown(after)).map(
      (change): Change => ({ do: 'change', part: name, entry: '', ...change }),
    );
  });
}

const HELD = new Set([...LISTS, ...OBJECTS].map(({ path }) => path.join('.')));

/** An object with its lists and inner objects emptied: that they are there is all that is its own. */
function outline(name: string, object: JsonObject | undefined): JsonObject {
  const own: Record<string, Json | undefined> = {};
  const prefix = name === '' ? '' : `${name}.`;
  for (const [key, value] of Object.entries(object ?? {})) {
    if (name === 'serials.columns' && isColumn(key)) {
      if ((OPTIONAL_COLUMNS as readonly string[]).includes(key)) own[key] = [];
    } else if (HELD.has(prefix + key)) own[key] = Array.isArray(value) ? [] : {};
    else own[key] = value;
  }
  return own as JsonObject;
}
