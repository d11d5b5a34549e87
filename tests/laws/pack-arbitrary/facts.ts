import fc from 'fast-check';
import type { Attribute } from '../../../src/pack/schema/attributes';
import type { Facts, FactValue, When } from '../../../src/pack/schema/models';
import { id, localText, maybe, number, range, text, yearSpan } from './parts';
import { numbersOf } from './runs';
import type { Skeleton } from './skeleton';

export function fitting(attribute: Attribute): fc.Arbitrary<FactValue> {
  if (attribute.kind === 'yes-no') return fc.boolean();
  if (attribute.kind === 'measure') return fc.oneof(number, range);
  const ids = attribute.values.map((value) => value.id);
  return fc.oneof(fc.constantFrom(...ids), fc.array(fc.constantFrom(...ids), { minLength: 1, maxLength: 3 }));
}

export function when({ schemes }: Skeleton): fc.Arbitrary<When> {
  const serials = schemes.map((scheme) =>
    numbersOf(scheme).map(([first, last]) => ({ scheme: scheme.id, first, last })),
  );
  return fc.record(
    {
      made: yearSpan,
      places: fc.array(text, { maxLength: 2 }),
      ...(serials.length > 0 ? { serials: fc.array(fc.oneof(...serials), { maxLength: 2 }) } : {}),
    },
    { requiredKeys: [] },
  );
}

function factOf(attribute: Attribute, skeleton: Skeleton): fc.Arbitrary<Facts[string]> {
  const parts = {
    is: fitting(attribute),
    when: when(skeleton),
    holds: fc.constantFrom('always' as const, 'usually' as const),
    note: localText,
    ...maybe('source', skeleton.sources),
  };
  const full = fc.record(parts, { requiredKeys: ['is'] });
  return fc.oneof(fitting(attribute), full, fc.array(full, { minLength: 1, maxLength: 3 })) as fc.Arbitrary<
    Facts[string]
  >;
}

/** Facts of some of the pack's attributes, and now and then of another pack's. */
export function facts(skeleton: Skeleton): fc.Arbitrary<Facts> {
  const own = Object.fromEntries(skeleton.attributes.map((attribute) => [attribute.id, factOf(attribute, skeleton)]));
  const foreign = fc.dictionary(
    id.map((one) => `elsewhere/${one}`),
    fc.oneof(number, fc.boolean(), id, range),
    { maxKeys: 1 },
  );
  return fc
    .tuple(fc.record(own, { requiredKeys: [], noNullPrototype: true }), foreign)
    .map(([here, there]) => ({ ...here, ...there }) as Facts);
}
