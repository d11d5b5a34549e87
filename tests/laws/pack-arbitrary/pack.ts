import fc from 'fast-check';
import type { Pack } from '../../../src/pack/schema/index';
import { facts, fitting, when } from './facts';
import {
  currency,
  date,
  id,
  localText,
  maybe,
  number,
  phrase,
  positive,
  refTo,
  share,
  text,
  year,
  yearSpan,
} from './parts';
import { serials } from './runs';
import { type Skeleton, skeleton } from './skeleton';

const words = fc.array(phrase, { maxLength: 3 });
const someWords = fc.array(phrase, { minLength: 1, maxLength: 3 });

function about({ own, sources }: Skeleton) {
  const cited = fc.oneof(
    text,
    fc.record(
      { text, url: fc.constant('https://example.invalid/a'), date, common: fc.boolean() },
      { requiredKeys: ['text'] },
    ),
  );
  return fc.record(
    {
      id: fc.constant(own),
      title: localText,
      edition: fc.integer({ min: 1 }),
      licence: text,
      language: fc.constantFrom('en', 'de', 'pt-BR'),
      currency,
      covers: fc.record(
        { thing: localText, words: someWords, parts: words, not: words },
        { requiredKeys: ['thing', 'words'] },
      ),
      sources: fc.record(Object.fromEntries(sources.map((one) => [one, cited])), { noNullPrototype: true }),
      extends: fc.constant('elsewhere'),
      demo: fc.boolean(),
      expires: date,
      note: localText,
    },
    { requiredKeys: ['id', 'title', 'edition', 'licence', 'language', 'covers', 'sources'] },
  );
}

function familyOf(one: string, bones: Skeleton) {
  return fc.record(
    {
      id: fc.constant(one),
      label: text,
      names: words,
      maker: text,
      facts: facts(bones),
      necessary: facts(bones),
      ...maybe('source', bones.sources),
    },
    { requiredKeys: ['id', 'label', 'names'] },
  );
}

function modelOf(one: string, bones: Skeleton) {
  const { own, sources } = bones;
  const model = refTo([...bones.models, ...bones.types], own);
  const variant = fc.record(
    { when: when(bones), facts: facts(bones), label: localText },
    { requiredKeys: ['when', 'facts'] },
  );
  const named = fc.record({ text, lang: fc.constantFrom('en', 'de'), weak: fc.boolean() }, { requiredKeys: ['text'] });
  return fc.record(
    {
      id: fc.constant(one),
      label: text,
      names: fc.array(fc.oneof(text, named), { maxLength: 3 }),
      maker: text,
      family: refTo(bones.families, own),
      type: model,
      made: yearSpan,
      places: fc.array(text, { maxLength: 2 }),
      number: fc.integer({ min: 1 }),
      survival: share,
      facts: facts(bones),
      variants: fc.array(variant, { maxLength: 2 }).map((list) => list.map((part, i) => ({ id: `v${i}`, ...part }))),
      mistakenFor: fc.array(fc.record({ model, rate: share }), { maxLength: 2 }),
      launchPrice: fc.record({ amount: positive, currency, year }),
      batches: fc.array(fc.record({ size: fc.integer(), date }, { requiredKeys: ['size'] }), { maxLength: 2 }),
      ...maybe('source', sources),
    },
    { requiredKeys: ['id', 'label', 'names'] },
  );
}

function wording(bones: Skeleton) {
  const ofAttribute = bones.attributes.map((attribute) =>
    fc.record({ attribute: fc.constant(attribute.id), is: fitting(attribute) }),
  );
  const limits = bones.attributes
    .filter((attribute) => attribute.kind === 'measure')
    .map((attribute) => fc.record({ attribute: fc.constant(attribute.id), atMost: number }));
  const means = fc.oneof(
    ...ofAttribute,
    ...limits,
    fc.record({ made: yearSpan }),
    fc.record({ ageAtLeast: positive }),
    fc.record({ madeUnder: positive }),
  );
  return fc.record(
    {
      id,
      words: someWords,
      means,
      use: fc.constantFrom('firm', 'loose'),
      mind: localText,
      never: localText,
      unless: words,
      ...maybe('source', bones.sources),
    },
    { requiredKeys: ['id', 'words'] },
  );
}

