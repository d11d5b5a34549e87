import { isObject, type Json, type JsonObject, ownKey, sameJson } from './json';
import { TABLES } from './parts';

export interface FieldChange {
  field: readonly string[];
  was?: Json;
  now?: Json;
}

/**
 * What differs between two objects, field by field; of tables key by key. A table that appears empty, or is gone with
 * nothing in it, is a change of the table itself, which comes after those of its keys.
 * @param except keys that are left alone
 */
export function diffFields(
  before: JsonObject,
  after: JsonObject,
  except: (key: string) => boolean = () => false,
): FieldChange[] {
  const changes: FieldChange[] = [];
  for (const key of keysOf(before, after)) {
    if (except(key)) continue;
    const [was, now] = [ownKey(before, key), ownKey(after, key)];
    if (sameJson(was, now)) continue;
    if (!TABLES.has(key) || !isTableOrNothing(was) || !isTableOrNothing(now)) {
      changes.push(changeOf([key], was, now));
      continue;
    }
    for (const inner of keysOf(was ?? {}, now ?? {})) {
      const [one, other] = [ownKey(was, inner), ownKey(now, inner)];
      if (!sameJson(one, other)) changes.push(changeOf([key, inner], one, other));
    }
    if (now === undefined) changes.push({ field: [key], was: {} });
    else if (was === undefined && Object.keys(now).length === 0) changes.push({ field: [key], now: {} });
  }
  return changes;
}

function isTableOrNothing(value: Json | undefined): value is JsonObject | undefined {
  return value === undefined || isObject(value);
}

function keysOf(a: JsonObject, b: JsonObject): string[] {
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].sort();
}

function changeOf(field: readonly string[], was: Json | undefined, now: Json | undefined): FieldChange {
  return { field, ...(was === undefined ? {} : { was }), ...(now === undefined ? {} : { now }) };
}
