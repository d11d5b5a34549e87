import { createRequire } from 'node:module';
import fc from 'fast-check';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../src/listing/slices';
import type { Item } from '../../src/listing/types';
import { itemsOf } from '../../src/listing/visit/items';
import { lookAt } from '../../src/listing/visit/sight';
import { walk } from '../../src/listing/visit/walk';

/**
 * Our microdata reader against microdata-node 2.0.0 of the npm registry, an independent implementation, over generated
 * documents. Where the two disagree, and whom the texts of the standards support:
 *
 * - <time> without datetime: the reference gives "", the HTML standard (Microdata, Values: the element's datetime value)
 *   its text. We follow the standard; the generator always gives a datetime.
 * - Elements brought in by itemref: the standard sorts results in tree order, the reference leaves them as named. We
 *   follow the standard; values of one property are compared as sets where an item has an itemref.
 * - content on other elements than meta: the HTML standard knows none; schema.org/price allows it on any, the reference
 *   prefers it even to src and href. We take it only where the text would be the value; generated only there.
 * - Numbers: the reference makes numbers of <data> and <meter> (RDF), the standard has texts. Compared as numbers.
 * - Types: the reference drops those that are no absolute address; property names of an untyped item inside a typed one
 *   get the outer vocabulary (RDF). The generator gives every item an absolute type of one vocabulary.
 * - Two items of one itemid are one for the reference, and a named item inside another is listed twice (RDF); by the
 *   standard each is one item where it stands. Ids are generated unique, and only for items that are no property.
 */
const reference = createRequire(import.meta.url)('microdata-node') as {
  toJson(html: string, options: { base: string; strict: boolean }): { items: Json[] };
};
type Json = { type?: string[]; id?: string; properties: Record<string, (string | number | Json)[]> };

const BASE = 'https://market.example/shelf/page';

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
const attributes = (all: Record<string, string | null | undefined>) =>
  Object.entries(all)
    .map(([name, value]) => (value === null || value === undefined ? '' : ` ${name}="${escaped(value)}"`))
    .join('');

const word = fc.constantFrom('iron', 'Öl & Tuch', '<b>', '"4"', 'a  b', '', ' x ', '…', '12');
const names = fc.constantFrom('name', 'price', 'image', 'name price', 'offers', 'brand brand');
/** An item under two names is written twice over by the reference (RDF); so items have one. */
const oneName = fc.constantFrom('offers', 'brand', 'seller');
const address = fc.constantFrom('/a.jpg', 'b', '../c?d=1', 'https://else.example/', '#top', '?q', '//host.example/x');
const number = fc.constantFrom('1', '0.50', '1234', '-3');
const someId = fc.option(fc.constantFrom('r1', 'r2', 'r3'), { nil: null });
const references = fc.option(fc.constantFrom('r1', 'r2 r3', 'r3 r1 none', 'r2 r2'), { nil: null });

const leaf = fc
  .record({
    itemprop: fc.option(names, { nil: null }),
    kind: fc.integer({ min: 0, max: 9 }),
    word,
    address,
    number,
    content: fc.option(word, { nil: null }),
  })
  .map(({ itemprop, kind, word, address, number, content }) => {
    switch (kind) {
      case 0:
        return `<meta${attributes({ itemprop, content: word })}>`;
      case 1:
        return `<link${attributes({ itemprop, href: address })}>`;
      case 2:
        return `<img${attributes({ itemprop, src: address })}>`;
      case 3:
        return `<a${attributes({ itemprop, href: address })}>${escaped(word)}</a>`;
      case 4:
        return `<data${attributes({ itemprop, value: number })}>${escaped(word)}</data>`;
      case 5:
        return `<meter${attributes({ itemprop, value: number })}>${escaped(word)}</meter>`;
      case 6:
        return `<time${attributes({ itemprop, datetime: `2024-03-0${number.length % 9}` })}>${escaped(word)}</time>`;
      case 7:
        return `<object${attributes({ itemprop, data: address })}></object>`;
      case 8:
        return `<span${attributes({ itemprop, content })}>${escaped(word)}</span>`;
      default:
        return `<div${attributes({ itemprop })}>${escaped(word)}<b>${escaped(word)}</b></div>`;
    }
  });

const { node } = fc.letrec<{ node: string; group: string; item: string }>((tie) => ({
  node: fc.oneof({ maxDepth: 4, depthSize: 'small' }, leaf, tie('group'), tie('item')),
  group: fc
    .record({ itemprop: fc.option(names, { nil: null }), children: fc.array(tie('node'), { maxLength: 3 }) })
    .map(({ itemprop, children }) => `<div${attributes({ itemprop })}>${children.join('')}</div>`),
  item: fc
    .record({
      itemprop: fc.option(oneName, { nil: null }),
      itemref: references,
      children: fc.array(tie('node'), { maxLength: 4 }),
      type: fc.constantFrom('Product', 'Offer', 'Place'),
      named: fc.boolean(),
    })
    .map(
      ({ itemprop, itemref, children, type, named }) =>
        `<div itemscope${attributes({ itemprop, itemref, itemtype: `https://schema.org/${type}`, itemid: named && itemprop === null ? 'urn:x:ID' : null })}>${children.join('')}</div>`,
    ),
}));

