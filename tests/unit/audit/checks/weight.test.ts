import { describe, expect, it } from 'vitest';
import { cressiter, findingsOf, found } from '../support/demo';

/** A Cressiter's head weighs 14.1 to 14.9 kg; the case adds up to 4. */
const check = (text: string): string[] => found('weight', cressiter(text));

describe('stated weights', () => {
  it.each([
    ['It weighs 9 kg.', 'disproved: 9 kg'],
    ['It weighs 20 lb.', 'disproved: 20 lb'],
    ['Quite light, I make it 9 kg.', 'disproved: 9 kg'],
    ['Surprisingly manageable at 9 kg.', 'disproved: 9 kg'],
    ['It weighs 11 kg in its case.', 'disproved: 11 kg'],
    ['Weighs 29 kg.', 'disproved: 29 kg'],
  ])('too far off: %s', (text, expected) => expect(check(text)).toEqual([expected]));

  it.each([
    ['It weighs 14.5 kg.', 'agrees: 14.5 kg'],
    ['It weighs 32 lb.', 'agrees: 32 lb'],
    ['It weighs about 13 kg.', 'agrees: 13 kg'],
  ])('within a scale’s error: %s', (text, expected) => expect(check(text)).toEqual([expected]));

  it.each(['Canette horizontale, fonte, 14,5 kg. Elle coud.', 'canette horizontale, fonte, 14,5 kg. elle coud'])(
    'in a list of what it is, whatever part that is about: %s',
    (description) =>
      expect(found('weight', { title: 'Grindlewade Cressiter', description, language: 'fr' })).toEqual([
        'agrees: 14,5 kg',
      ]),
  );
  it('not of the part that a list opens with', () => expect(check('Case, wood, 14.5 kg.')).toEqual([]));
  it('nor where the list numbers what is on sale', () =>
    expect(check('1) Cressiter, iron. £40.\n2) A treadle table in oak, no machine on it, 24 kg. £30.')).toEqual([]));

  it('a little too much may be the case, where one is spoken of: a question', () => {
    expect(check('It weighs 18 kg. The case is split.')).toEqual(['unproved: 18 kg']);
    expect(check('It weighs 18 kg.')).toEqual(['disproved: 18 kg']);
  });

  it.each([
    'It weighs 18 kg in its case.',
    'The parcel weighs 9 kg.',
    'Took a 400 g felt.',
    'Stood under a toolbox, 55 kg in all.',
    'The case weighs 4 kg.',
    'Sews through 9 kg of denim.',
    'My Wendelow weighs 9 kg.',
    'It may weigh 9 kg.',
  ])('is not held against it: %s', (text) =>
    expect(check(text).filter((line) => !line.startsWith('agrees'))).toEqual([]),
  );
});

describe('the same said in several places', () => {
  it('is one finding, with every place', () => {
    const draft = { title: 'Grindlewade Cressiter, lightweight, 9 kg', language: 'en' };
    const description = 'A lightweight machine. It weighs 9 kg.';
    expect(found('weight', { ...draft, description })).toEqual([
      'disproved: 9 kg | 9 kg',
      'disproved: lightweight | lightweight',
    ]);
  });
});

describe('words that limit the weight', () => {
  it('don’t hold of one heavier', () => expect(check('Lightweight.')).toEqual(['disproved: Lightweight']));
  it('hold of one lighter', () =>
    expect(
      found('weight', { title: 'Grindlewade Haddercombe', description: 'Lightweight machine.', language: 'en' }),
    ).toEqual(['agrees: Lightweight']));
  it.each(['Not lightweight.', 'Suits lightweight fabrics.', 'Lighter than it looks.'])('say nothing: %s', (text) =>
    expect(check(text)).toEqual([]),
  );
});

describe('weights that hold for some numbers only', () => {
  /** One block of the Q 41 has an aluminium body: 9.8 to 10.5 kg; all others weigh 13.6 to 14.4. */
  const q41 = (description: string): string[] =>
    found('weight', { title: 'Ulversholt Q 41 sewing machine', description, language: 'en' });
  it('the serial decides', () => {
    expect(q41('It weighs 10 kg. Serial number 1425000 N.')).toEqual(['agrees: 10 kg']);
    expect(q41('It weighs 10 kg. Serial number 1415000 N.')).toEqual(['disproved: 10 kg']);
  });
  it('without it either may be right', () => expect(q41('It weighs 10 kg.')).toEqual([]));
});

describe('lengths', () => {
  const ostlewick = (description: string): string[] =>
    found('claim-fact', { title: 'Grindlewade Ostlewick sewing machine', description, language: 'en' });
  it('are held against their own attribute, by its words', () => {
    expect(ostlewick('Bobbin diameter 25 mm.')).toEqual(['disproved: 25 mm']);
    expect(ostlewick('Bobbin diameter 20.4 mm.')).toEqual(['agrees: 20.4 mm']);
    expect(ostlewick('The bed is 25 mm thick.')).toEqual([]);
  });
});

describe('two weights', () => {
  it.each([
    ['It weighs 9 kg. It weighs 14.5 kg.', '9 kg', '14.5 kg'],
    ['Weighs 29 kg. It weighs 32 lb.', '29 kg', '32 lb'],
    ['It weighs 9 kg. It weighs about 13 kg.', '9 kg', '13 kg'],
  ])('of which one fits are a question: %s', (text, wrong, right) => {
    expect(check(text)).toEqual([`unproved: ${wrong}`, `agrees: ${right}`]);
    const [asked] = findingsOf('weight', cressiter(text));
    expect(asked!.text).toContain(`both “${wrong}” and “${right}”`);
  });

  it.each([
    'It weighs 9 kg. The case weighs 14.5 kg.',
    'It weighs 9 kg. It weighs over 14 kg.',
    'It weighs 9 kg. It weighs 14.5 kg in its case.',
    'It weighs 9 kg. It may weigh 14.5 kg.',
    'It weighs 9 kg. It weighs 20 kg.',
  ])('of which none is the machine’s alone and fits are not: %s', (text) =>
    expect(check(text)).toContain('disproved: 9 kg'),
  );
});
