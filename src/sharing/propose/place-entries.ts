/** An entry that has to find its place: after which other one, or first of all. */
export interface Unplaced {
  entry: string;
  follows: string | null;
}

/**
 * The order of a list's entries after some were added or moved: what stays keeps its order, and each other one comes
 * right after the one that it follows, which may itself be new. Where several follow one, they stand in the order of
 * their names, so that nobody's changes come first by chance. What follows an entry that isn't there comes at the end.
 * Steps: as many as there are entries.
 */
export function placeEntries(staying: Iterable<string>, unplaced: readonly Unplaced[]): string[] {
  const followers = new Map<string | null, string[]>();
  for (const { entry, follows } of unplaced) {
    const others = followers.get(follows);
    if (others) others.push(entry);
    else followers.set(follows, [entry]);
  }
  const order: string[] = [];
  const placed = new Set<string>();
  /** The entry and all that follow it, those that follow these, and so on: without recursion, for chains are long. */
  const place = (first: string): void => {
    const waiting = [first];
    for (let entry = waiting.pop(); entry !== undefined; entry = waiting.pop()) {
      if (placed.has(entry)) continue;
      placed.add(entry);
      order.push(entry);
      waiting.push(...backwards(followers.get(entry)));
    }
  };
  for (const entry of backwards(followers.get(null)).reverse()) place(entry);
  for (const entry of staying) place(entry);
  // What follows something that isn't there; then what follows itself by way of others.
  const known = new Set([...placed, ...unplaced.map(({ entry }) => entry)]);
  const lost = unplaced.filter(({ entry }) => !placed.has(entry));
  for (const { entry } of sorted(lost.filter(({ follows }) => follows !== null && !known.has(follows)))) place(entry);
  for (const { entry } of sorted(lost)) place(entry);
  return order;
}

function backwards(entries: readonly string[] | undefined): string[] {
  return [...(entries ?? [])].sort().reverse();
}

function sorted(entries: readonly Unplaced[]): Unplaced[] {
  return [...entries].sort((a, b) => (a.entry < b.entry ? -1 : 1));
}