/** Groups outside all items that items refer to, each with an id; in no order of theirs. */
const pool = fc
  .array(
    fc.record({ id: someId, itemprop: fc.option(names, { nil: null }), children: fc.array(leaf, { maxLength: 3 }) }),
    { maxLength: 3 },
  )
  .map((groups) =>
    groups
      .map(({ id, itemprop, children }) => `<div${attributes({ id, itemprop })}>${children.join('')}</div>`)
      .join(''),
  );

const page = fc
  .record({
    first: pool,
    nodes: fc.array(node, { maxLength: 4 }),
    last: pool,
    base: fc.option(fc.constant('/root/'), { nil: null }),
  })
  .map(({ first, nodes, last, base }) => {
    let id = 0;
    const body = `${first}${nodes.join('')}${last}`.replaceAll('urn:x:ID', () => `urn:x:${id++}`);
    return `<!doctype html><html><head>${base ? `<base href="${base}">` : ''}</head><body>${body}</body></html>`;
  });

type Flat = { type: string[]; id: string | null; properties: [string, (string | number | Flat)[]][] };
const comparable = (value: string | number): string | number =>
  value !== '' && Number.isFinite(Number(value)) ? Number(value) : value;
const sorted = (values: (string | number | Flat)[]) =>
  [...values].sort((a, b) => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1));

function ofReference(item: Json): Flat {
  return {
    type: item.type ?? [],
    id: item.id ?? null,
    properties: Object.entries(item.properties)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, values]) => [
        name,
        sorted(values.map((value) => (typeof value === 'object' ? ofReference(value) : comparable(value)))),
      ]),
  };
}

function ofOurs(items: Item[], item: Item): Flat {
  const byName = new Map<string, (string | number | Flat)[]>();
  for (const [name, value] of item.properties) {
    const flat = typeof value === 'number' ? ofOurs(items, items[value]!) : comparable(value);
    byName.set(name, [...(byName.get(name) ?? []), flat]);
  }
  return {
    type: item.types,
    id: item.id,
    properties: [...byName].sort(([a], [b]) => (a < b ? -1 : 1)).map(([name, values]) => [name, sorted(values)]),
  };
}

const { DOMParser } = new JSDOM('', { url: BASE }).window;

function read(html: string): Item[] {
  const sight = lookAt(new DOMParser().parseFromString(html, 'text/html'));
  const textOf = function* (element: Element): Generator<void, string> {
    yield;
    return sight.textContent(element);
  };
  return atOnce(itemsOf(sight, atOnce(walk(sight)), textOf));
}

describe('microdata', () => {
  it('is read as an independent parser reads it', () => {
    let items = 0;
    fc.assert(
      fc.property(page, (html) => {
        const ours = read(html);
        const theirs = reference.toJson(html, { base: BASE, strict: true }).items;
        items += ours.length;
        expect(sorted(ours.filter(({ top }) => top).map((item) => ofOurs(ours, item)))).toEqual(
          sorted(theirs.map(ofReference)),
        );
      }),
      { numRuns: process.env.BEDPLATE_LONG ? 2000 : 200 },
    );
    // The comparison compared something.
    expect(items).toBeGreaterThan(100);
  });

  // From here on the HTML standard's own words, section Microdata (from memory, no copy at hand).
  it('sorts what itemref brings in tree order', () => {
    const items = read(
      '<p id="a" itemprop="x">1</p><div itemscope itemref="b a"><p itemprop="x">2</p></div><p id="b" itemprop="x">3</p>',
    );
    expect(items[0]!.properties).toEqual([
      ['x', '1'],
      ['x', '2'],
      ['x', '3'],
    ]);
  });

  it('takes the text of <time> without datetime, and nothing of <data> without value', () => {
    const [item] = read(
      '<div itemscope><time itemprop="t">noon</time><data itemprop="d">five</data><a itemprop="u">x</a><img itemprop="i" src="http://[">',
    );
    expect(item!.properties).toEqual([
      ['t', 'noon'],
      ['d', ''],
      ['u', ''],
      ['i', ''],
    ]);
  });

  it('lets the first element of an id be the one referred to, and each element count once', () => {
    const [item] = read('<div itemscope itemref="a a"></div><p id="a" itemprop="x">1</p><p id="a" itemprop="x">2</p>');
    expect(item!.properties).toEqual([['x', '1']]);
  });

  it('does not let an item be its own property', () => {
    const [item] = read('<div id="a" itemscope itemprop="self" itemref="a"><p itemprop="x">1</p></div>');
    expect(item!.properties).toEqual([['x', '1']]);
  });
});