function prices(bones: Skeleton) {
  const model = refTo([...bones.models, ...bones.types], bones.own);
  const where = { model, currency, date, ...maybe('grade', bones.grades), ...maybe('source', bones.sources) };
  const band = fc
    .tuple(
      fc.record(
        { ...where, weight: positive, kind: fc.constantFrom('asked', 'paid') },
        { requiredKeys: ['model', 'currency', 'date'] },
      ),
      fc.uniqueArray(positive, { minLength: 3, maxLength: 3 }),
      fc.boolean(),
    )
    .map(([rest, amounts, withMid]) => {
      const [low, mid, high] = amounts.sort((a, b) => a - b) as [number, number, number];
      return { ...rest, low, high, ...(withMid ? { mid } : {}) };
    });
  const observation = fc.record(
    { ...where, kind: fc.constantFrom('asked', 'paid'), amount: positive, complete: fc.boolean() },
    { requiredKeys: ['model', 'currency', 'date', 'kind', 'amount'] },
  );
  return fc.record(
    {
      grades: fc.tuple(
        ...bones.grades.map((one) =>
          fc.record({ id: fc.constant(one), label: localText, words }, { requiredKeys: ['id', 'label'] }),
        ),
      ),
      bands: fc.array(band, { maxLength: 3 }),
      observations: fc.array(observation, { maxLength: 3 }),
      rates: fc.array(fc.record({ from: currency, to: currency, date, rate: positive }), { maxLength: 2 }),
    },
    { requiredKeys: ['grades'] },
  );
}

function caution(bones: Skeleton) {
  const models = fc.array(refTo([...bones.models, ...bones.types], bones.own), { maxLength: 2 });
  return fc.record({ id, text: localText, words, models }, { requiredKeys: ['id', 'text'] });
}

function photograph(bones: Skeleton) {
  const settles = fc.array(
    refTo(
      bones.attributes.map(({ id }) => id),
      bones.own,
    ),
    { maxLength: 2 },
  );
  return fc.record(
    {
      id,
      label: localText,
      tells: localText,
      ask: localText,
      settles,
      shown: words,
      ...maybe('source', bones.sources),
    },
    { requiredKeys: ['id', 'label', 'tells', 'ask'] },
  );
}

function term(bones: Skeleton) {
  return fc.record(
    { id, label: localText, explain: localText, ...maybe('source', bones.sources) },
    { requiredKeys: ['id', 'label', 'explain'] },
  );
}

const selector = (entry: { id: string }): string => entry.id;

/** Packs in order: every reference leads somewhere, every value fits, every span and band runs forward. */
export const pack: fc.Arbitrary<Pack> = skeleton.chain((bones) =>
  fc.record(
    {
      schema: fc.constant(1),
      about: about(bones),
      attributes: fc.constant(bones.attributes),
      families: fc.tuple(...bones.families.map((one) => familyOf(one, bones))),
      models: fc.tuple(...bones.models.map((one) => modelOf(one, bones))),
      types: fc.tuple(...bones.types.map((one) => modelOf(one, bones))),
      serials: serials(bones),
      wording: fc.uniqueArray(wording(bones), { maxLength: 3, selector }),
      prices: prices(bones),
      cautions: fc.uniqueArray(caution(bones), { maxLength: 2, selector }),
      photographs: fc.uniqueArray(photograph(bones), { maxLength: 2, selector }),
      terms: fc.uniqueArray(term(bones), { maxLength: 2, selector }),
      // A key that could reach a prototype is refused anywhere, also among other tools' own.
      'x-tool': fc.jsonValue({ maxDepth: 2 }).filter((value) => !JSON.stringify(value).includes('"__proto__"')),
    },
    // What others refer to is there; the rest may be left out.
    { requiredKeys: ['schema', 'about', 'attributes', 'families', 'models', 'types', 'serials', 'prices'] },
  ),
) as fc.Arbitrary<Pack>;
