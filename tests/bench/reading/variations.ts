/** A change of a page's mark-up that leaves what a person reads as it was. Changes the document given. */
export interface Variation {
  name: string;
  change(document: Document): void;
}

const each = (document: Document, selector: string, act: (element: Element) => void) => {
  for (const element of [...document.querySelectorAll(selector)]) act(element);
};
const drop = (document: Document, selector: string) => each(document, selector, (element) => element.remove());

function rename(element: Element, tag: string): void {
  const made = element.ownerDocument.createElement(tag);
  for (const { name, value } of element.attributes) {
    // Written in some pages, and not to be set by a program.
    if (/^[\w:-]+$/.test(name)) made.setAttribute(name, value);
  }
  made.append(...element.childNodes);
  element.replaceWith(made);
}

/** Classes that hide or raise what they name belong to what a person sees, as the style sheet has it. */
const SEEN_BY = /^(?:sr-only|visually-?hidden|screen-reader\S*|cents?|frac\S*|decimals?)$/i;

const MARKS = [
  'itemprop',
  'itemscope',
  'itemtype',
  'itemid',
  'itemref',
  'property',
  'typeof',
  'vocab',
  'about',
  'resource',
  'rel',
  'rev',
  'prefix',
  'datatype',
];

const withoutLinkedData = (document: Document) => drop(document, 'script[type*="ld+json" i]');
const withoutMarks = (document: Document) =>
  each(document, '*', (element) => {
    for (const name of MARKS) if (name !== 'rel' || element.localName !== 'link') element.removeAttribute(name);
    if (/^(?:span|div|p|strong|b)$/.test(element.localName)) element.removeAttribute('content');
  });
const withoutMetas = (document: Document) => drop(document, 'meta[property], meta[name]');
const withoutScripts = (document: Document) => drop(document, 'script');
const withoutNames = (document: Document) => {
  const made = new Map<string, string>();
  const other = (name: string) => {
    if (SEEN_BY.test(name)) return name;
    let its = made.get(name);
    if (!its) {
      its = `x${made.size.toString(36)}q`;
      made.set(name, its);
    }
    return its;
  };
  each(document, '[class], [id], [data-testid]', (element) => {
    const named = element.getAttribute('class');
    if (named !== null) element.setAttribute('class', named.split(/\s+/).filter(Boolean).map(other).join(' '));
    element.removeAttribute('id');
    element.removeAttribute('data-testid');
  });
};
const withoutStructure = (document: Document) => {
  withoutLinkedData(document);
  withoutScripts(document);
  withoutMarks(document);
  withoutMetas(document);
};
const withoutParts = (document: Document) =>
  each(document, 'main, article, aside, header, section, [role]', (element) => {
    element.removeAttribute('role');
    if (/^(?:main|article|aside|header|section)$/.test(element.localName)) rename(element, 'div');
  });
const withoutHeadings = (document: Document) => each(document, 'h1, h2, h3, h4, h5, h6', (one) => rename(one, 'div'));

const LABELS: [RegExp, string][] = [
  [/^Description(?=:?$)/, 'Beschreibung'],
  [/^Price(?=:?$)/, 'Preis'],
  [/^Condition(?=:?$)/, 'Zustand'],
  [/^(?:Location|Place|Where)(?=:?$)/, 'Standort'],
  [/^(?:Listed|Posted)(?=:?$)/, 'Eingestellt'],
  [/^Serial number(?=:?$)/, 'Seriennummer'],
  [/^(?:Similar (?:items|adverts|ads))(?=:?$)/, 'Ähnliche Anzeigen'],
];

/** Each says nothing that a person would miss; together they leave nothing but the visible text in boxes. */
export const VARIATIONS: Variation[] = [
  { name: 'as it is', change: () => {} },
  { name: 'no JSON-LD', change: withoutLinkedData },
  { name: 'no microdata, no RDFa', change: withoutMarks },
  { name: 'no meta elements', change: withoutMetas },
  { name: 'no scripts', change: withoutScripts },
  { name: 'nothing for machines', change: withoutStructure },
  { name: 'no names of classes', change: withoutNames },
  {
    name: 'nothing for machines, no names of classes',
    change: (document) => {
      withoutStructure(document);
      withoutNames(document);
    },
  },
  { name: 'no main, article, aside', change: withoutParts },
  { name: 'no heading elements', change: withoutHeadings },
  {
    name: 'a second heading before the first',
    change: (document) => document.body?.insertAdjacentHTML('afterbegin', '<div><h1>The Thrift Board</h1></div>'),
  },
  {
    name: 'a title of the site alone',
    change: (document) => {
      document.title = 'The Thrift Board';
    },
  },
  {
    name: 'every block in two more',
    change: (document) =>
      each(document, 'h1, h2, h3, p, dl, ul, table', (element) => {
        if (element.parentElement?.closest('ul, table, dl, p')) return;
        const outer = document.createElement('div');
        const inner = document.createElement('div');
        element.replaceWith(outer);
        outer.append(inner);
        inner.append(element);
      }),
  },
  {
    name: 'lists of terms as boxes',
    change: (document) => {
      each(document, 'dt, dd', (element) => rename(element, 'div'));
      each(document, 'dl', (element) => {
        const cells = [...element.children];
        if (cells.length % 2 || cells.some((cell) => cell.children.length > 0)) return;
        for (let index = 0; index < cells.length; index += 2) {
          const row = document.createElement('div');
          cells[index]!.replaceWith(row);
          row.append(cells[index]!, cells[index + 1]!);
        }
        rename(element, 'div');
      });
    },
  },
  {
    name: 'labels of another language',
    change: (document) =>
      each(document, 'h1, h2, h3, h4, dt, th, td, b, strong, span, div', (element) => {
        const [only] = element.childNodes;
        if (element.childNodes.length !== 1 || only?.nodeType !== 3) return;
        for (const [label, other] of LABELS) only.nodeValue = (only.nodeValue ?? '').trim().replace(label, other);
      }),
  },
];
