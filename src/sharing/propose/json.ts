/** A JSON value. */
export type Json = null | boolean | number | string | readonly Json[] | JsonObject;
export type JsonObject = { readonly [key: string]: Json | undefined };

export function isObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The same JSON value, whatever the order of keys; undefined (nothing is there) is the same as itself alone. */
export function sameJson(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (Array.isArray(a))
    return Array.isArray(b) && a.length === b.length && a.every((value, i) => sameJson(value, b[i]));
  if (!isObject(a) || !isObject(b)) return false;
  let more = 0;
  for (const key of Object.keys(a)) {
    if (a[key] === undefined) continue;
    if (b[key] === undefined || !sameJson(a[key], b[key])) return false;
    more++;
  }
  for (const key of Object.keys(b)) if (b[key] !== undefined) more--;
  return more === 0;
}

/** Sets or, with undefined, takes away a key: as the object's own, whatever it is called. */
export function setKey(object: Record<string, unknown>, key: string, value: unknown): void {
  if (value === undefined) delete object[key];
  else Object.defineProperty(object, key, { value, enumerable: true, writable: true, configurable: true });
}

/** What an object holds itself under a key. */
export function ownKey(object: JsonObject | undefined, key: string): Json | undefined {
  return object !== undefined && Object.hasOwn(object, key) ? object[key] : undefined;
}
