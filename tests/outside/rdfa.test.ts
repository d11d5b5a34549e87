import fc from 'fast-check';
import { JSDOM } from 'jsdom';
import { RdfaParser } from 'rdfa-streaming-parser';
import { describe, expect, it } from 'vitest';
import { atOnce } from '../../src/listing/slices';
import { fromRdfa } from '../../src/listing/sources/rdfa';
import { rdfaOf } from '../../src/listing/visit/rdfa';
import { lookAt } from '../../src/listing/visit/sight';
import { type Described, describedByQuads, describedByThings, quadsFrom } from './quads';

/**
 * Our RDFa reader against rdfa-streaming-parser 3.0.2 of the npm registry, an independent implementation that passes the
 * W3C's RDFa 1.1 test suite by its own account, over generated documents. Where the two differ by intent:
 *
 * - A link without RDFa attributes makes its address the subject of what is inside it (RDFa Core 1.1, section 7.5,
 *   step 5.2). Authors of <a href><span property="name"> mean the thing around; we read what they mean. Not generated.
 * - A vocabulary without a slash at its end gets one from us. Not generated.
 * - That the page uses a vocabulary is a triple of its own (section 9), of no use to us. Left out of the comparison.
 * - The text of a property inside the text of another one is text of both (section 7.5, step 11); the reference gives it
 *   to the inner one alone. Not generated.
 * - Lists (`inlist`) and XML literals are plain values to us. Not generated.
 */
const BASE = 'https://market.example/shelf/page';
const NAMES = ['name', 'price', 'image', 'offers', 'brand', 'url', 'itemCondition', 'hasPriceSpecification', 'seller'];

const escaped = (text: string) =>
  text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
const attributes = (all: Record<string, string | null>) =>
  Object.entries(all)
    .map(([name, value]) => (value === null ? '' : ` ${name}="${escaped(value)}"`))
    .join('');
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null });

const word = fc.constantFrom('iron', 'Öl & Tuch', '<b>', '"4"', '12', '45.00', 'x');
const property = fc.constantFrom(
  'name',
  'schema:price',
  'price',
  'name url',
  'offers',
  's:brand',
  'https://schema.org/seller',
  'unknown:x/name',
  'itemCondition',
);
const relation = fc.constantFrom('schema:offers', 'gr:hasPriceSpecification', 's:brand schema:seller');
const type = fc.constantFrom('Product', 'schema:Offer', 's:Thing', 'https://schema.org/Place', 'Product schema:Car');
const plainAddress = fc.constantFrom('/a.jpg', '#it', 'https://else.example/', '?q');
const address = fc.oneof(plainAddress, fc.constantFrom('_:b1', '[schema:UsedCondition]', 'schema:Used'));
const context = fc.constantFrom<Record<string, string>>(
  {},
  {},
  {},
  { vocab: 'https://schema.org/' },
  { prefix: 's: https://schema.org/ gr: http://purl.org/goodrelations/v1#' },
  { vocab: '' },
  { 'xmlns:s': 'https://schema.org/' },
);

const leaf = fc
  .record({
    property,
    kind: fc.integer({ min: 0, max: 5 }),
    word,
    address: plainAddress,
    typed: maybe(type),
    about: maybe(address),
  })
  .map(({ property, kind, word, address, typed, about }) => {
    switch (kind) {
      case 0:
        return `<meta${attributes({ property, content: word })}>`;
      case 1:
        return `<img${attributes({ property, src: address })}>`;
      case 2:
        return `<a${attributes({ property, href: address, typeof: typed })}>${escaped(word)}</a>`;
      case 3:
        return `<span${attributes({ property, content: word, about })}>other</span>`;
      case 4:
        return `<time${attributes({ property, datetime: '2024-03-02' })}>${escaped(word)}</time>`;
      default:
        return `<span${attributes({ property, about })}>${escaped(word)} <b>${escaped(word)}</b></span>`;
    }
  });

const { node } = fc.letrec<{ node: string; group: string }>((tie) => ({
  node: fc.oneof({ maxDepth: 4, depthSize: 'small' }, leaf, tie('group')),
  group: fc
    .record({
      property: maybe(property),
      rel: maybe(relation),
      rev: fc.oneof({ weight: 5, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: relation }),
      typeof: maybe(type),
      about: fc.oneof({ weight: 4, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: address }),
      resource: fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, { weight: 1, arbitrary: address }),
      context,
      children: fc.array(tie('node'), { maxLength: 3 }),
    })
    .map(({ children, context, property, ...own }) => {
      const isThing = own.about === null && (own.typeof !== null || (own.resource !== null && !own.rel && !own.rev));
      return `<div${attributes({ property: isThing ? property : null, ...own, ...context })}>${children.join(' ')}</div>`;
    }),
}));

const page = fc
  .record({ nodes: fc.array(node, { minLength: 1, maxLength: 4 }), vocab: maybe(fc.constant('https://schema.org/')) })
  .map(
    ({ nodes, vocab }) =>
      `<!DOCTYPE html><html><head><title>x</title></head><body><div${attributes({ vocab, prefix: 's: https://schema.org/' })}>${nodes.join('')}</div></body></html>`,
  );

const { DOMParser } = new JSDOM('', { url: BASE }).window;

function ours(html: string): Described[] {
  const sight = lookAt(new DOMParser().parseFromString(html, 'text/html'));
  const textOf = function* (element: Element): Generator<void, string> {
    yield;
    return sight.textContent(element);
  };
  const marks = atOnce(rdfaOf(sight, textOf));
  return describedByThings(fromRdfa(marks, BASE), NAMES);
}

async function theirs(html: string): Promise<Described[]> {
  const quads = await quadsFrom(new RdfaParser({ baseIRI: BASE, contentType: 'text/html' }), html);
  return describedByQuads(quads.filter(({ predicate }) => !predicate.value.endsWith('#usesVocabulary')));
}

describe('RDFa', () => {
  it('is read as an independent parser reads it', async () => {
    let things = 0;
    await fc.assert(
      fc.asyncProperty(page, async (html) => {
        const read = ours(html);
        things += read.length;
        expect(read).toEqual(await theirs(html));
      }),
      // A generated page holds a thing in one case of three: so many that the count below can't fail by chance.
      { numRuns: process.env.BEDPLATE_LONG ? 1000 : 400 },
    );
    // The comparison compared something.
    expect(things).toBeGreaterThan(20);
  }, 120_000);
});
