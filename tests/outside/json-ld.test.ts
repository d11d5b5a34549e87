import fc from 'fast-check';
import { JsonLdParser } from 'jsonld-streaming-parser';
import { describe, expect, it } from 'vitest';
import { fromJsonLd } from '../../src/listing/sources/json-ld';
import type { Thing } from '../../src/listing/structured/things';
import { type Described, describedByQuads, describedByThings, quadsFrom } from './quads';

/**
 * Our JSON-LD reader against jsonld-streaming-parser 5.0.1 of the npm registry, an independent implementation that passes
 * the W3C's JSON-LD 1.1 test suite by its own account, over generated documents. Where the two differ by intent:
 *
 * - We fetch no context. Names without one are taken for schema.org's, which is what pages mean that name it; the
 *   reference gets the like by `@vocab`. Its context says too that `type` and `id` are keywords; written out here.
 * - Names and ids that a block's own context explains are understood where the context stands at the top.
 * - Identifiers stay as they are written; generated absolute.
 * - Lists (`@list`) are plain values to us, chains of nodes in triples. `@reverse`, `@index` and `@nest` are not read. Not
 *   generated.
 * - Nodes in a `@set` inside another node's array lose what they hang on in the reference. Sets of texts only.
 * - A node that is a value of another but stands at the top as well is a thing of the page to us, and for the comparison
 *   taken out where another one has it as a value.
 */
const NAMES = ['name', 'price', 'image', 'offers', 'brand', 'url', 'itemCondition', 'priceSpecification', 'seller'];

const CONTEXTS: unknown[] = [
  { '@vocab': 'https://schema.org/', type: '@type', id: '@id' },
  { '@vocab': 'https://schema.org/', schema: 'https://schema.org/' },
  {
    '@vocab': 'https://schema.org/',
    schema: 'https://schema.org/',
    label: 'schema:name',
    cost: { '@id': 'https://schema.org/price' },
    kind: '@type',
  },
  [{ '@vocab': 'https://schema.org/' }, { schema: 'https://schema.org/' }],
];

const word = fc.constantFrom('iron', 'Öl & Tuch', '<b>', '"4"', '', ' x ', '…');
const plain = fc.oneof(
  word,
  fc.constantFrom(45, 45.5, 0, 120, true, false),
  word.map((value) => ({ '@value': value })),
  word.map((value) => ({ '@value': value, '@language': 'de' })),
  fc.constant({ '@value': '45.00', '@type': 'https://schema.org/Number' }),
);
const addresses = ['https://market.example/1', 'https://market.example/2', 'https://else.example/#x', '_:b0', '_:b1'];
const reference = fc.constantFrom(...addresses).map((id) => ({ '@id': id }));
const several = <T>(one: fc.Arbitrary<T>) => fc.oneof(one, fc.array(one, { maxLength: 3 }));
const set = fc.array(plain, { maxLength: 2 }).map((all) => ({ '@set': all }));

const { node } = fc.letrec<{ node: Record<string, unknown> }>((tie) => {
  const value = fc.oneof({ maxDepth: 3, depthSize: 'small' }, plain, reference, tie('node'));
  return {
    node: fc.record(
      {
        '@type': fc.constantFrom<unknown>('Product', 'Offer', ['Product', 'Car'], 'https://schema.org/Place'),
        '@id': fc.constantFrom(...addresses),
        name: fc.oneof(several(plain), set),
        price: several(plain),
        'https://schema.org/url': several(plain),
        image: several(reference),
        offers: several(value),
        brand: several(value),
        seller: several(value),
      },
      { requiredKeys: ['@type'] },
    ),
  };
});

const block = fc
  .record({ nodes: fc.array(node, { minLength: 1, maxLength: 3 }), context: fc.nat(), form: fc.nat({ max: 2 }) })
  .map(({ nodes, context, form }) => {
    const at = CONTEXTS[context % CONTEXTS.length];
    const top =
      form === 0
        ? { '@context': at, '@graph': nodes }
        : form === 1
          ? nodes.map((its) => ({ '@context': at, ...its }))
          : { '@context': at, ...nodes[0] };
    return renamed(JSON.stringify(top), at);
  });

/** The names that the block's context gives. */
function renamed(json: string, context: unknown): string {
  const text = JSON.stringify(context);
  const body = (from: string, to: string, all: string) => all.replaceAll(`"${from}":`, `"${to}":`);
  let out = json.replaceAll(text, '"CONTEXT"');
  if (text.includes('"label"')) out = body('@type', 'kind', body('price', 'cost', body('name', 'label', out)));
  else if (text.includes('"id"')) out = body('@id', 'id', out);
  else out = body('brand', 'schema:brand', out);
  return out.replaceAll('"CONTEXT"', text);
}

function ours(json: string): Described[] {
  const things = fromJsonLd([json]);
  const inner = new Set<Thing>();
  const seen = new Set<Thing>();
  const waiting = [...things];
  for (let thing = waiting.pop(); thing; thing = waiting.pop()) {
    if (seen.has(thing)) continue;
    seen.add(thing);
    for (const value of NAMES.flatMap((name) => thing!.get(name))) {
      if (typeof value === 'string') continue;
      if (value !== thing) inner.add(value);
      waiting.push(value);
    }
  }
  return describedByThings(
    things.filter((thing) => !inner.has(thing)),
    NAMES,
  );
}

const theirs = async (json: string): Promise<Described[]> =>
  describedByQuads(await quadsFrom(new JsonLdParser({ baseIRI: 'https://market.example/' }), json));

describe('JSON-LD', () => {
  it('is read as an independent parser reads it', async () => {
    let things = 0;
    await fc.assert(
      fc.asyncProperty(block, async (json) => {
        const read = ours(json);
        things += read.length;
        expect(read).toEqual(await theirs(json));
      }),
      { numRuns: process.env.BEDPLATE_LONG ? 1000 : 100 },
    );
    // The comparison compared something.
    expect(things).toBeGreaterThan(20);
  }, 120_000);
});
