import { layoutOf, NO_LAYOUT } from './layout';

/** What the reader asks of a page's nodes. None of it can be answered by a name or an id inside the page. */
export interface Sight {
  /** The root element, or null in an empty document. */
  root: Element | null;
  nodeType(node: Node): number;
  firstChild(node: Node): Node | null;
  nextSibling(node: Node): Node | null;
  parent(node: Node): Node | null;
  /** The text of a text node. */
  data(node: Node): string;
  textContent(node: Node): string;
  /** Lower case for HTML elements. */
  tag(element: Element): string;
  /** An attribute's text, or null. */
  attribute(element: Element, name: string): string | null;
  hasAttributes(element: Element): boolean;
  attributeNames(element: Element): string[];
  /** The elements of the document that a selector matches, in document order; shadow trees have their own. */
  select(selector: string): Iterable<Element> & { length: number };
  /**
   * A shadow root, or null; a closed one only where the browser lets extensions see it. To be asked only of elements
   * that may have one.
   */
  shadow(element: Element): Node | null;
  /** What a template element holds. */
  templateContent(element: Element): Node | null;
  /** The document in a frame, or null where it is of another origin. */
  frameDocument(element: Element): Node | null;
  /** True where `a` stands before `b`. */
  before(a: Node, b: Node): boolean;
  /** The page's address, and the one that its relative addresses are resolved against. */
  address: string;
  base: string;
  /** False where a browser with a layout says that the element is not to be seen; true where nobody can say. */
  shown(element: Element): boolean;
  /** A computed style value, or "" where there is no layout. */
  style(element: Element, property: string): string;
}

type Asked = (this: unknown, ...given: unknown[]) => unknown;

/**
 * A form with a field called "firstChild" answers that field for `form.firstChild`, and an image called "body" is
 * `document.body`. So the getters and methods are taken from the prototypes, where no page text reaches.
 */
function fromPrototype(sample: object, name: string, kind: 'get' | 'value'): Asked | null {
  for (let at = Object.getPrototypeOf(sample); at; at = Object.getPrototypeOf(at)) {
    const found = Object.getOwnPropertyDescriptor(at, name)?.[kind];
    if (typeof found === 'function') return found as Asked;
  }
  return null;
}

type Closed = { openOrClosedShadowRoot?: Node | null };

/** In the extension's own world Chromium and Firefox show closed roots too, each in its way; null where nobody does. */
function closedShadow(sample: object): ((of: Element) => Node | null) | null {
  const { dom } =
    (globalThis as { chrome?: { dom?: { openOrClosedShadowRoot?: (of: Element) => Node | null } } }).chrome ?? {};
  if (dom?.openOrClosedShadowRoot)
    return (of) => {
      try {
        return dom.openOrClosedShadowRoot?.(of) ?? null;
      } catch {
        // It is asked of elements of HTML alone.
        return null;
      }
    };
  return 'openOrClosedShadowRoot' in sample ? (of) => (of as Closed).openOrClosedShadowRoot ?? null : null;
}

/** Closed roots of elements that are no custom ones are asked for so often at most: asking costs more than a getter. */
const CLOSED_MOST = 1000;

/** `Function.prototype.call`, bound to a getter or method: engines make more of it than of a function of our own. */
const { call } = Function.prototype;

/** How to look at this document; changes nothing in it. Never throws for a Document of any engine. */
export function lookAt(document: Document, address?: string): Sight {
  const getter = <T>(sample: object, name: string, otherwise: T): ((of: object) => T) => {
    const get = fromPrototype(sample, name, 'get');
    return get ? (call.bind(get) as (of: object) => T) : () => otherwise;
  };
  const method = <R, G extends unknown[] = []>(
    sample: object,
    name: string,
  ): ((of: object, ...given: G) => R) | null => {
    const found = fromPrototype(sample, name, 'value');
    return found && (call.bind(found) as (of: object, ...given: G) => R);
  };

  const root = getter<Element | null>(document, 'documentElement', null)(document);
  const element: object = root ?? document;
  const attribute = method<string | null, [string]>(element, 'getAttribute');
  const select = method<NodeListOf<Element>, [string]>(document, 'querySelectorAll');
  const checkVisibility = method<boolean, [object]>(element, 'checkVisibility');
  const compare = method<number, [Node]>(document, 'compareDocumentPosition');
  const nodeType = getter<number>(document, 'nodeType', 0);
  const firstChild = getter<Node | null>(document, 'firstChild', null);
  const parent = getter<Node | null>(document, 'parentNode', null);
  const text = getter<string | null>(document, 'textContent', null);
  const tag = getter<string>(element, 'localName', '');
  const window = getter<Window | null>(document, 'defaultView', null)(document);
  /** Only elements have a tag: asked of the document above them, a browser's getter throws. */
  const around = (of: Element): Element | null => {
    const above = parent(of);
    return above !== null && nodeType(above) === 1 ? (above as Element) : null;
  };
  // A document that is not in a window, and every document of the command line, has no layout to ask.
  const layout = window !== null && checkVisibility !== null ? layoutOf(checkVisibility, { around, tag }) : NO_LAYOUT;

  const openShadow = getter<Node | null>(element, 'shadowRoot', null);
  /** A getter of one kind of element, from its own prototypes; null where there is none, or where it may not be asked. */
  const ofItsKind = (of: Element, name: string): Node | null => {
    try {
      return (fromPrototype(of, name, 'get')?.call(of) as Node | null | undefined) ?? null;
    } catch {
      return null;
    }
  };

  const closed = closedShadow(element);
  let asked = 0;
  /** A closed root mostly holds all that its host shows. */
  const mayBeClosed = (of: Element): boolean =>
    tag(of).includes('-') || (firstChild(of) === null && ++asked <= CLOSED_MOST);

  return {
    root,
    nodeType,
    firstChild,
    nextSibling: getter<Node | null>(document, 'nextSibling', null),
    parent,
    data: (node) => (node as Text).data,
    textContent: (node) => text(node) ?? '',
    tag,
    attribute: attribute ?? (() => null),
    hasAttributes: method<boolean>(element, 'hasAttributes') ?? (() => false),
    attributeNames: method<string[]>(element, 'getAttributeNames') ?? (() => []),
    select: (selector) => (select ? select(document, selector) : []),
    shadow: (of) => openShadow(of) ?? (closed && mayBeClosed(of) ? closed(of) : null),
    templateContent: (of) => ofItsKind(of, 'content'),
    frameDocument: (of) => ofItsKind(of, 'contentDocument'),
    before: (a, b) => compare !== null && (compare(a, b) & 4) !== 0,
    address: address ?? getter<string>(document, 'URL', '')(document),
    base: address ?? getter<string>(document, 'baseURI', '')(document),
    shown: layout.shown,
    style: layout.style,
  };
}
