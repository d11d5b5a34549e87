import { isChangeable } from '../pack/changeable';
import type { AttributeKnown } from '../pack/knowledge';

/**
 * The values of an attribute that stand for themselves. "Round" is no leaf where class 15 and class 66 are kinds of
 * it: who says "round" says one of those.
 */
export interface Leaves {
  attribute: AttributeKnown;
  values: readonly (string | boolean)[];
  /** For everything that can be said of it, the positions of the leaves that it covers. */
  covers: ReadonlyMap<string | boolean, readonly number[]>;
  /** Values that exclude nothing can stand beside each other (a crank beside a motor), or be changed later. */
  changeable: boolean;
}

/** More values than a person could choose from; a pack that has more says nothing to identification by it. */
const MOST_VALUES = 100;

/** null for a measure, which has no values to choose from, and for a choice that nobody could make. */
export function leavesOf(attribute: AttributeKnown): Leaves | null {
  const { def } = attribute;
  if (def.kind === 'measure' || (def.kind === 'choice' && def.values.length > MOST_VALUES)) return null;
  if (def.kind === 'yes-no')
    return {
      attribute,
      values: [true, false],
      covers: new Map([
        [true, [0]],
        [false, [1]],
      ]),
      changeable: false,
    };
  const wider = new Map(def.values.map((value) => [value.id, value.within]));
  const wide = new Set(def.values.map((value) => value.within));
  const leaves = def.values.map((value) => value.id).filter((id) => !wide.has(id));
  // A pack whose values are within each other in a ring has no leaf; then all are.
  const values = leaves.length > 0 ? leaves : def.values.map((value) => value.id);
  const covers = new Map(def.values.map(({ id }) => [id, [] as number[]]));
  values.forEach((leaf, position) => {
    const seen = new Set<string>();
    for (let at: string | undefined = leaf; at !== undefined && !seen.has(at); at = wider.get(at)) {
      seen.add(at);
      covers.get(at)?.push(position);
    }
  });
  return { attribute, values, covers, changeable: def.values.some(({ id }) => isChangeable(id, def)) };
}
