/** What belongs together, in the order in which the first of each came: several places of the advert, one finding. */
export function grouped<T>(items: readonly T[], keyOf: (item: T) => string): [T, ...T[]][] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const item of items) {
    const there = groups.get(keyOf(item));
    if (there) there.push(item);
    else groups.set(keyOf(item), [item]);
  }
  return [...groups.values()];
}
