import fc from 'fast-check';
import type { Attribute } from '../../../src/pack/schema/attributes';
import type { Scheme } from '../../../src/pack/schema/serials';
import { id, localText, phrase, positive, share, text } from './parts';

/** What a pack's references may lead to, made before the references are. */
export interface Skeleton {
  own: string;
  attributes: Attribute[];
  families: string[];
  models: string[];
  types: string[];
  schemes: Scheme[];
  sources: string[];
  grades: string[];
}

const words = fc.array(phrase, { maxLength: 3 });
const common = {
  id,
  label: localText,
  explain: localText,
  where: localText,
  place: id,
  ask: localText,
  effort: fc.constantFrom('read', 'photo', 'visit'),
  trust: fc.record({ seller: share, eye: share }, { requiredKeys: [] }),
};

const values = fc
  .uniqueArray(fc.record({ id, label: localText, words }, { requiredKeys: ['id', 'label'] }), {
    minLength: 1,
    maxLength: 3,
    selector: (value) => value.id,
  })
  .chain((list) =>
    // Each lies within the one before or in none, so that there is no circle.
    fc.array(fc.boolean(), { minLength: list.length, maxLength: list.length }).map((inside) =>
      list.map((value, i) => ({
        ...value,
        ...(inside[i] && i > 0 ? { within: list[i - 1]!.id, excludes: [list[0]!.id] } : {}),
      })),
    ),
  );

const required = ['id', 'label', 'kind'] as const;
const attribute = fc.oneof(
  fc.record({ ...common, kind: fc.constant('choice'), values }, { requiredKeys: [...required, 'values'] }),
  fc.record({ ...common, kind: fc.constant('yes-no'), yes: words, no: words }, { requiredKeys: [...required] }),
  fc.record(
    { ...common, kind: fc.constant('measure'), unit: text, words, allowance: positive },
    { requiredKeys: [...required, 'unit'] },
  ),
) as fc.Arbitrary<Attribute>;

const affix = fc.stringMatching(/^[A-Z0-9]{0,3}$/);
const width = fc.integer({ min: 1, max: 15 });
const digits = fc.oneof(
  width,
  fc.tuple(width, width).map(([a, b]): [number, number] => (a < b ? [a, b] : [b, a])),
);

export const scheme: fc.Arbitrary<Scheme> = fc.record(
  { id, prefix: affix, digits, suffix: affix, maker: text, complete: fc.boolean() },
  { requiredKeys: ['id', 'prefix', 'digits'] },
);

const ids = fc.uniqueArray(id, { maxLength: 3 });
const selector = (entry: { id: string }): string => entry.id;

export const skeleton: fc.Arbitrary<Skeleton> = fc
  .record({
    own: id.filter((one) => one !== 'elsewhere'),
    attributes: fc.uniqueArray(attribute, { maxLength: 4, selector }),
    entries: fc.uniqueArray(id, { maxLength: 7 }),
    schemes: fc.uniqueArray(scheme, { maxLength: 2, selector }),
    sources: ids,
    grades: ids,
  })
  .map(({ entries, ...rest }) => ({
    ...rest,
    families: entries.slice(0, 2),
    models: entries.slice(2, 5),
    types: entries.slice(5),
  }));
