import type { Item } from '../types';
import { resolved } from './addresses';
import type { Sight } from './sight';
import type { Walk } from './walked';

const ITEMS_MOST = 1000;
const PROPERTIES_MOST = 500;
/** Elements visited for all items together: itemref lets one part of a page belong to many items. */
const VISITS_MOST = 600_000;

const ADDRESS_IN: [tags: RegExp, attribute: string][] = [
  [/^(?:audio|embed|iframe|img|source|track|video)$/, 'src'],
  [/^(?:a|area|link)$/, 'href'],
  [/^object$/, 'data'],
];

const tokens = (text: string | null): string[] => {
  if (!text) return [];
  return /[\t\n\f\r ]/.test(text) ? [...new Set(text.split(/[\t\n\f\r ]+/).filter(Boolean))] : [text];
};

/**
 * The items of a page in tree order, by the HTML standard (section Microdata: "the properties of an item", "the value
 * of a property"). `textOf` gives the text of an element whose value is its text; in the standard its textContent.
 */
export function* itemsOf(
  sight: Sight,
  { scopes, ids }: Pick<Walk, 'scopes' | 'ids'>,
  textOf: (element: Element) => Generator<void, string>,
): Generator<void, Item[]> {
  const index = new Map(scopes.slice(0, ITEMS_MOST).map((element, at) => [element, at]));
  let visits = VISITS_MOST;

  /** In tree order: what is inside the item, or inside what it refers to, but not inside another item. */
  const propertiesOf = (root: Element): Element[] => {
    const results: Element[] = [];
    const memory = new Set<Node>([root]);
    const pending: Node[] = [];
    const addChildren = (of: Node) => {
      const at = pending.length;
      for (let child = sight.firstChild(of); child; child = sight.nextSibling(child)) {
        if (sight.nodeType(child) === 1) pending.push(child);
      }
      // The first child is to be taken first, from the end.
      for (let low = at, high = pending.length - 1; low < high; low++, high--) {
        [pending[low], pending[high]] = [pending[high]!, pending[low]!];
      }
    };
    const references = tokens(sight.attribute(root, 'itemref'));
    for (const id of references) {
      const referred = ids.get(id);
      if (referred) pending.push(referred);
    }
    addChildren(root);
    while (pending.length > 0 && results.length < PROPERTIES_MOST && visits-- > 0) {
      const current = pending.pop() as Element;
      // Met twice: by the standard an error of the page, and ignored.
      if (memory.has(current)) continue;
      memory.add(current);
      if (sight.attribute(current, 'itemscope') === null) addChildren(current);
      if (tokens(sight.attribute(current, 'itemprop')).length > 0) results.push(current);
    }
    return references.length > 0 ? results.sort((a, b) => (sight.before(a, b) ? -1 : 1)) : results;
  };

  const read = function* (element: Element): Generator<void, string | number> {
    const item = index.get(element);
    if (item !== undefined) return item;
    const tag = sight.tag(element);
    const get = (name: string) => sight.attribute(element, name);
    if (tag === 'meta') return get('content') ?? '';
    for (const [tags, attribute] of ADDRESS_IN) {
      if (!tags.test(tag)) continue;
      const address = get(attribute);
      return address === null ? '' : (resolved(address, sight.base) ?? '');
    }
    // Beyond the HTML standard, which has it on meta alone: schema.org/price allows a content attribute on any element.
    const content = get('content');
    if (content !== null) return content;
    if (tag === 'data' || tag === 'meter') return get('value') ?? '';
    return (tag === 'time' && get('datetime')) || (yield* textOf(element));
  };

  const items: Item[] = [];
  for (const element of index.keys()) {
    yield;
    const id = sight.attribute(element, 'itemid');
    const properties: Item['properties'] = [];
    for (const property of propertiesOf(element)) {
      const value = yield* read(property);
      for (const name of tokens(sight.attribute(property, 'itemprop'))) properties.push([name, value]);
    }
    items.push({
      types: tokens(sight.attribute(element, 'itemtype')),
      id: id === null ? null : resolved(id.trim(), sight.base),
      properties,
      top: sight.attribute(element, 'itemprop') === null,
    });
  }
  return items;
}
