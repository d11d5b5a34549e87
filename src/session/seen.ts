/** What a viewer may say of one attribute: the id of a choice's value, yes or no; null where it could not be told. */
export type SeenValue = string | boolean | null;

/** Attribute reference -> what was seen of it, in the order in which it was said. */
export type Seen = ReadonlyMap<string, SeenValue>;

export const NOTHING_SEEN: Seen = new Map();

/** Something more was seen. What is said of an attribute again takes the place of what was said before. */
export function withSeen(seen: Seen, attribute: string, value: SeenValue): Seen {
  const next = new Map(seen);
  next.delete(attribute);
  return next.set(attribute, value);
}

/** Something is taken back. The same object where there is nothing to take back. */
export function withoutSeen(seen: Seen, attribute: string): Seen {
  if (!seen.has(attribute)) return seen;
  const next = new Map(seen);
  next.delete(attribute);
  return next;
}

export function sameSeen(a: Seen, b: Seen): boolean {
  return a.size === b.size && [...a].every(([attribute, value]) => b.has(attribute) && b.get(attribute) === value);
}
