import fc from 'fast-check';

export type Json = null | boolean | number | string | Json[] | { [key: string]: Json };
type Holder = { [key: string | number]: Json };

/** Every place in the data: what holds it, and its key there. */
function places(data: Json): { holder: Holder; key: string | number }[] {
  if (typeof data !== 'object' || data === null) return [];
  const holder = data as Holder;
  const keys = Array.isArray(data) ? data.map((_, i) => i) : Object.keys(data);
  return keys.flatMap((key) => [{ holder, key }, ...places(holder[key]!)]);
}

const stranger: fc.Arbitrary<Json> = fc.oneof(
  fc.constantFrom<Json[]>(null, true, false, 0, -0.5, 1, 1.5, -3, 16, 1499, 1e21, 2 ** 53, 1e308),
  fc.constantFrom(
    '',
    'a',
    'A b',
    'é',
    'a'.repeat(80),
    'a'.repeat(81),
    'a'.repeat(162),
    'b'.repeat(2000),
    'b'.repeat(2001),
    '😀'.repeat(2000),
    '😀'.repeat(2001),
    'K',
    'GBP',
    'gbp',
    'en',
    'EN',
    'pt-BR',
    'a/b',
    'a/b/c',
    'yes-no',
    'choice',
    'always',
    'asked',
    '1954',
    '1954-13',
    '1954-02-28',
    '1954-2',
    'https://a',
    'http://a',
    'K-1/2.3 4',
    '-1',
  ),
  fc.constantFrom<Json[]>(
    [],
    {},
    [1],
    ['a'],
    ['a', 'B!'],
    [[]],
    [{}],
    [{ is: 1 }],
    [{ is: 1 }, 2],
    [1, 2],
    [4, 6],
    [0, 16],
    [1, 2, 3],
    ['1954', 1],
    { is: 1 },
    { is: [] },
    { is: 'a', when: {} },
    { from: 1 },
    { from: 'a' },
    { to: 1, up: 2 },
    { text: 'a' },
    { text: '' },
    { text: 'a', lang: 'x' },
    { en: 'a' },
    { English: 'a' },
    { 'x-a': 1 },
    { made: {} },
    { attribute: 'a' },
    { attribute: 'a', is: 'b' },
    { ageAtLeast: 0 },
    { madeUnder: 1 },
    { constructor: 'a' },
  ),
);

const newKey = fc.constantFrom<string[]>(
  'x-a',
  'x-',
  'X-a',
  'x',
  'id',
  'source',
  'constructor',
  'toString',
  '',
  'a/b',
  'A',
  'kind',
  'when',
  'é',
);

type Change = (place: { holder: Holder; key: string | number }) => void;

const change: fc.Arbitrary<Change> = fc.oneof(
  {
    weight: 4,
    arbitrary: stranger.map(
      (value): Change =>
        ({ holder, key }) => {
          holder[key] = value;
        },
    ),
  },
  {
    weight: 2,
    arbitrary: fc.constant<Change>(({ holder, key }) => {
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else delete holder[key];
    }),
  },
  {
    weight: 2,
    arbitrary: fc.tuple(newKey, stranger).map(
      ([name, value]): Change =>
        ({ holder, key }) => {
          const inner = holder[key];
          if (typeof inner === 'object' && inner !== null && !Array.isArray(inner)) inner[name] = value;
          else if (!Array.isArray(holder)) holder[name] = value;
        },
    ),
  },
  {
    weight: 1,
    arbitrary: newKey.map(
      (name): Change =>
        ({ holder, key }) => {
          if (Array.isArray(holder)) return;
          holder[name] = holder[key]!;
          delete holder[key];
        },
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constant<Change>(({ holder, key }) => {
      if (Array.isArray(holder)) holder.push(holder[Number(key)]!);
    }),
  },
);

const changes = fc.array(fc.tuple(fc.nat(), change), { minLength: 1, maxLength: 2 });

/** The same data with one or two things replaced, removed, added, renamed or doubled, wherever they stand. */
export function changed(of: fc.Arbitrary<unknown>): fc.Arbitrary<Json> {
  return fc.tuple(of, changes).map(([whole, all]) => {
    const data = JSON.parse(JSON.stringify(whole)) as Json;
    for (const [where, doTo] of all) {
      const there = places(data);
      const place = there[where % there.length];
      if (place) doTo(place);
    }
    return data;
  });
}
