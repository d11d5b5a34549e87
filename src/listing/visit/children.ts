import { kindOf, PICTURE } from './kinds';
import type { Sight } from './sight';

/** The children of a host by the name of the slot of its shadow tree that shows them, the last one first. */
export type Slots = Map<string, Node[]>;

export function slotsOf(sight: Sight, host: Element): Slots {
  const slots: Slots = new Map();
  for (let child = sight.firstChild(host); child; child = sight.nextSibling(child)) {
    const type = sight.nodeType(child);
    if ((type !== 1 && type !== 3) || (type === 1 && sight.tag(child as Element) === 'template')) continue;
    const name = type === 1 ? (sight.attribute(child as Element, 'slot') ?? '') : '';
    const same = slots.get(name);
    if (same) same.push(child);
    else slots.set(name, [child]);
  }
  for (const nodes of slots.values()) nodes.reverse();
  return slots;
}

/** True where a picture is the first thing in an element, and not the only one. */
export function beginsWithPicture(sight: Sight, element: Element): boolean {
  for (let child = sight.firstChild(element); child; child = sight.nextSibling(child)) {
    if (sight.nodeType(child) === 1)
      return (kindOf(sight.tag(child as Element)) & PICTURE) !== 0 && sight.nextSibling(child) !== null;
    if (sight.nodeType(child) === 3 && /\S/.test(sight.data(child))) return false;
  }
  return false;
}
