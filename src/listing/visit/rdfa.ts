import type { RdfaMark } from '../types';
import type { Sight } from './sight';

const MARKS_MOST = 2000;
const SELECTED = '[typeof],[property],[rel],[rev],[vocab],[prefix],[about],[resource]';
const NAMES = [
  'typeof',
  'property',
  'rel',
  'rev',
  'vocab',
  'prefix',
  'about',
  'resource',
  'href',
  'src',
  'content',
  'datatype',
];
/** Link relations of HTML, which every page has on its links and which say nothing of what is for sale. */
const HTML_RELATION = /^[a-z\s-]*$/i;

/**
 * The elements of a page that carry RDFa attributes, with those attributes, in document order, each with the nearest
 * such element around it. What they mean is worked out outside of the page. A page that states no type has none.
 * `textOf` gives the text of an element whose value is its text.
 */
export function* rdfaOf(
  sight: Sight,
  textOf: (element: Element) => Generator<void, string>,
): Generator<void, RdfaMark[]> {
  if (sight.select('[typeof]').length === 0) return [];
  const marks: RdfaMark[] = [];
  const placed = new Map<Node, number>();

  /** Old pages declare prefixes as XML namespaces, which no selector finds. */
  const namespacesOf = (element: Element): [string, string][] =>
    sight
      .attributeNames(element)
      .filter((name) => name.startsWith('xmlns:'))
      .map((name) => [name, sight.attribute(element, name) ?? '']);

  const place = (element: Element, own: [string, string][]): number => {
    let parent = -1;
    const passed: Node[] = [];
    for (let at = sight.parent(element); at && sight.nodeType(at) === 1; at = sight.parent(at)) {
      const known = placed.get(at);
      if (known !== undefined) {
        parent = known;
        break;
      }
      passed.push(at);
    }
    // From the outside to the inside; what declares no prefix is as good as what stands around it.
    for (const node of passed.reverse()) {
      const declared = namespacesOf(node as Element);
      if (declared.length > 0) parent = marks.push({ parent, tag: '', attributes: declared }) - 1;
      placed.set(node, parent);
    }
    const tag = sight.tag(element);
    const at = marks.push({ parent, tag, attributes: [...own, ...namespacesOf(element)] }) - 1;
    placed.set(element, at);
    return at;
  };

  for (const element of sight.select(SELECTED)) {
    if (marks.length >= MARKS_MOST) break;
    yield;
    const own: [string, string][] = [];
    for (const name of NAMES) {
      const value = sight.attribute(element, name);
      if (value !== null) own.push([name, value]);
    }
    const has = (name: string) => own.some(([its]) => its === name);
    // Read with the other meta elements.
    const isTold = own.some(
      ([name, value]) => name === 'property' && /^(?:og|fb|twitter|article|product):/.test(value),
    );
    if (isTold && sight.tag(element) === 'meta') continue;
    const onlyRelated = own.every(
      ([name, value]) => name === 'href' || name === 'src' || (name === 'rel' && HTML_RELATION.test(value)),
    );
    if (onlyRelated && /^(?:a|link|area|form)$/.test(sight.tag(element))) continue;
    const datetime = sight.attribute(element, 'datetime');
    if (datetime !== null && !has('content')) own.push(['content', datetime]);
    const index = place(element, own);
    const isRelated = has('rel') || has('rev');
    const isThing = (!isRelated && ['resource', 'href', 'src'].some(has)) || (has('typeof') && !has('about'));
    if (has('property') && (has('datatype') || !isThing) && !own.some(([name]) => name === 'content'))
      marks[index]!.text = yield* textOf(element);
  }
  return marks;
}
