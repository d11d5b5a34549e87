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
  /** A shadow root, or null; a closed one only where the browser lets extensions see it. */
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

/** Closed roots are asked for only where there may be one: asking costs more than a getter. */
const mayBeHost = (tag: string): boolean => tag.includes('-');

/** In the extension's own world Chromium and Firefox show closed roots too, each in its way. */
function anyShadow(element: Element): Node | null {
  const { chrome } = globalThis as { chrome?: { dom?: { openOrClosedShadowRoot?: (of: Element) => Node | null } } };
  const firefox = (element as { openOrClosedShadowRoot?: Node | null }).openOrClosedShadowRoot;
  return chrome?.dom?.openOrClosedShadowRoot?.(element) ?? firefox ?? null;
}

/** Questions to the layout, at most. They come after the walk, in one go, so that they cost one style pass. */
const SHOWN_MOST = 30_000;
const STYLES_MOST = 3000;

/** How to look at this document; changes nothing in it. Never throws for a Document of any engine. */
export function lookAt(document: Document, address?: string): Sight {
  const getter = <T>(sample: object, name: string, otherwise: T) => {
    const get = fromPrototype(sample, name, 'get');
    return (of: object): T => (get ? (get.call(of) as T) : otherwise);
  };
  const method = (sample: object, name: string) => fromPrototype(sample, name, 'value');

  const root = getter<Element | null>(document, 'documentElement', null)(document);
  const element: object = root ?? document;
  const attribute = method(element, 'getAttribute');
  const hasAttributes = method(element, 'hasAttributes');
  const attributeNames = method(element, 'getAttributeNames');
  const select = method(document, 'querySelectorAll');
  const checkVisibility = method(element, 'checkVisibility');
  const compare = method(document, 'compareDocumentPosition');
  const nodeType = getter<number>(document, 'nodeType', 0);
  const parent = getter<Node | null>(document, 'parentNode', null);
  const text = getter<string | null>(document, 'textContent', null);
  const tag = getter<string>(element, 'localName', '');
  const window = getter<Window | null>(document, 'defaultView', null)(document);
  // A document that is not in a window, and every document of the command line, has no layout to ask.
  const layout = window !== null && checkVisibility !== null;

  const openShadow = getter<Node | null>(element, 'shadowRoot', null);
  /** A getter of one kind of element, from its own prototypes; null where there is none, or where it may not be asked. */
  const ofItsKind = (of: Element, name: string): Node | null => {
    try {
      return (fromPrototype(of, name, 'get')?.call(of) as Node | null | undefined) ?? null;
    } catch {
      return null;
    }
  };

  const answers = new WeakMap<Element, boolean>();
  let asked = 0;
  let styled = 0;

  /** What a closed <details> holds is one press away, so it counts as shown. */
  const isFoldedAway = (of: Element): boolean => {
    // Only elements have a tag: asked of the document above them, a browser's getter throws.
    for (let at: Node | null = of; at && nodeType(at) === 1; at = parent(at))
      if (tag(at as Element) === 'details') return true;
    return false;
  };

  /** An element without a box of its own (display: contents, as slots are) shows what it holds where the one around it is shown. */
  const isBoxless = (of: Element, sight: Sight): boolean => {
    if (sight.style(of, 'display') !== 'contents' || sight.style(of, 'visibility') !== 'visible') return false;
    const around = parent(of);
    return around === null || nodeType(around) !== 1 || sight.shown(around as Element);
  };

  return {
    root,
    nodeType,
    firstChild: getter<Node | null>(document, 'firstChild', null),
    nextSibling: getter<Node | null>(document, 'nextSibling', null),
    parent,
    data: (node) => (node as Text).data,
    textContent: (node) => text(node) ?? '',
    tag,
    attribute: (of, name) => (attribute ? (attribute.call(of, name) as string | null) : null),
    hasAttributes: (of) => (hasAttributes ? (hasAttributes.call(of) as boolean) : false),
    attributeNames: (of) => (attributeNames ? (attributeNames.call(of) as string[]) : []),
    select: (selector) => (select ? (select.call(document, selector) as NodeListOf<Element>) : []),
    shadow: (of) => openShadow(of) ?? (mayBeHost(tag(of)) ? anyShadow(of) : null),
    templateContent: (of) => ofItsKind(of, 'content'),
    frameDocument: (of) => ofItsKind(of, 'contentDocument'),
    before: (a, b) => compare !== null && ((compare.call(a, b) as number) & 4) !== 0,
    address: address ?? getter<string>(document, 'URL', '')(document),
    base: address ?? getter<string>(document, 'baseURI', '')(document),
    shown(of) {
      if (!layout) return true;
      const known = answers.get(of);
      if (known !== undefined) return known;
      if (++asked > SHOWN_MOST) return true;
      const answer =
        checkVisibility.call(of, { visibilityProperty: true }) === true || isFoldedAway(of) || isBoxless(of, this);
      answers.set(of, answer);
      return answer;
    },
    style(of, property) {
      if (!layout || ++styled > STYLES_MOST) return '';
      return globalThis.getComputedStyle(of).getPropertyValue(property);
    },
  };
}
