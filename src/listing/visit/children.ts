import { PICTURES } from './elements';
import type { Sight } from './sight';

/** The children of a host that a slot of its shadow tree shows. */
export function slotted(sight: Sight, host: Element, name: string): Node[] {
  const assigned: Node[] = [];
  for (let child = sight.firstChild(host); child; child = sight.nextSibling(child)) {
    const type = sight.nodeType(child);
    if (type === 1 && sight.tag(child as Element) === 'template') continue;
    const wanted = type === 1 ? (sight.attribute(child as Element, 'slot') ?? '') : '';
    if ((type === 1 || type === 3) && wanted === name) assigned.push(child);
  }
  return assigned;
}

/** True where a picture is the first thing in an element, and not the only one. */
export function beginsWithPicture(sight: Sight, element: Element): boolean {
  for (let child = sight.firstChild(element); child; child = sight.nextSibling(child)) {
    if (sight.nodeType(child) === 1)
      return PICTURES.has(sight.tag(child as Element)) && sight.nextSibling(child) !== null;
    if (sight.nodeType(child) === 3 && /\S/.test(sight.data(child))) return false;
  }
  return false;
}
