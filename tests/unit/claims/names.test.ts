import { describe, expect, it } from 'vitest';
import type { Draft } from '../../../src/listing/types';
import { knowing } from '../pack/support/knowledge';
import { smallPack } from '../pack/support/packs';
import { readingOf, saying } from './support/reading';

/** The models and families named, as the pack writes them; ~ for a misspelling. */
const names = (draft: Draft): string[] =>
  readingOf(draft)
    .names.filter(({ of }) => !('maker' in of))
    .map(({ name, misspelt }) => (misspelt ? `~${name}` : name));
const inTitle = (title: string): string[] => names({ title, description: '' });

describe('numbers and letters that are names only beside their maker', () => {
  it.each([
    ['Ulversholt 41 sewing machine', 'Ulversholt,41'],
    ['Ulversholt model 41', 'Ulversholt,41'],
    ['Ulversholt treadle sewing machine 41', 'Ulversholt,41'],
    ['Ulversholt Q 41', 'Ulversholt Q 41'],
  ])('%s', (title, expected) => expect(inTitle(title).join()).toBe(expected));

  it.each(['Sewing machine, 41 years old', 'Sewing machine, 41 pounds', 'Grindlewade 41 sewing machine'])(
    'not in: %s',
    (title) => expect(inTitle(title).filter((name) => /41/.test(name))).toEqual([]),
  );
});

describe('a letter with a number', () => {
  it('is a name wherever its maker is named at all', () => {
    expect(names({ title: 'Q 41 sewing machine', description: 'By Ulversholt.' })).toEqual(['Q 41', 'Ulversholt']);
    expect(inTitle('Q 41 sewing machine')).toEqual([]);
  });
});

describe('misspelt names', () => {
  it.each([
    ['Cresiter sewing machine', '~Cressiter'],
    ['Haddercomb sewing machine', '~Haddercombe'],
    ['Wendlow', '~Wendelow'],
    ['Bodranock sewing machine', '~Bodrannock'],
  ])('are read in a title: %s', (title, expected) => expect(inTitle(title)).toEqual([expected]));

  it.each([
    'Cross stitch sewing machine',
    'Window sewing machine',
    'Windowless room, sewing machine',
    'Cr sewing machine',
  ])('ordinary words are none: %s', (title) => expect(inTitle(title)).toEqual([]));

  it('of a longer name, too', () => expect(inTitle('Ulversholdt Q 41 sewing machine')).toContain('~Ulversholt Q 41'));

  it('in the text only right before the thing, and capitalised', () => {
    const misspelt = (description: string): string[] =>
      names({ title: 'Sewing machine', description }).filter((name) => name.startsWith('~'));
    expect(misspelt('A Cresiter sewing machine.')).toEqual(['~Cressiter']);
    expect(misspelt('It came from Cresiter by train.')).toEqual([]);
    expect(misspelt('a cresiter sewing machine.')).toEqual([]);
  });
});

describe('what the advert says of a name', () => {
  const identity = (text: string): boolean[] =>
    saying(text)
      .names.filter(({ field, of }) => field === 'description' && 'model' in of)
      .map((name) => name.identity);

  it.each(['This is a Wendelow.', 'It is the Wendelow.', 'Model: Wendelow', 'My Wendelow has served well.'])(
    'it is its name: %s',
    (text) => expect(identity(text)).toEqual([true]),
  );
  it.each(['Different from the Wendelow.', 'It sews like a Wendelow.', 'The Wendelow is lighter.'])(
    'it is only spoken of: %s',
    (text) => expect(identity(text)).toEqual([false]),
  );
});

describe('what is on offer is called by its name', () => {
  const claims = (text: string): string[] =>
    saying(text).names.flatMap(({ field, of, name, identity, subject }) =>
      field === 'description' && 'model' in of ? [`${name} ${identity ? 'is it' : 'is named'}, ${subject}`] : [],
    );

  it.each([
    'Offering my Wendelow.',
    'For sale is a Wendelow.',
    'What you see is a Wendelow.',
    "For sale my mother's Wendelow.",
    "Selling my gran's Wendelow.",
    'It is the Wendelow.',
    'Zu verkaufen: Wendelow.',
    'Angeboten wird eine Wendelow.',
    'Es handelt sich um eine Wendelow.',
    'À vendre : ma Wendelow.',
    "Il s'agit d'une Wendelow.",
    'Nous proposons une Wendelow.',
    'Vend Wendelow.',
    'Bonjour, je vend ma Wendelow.',
  ])('%s', (text) => expect(claims(text)).toEqual(['Wendelow is it, this']));

  it.each([
    ['I am selling a Wendelow too.', 'other'],
    ['He had a Wendelow as well, promised to a niece.', 'other'],
    ["A clerk's; when the Wendelow came into the house she tried it.", 'this'],
    ['For this, but the Wendelow has the free arm.', 'this'],
    ["It is the Wendelow's works.", 'this'],
    ['My Wendelow weighs 18 kg, this one 14.', 'this'],
    ['Ma Wendelow pèse 18 kg, celle-ci 14.', 'this'],
    ['Ma Wendelow pèse 18 kg, celle ci 14.', 'this'],
    ['Nous proposons aussi une Wendelow.', 'this'],
    ['Un voisin vend une Wendelow.', 'this'],
    ['Auch biete ich eine Wendelow an.', 'this'],
    ['Also for sale is a Wendelow.', 'other'],
    ["It came with my mother's Wendelow.", 'other'],
  ])('not by: %s', (text, subject) => expect(claims(text)).toEqual([`Wendelow is named, ${subject}`]));

  it('whoever has named it speaks of another one as his', () => {
    expect(claims('A Cressiter. My Wendelow weighs more.')).toEqual([
      'Cressiter is named, this',
      'Wendelow is named, this',
    ]);
    expect(claims('A Wendelow. My Wendelow weighs 14 kg.')).toEqual([
      'Wendelow is named, this',
      'Wendelow is it, this',
    ]);
  });
});

describe('a word that is a name only beside its maker', () => {
  const known = knowing(
    smallPack({
      families: [
        { id: 'f', label: 'Ottermere', names: ['Ottermere'], maker: 'Ottermere' },
        { id: 'g', label: 'Fenwarden', names: ['Fenwarden'], maker: 'Fenwarden' },
      ],
      models: [
        {
          id: 'm',
          label: 'Ottermere Sedge',
          names: ['Ottermere Sedge', { text: 'Sedge', weak: true }],
          maker: 'Ottermere',
        },
      ],
    }),
  );
  const called = (title: string): string =>
    readingOf({ title, description: '' }, known)
      .names.filter(({ of }) => 'model' in of)
      .map(({ name }) => name)
      .join();

  it('is one behind another maker’s too, which then is the mistake', () =>
    expect(called('Fenwarden Sedge sewing machine')).toBe('Sedge'));
  it.each(['Old Sedge sewing machine', 'Fenwarden sedge green', 'Fenwarden machine, Sedge green'])(
    'not in: %s',
    (title) => expect(called(title)).toBe(''),
  );
});
