import { shortName, type Thing, typeName } from '../structured/things';
import type { Item } from '../types';

/** The top-level microdata items of a page as things. */
export function fromMicrodata(items: Item[]): Thing[] {
  const made = items.map((item): Thing => {
    // One pass, so that asking for many properties stays cheap.
    const byName = new Map<string, (string | number)[]>();
    for (const [name, value] of item.properties) {
      const short = shortName(name);
      const before = byName.get(short);
      if (before) before.push(value);
      else byName.set(short, [value]);
    }
    return {
      types: item.types.map(typeName),
      id: item.id,
      get: (property) =>
        (byName.get(property) ?? [])
          .map((value) => (typeof value === 'string' ? value : made[value]))
          .filter((value) => value !== undefined),
    };
  });
  return made.filter((_, index) => items[index]!.top);
}
