import { describe, expect, it } from 'vitest';
import { cressiter, found } from '../support/demo';

const check = (text: string): string[] => found('name-name', cressiter(text));

describe('two models’ names for one thing', () => {
  it('exclude each other where both are said in so many words', () =>
    expect(check('This is a Wendelow.')).toEqual(['disproved: Cressiter | Wendelow']));

  it('two in a title are a question', () =>
    expect(
      found('name-name', { title: 'Grindlewade Cressiter Wendelow sewing machine', language: 'en', description: '' }),
    ).toEqual(['unproved: Cressiter | Wendelow']));

  it('take what it is also known as for a second one: the first is on sale', () => {
    const title = 'Grindlewade Cressiter, also known as the Wendelow';
    expect(found('name-name', { title, language: 'en', description: '' })).toEqual(['disproved: Cressiter | Wendelow']);
  });

  it.each([
    'Much like the Wendelow.',
    'The numbers of this and the Wendelow were stamped from one block.',
    'This is not a Wendelow.',
    'I also have a Wendelow.',
    'Sold next to the Wendelow in its day.',
    'This is a Cressiter.',
    'It may be a Wendelow.',
    'I had a heavier one before this one (a Wendelow, sold last year).',
    'Here it was called the Wendelow.',
    "It's the iron one, the Wendelow is alloy.",
    'It is pretty much a Wendelow with another badge.',
    'My Wendelow is the same underneath.',
    'No lamp on this, that’s the Wendelow.',
    'Someone said it must be a Wendelow, but that has a bobbin.',
    "I'd been told it was a Wendelow, the Wendelow is the small one.",
  ])('no second name for it: %s', (text) => expect(check(text)).toEqual([]));
});

describe('a maker who didn’t make that model', () => {
  it('is found in the title', () =>
    expect(found('name-name', { title: 'Ulversholt Cressiter', description: '', language: 'en' })).toEqual([
      'disproved: Ulversholt | Cressiter',
    ]));

  it.each(['Grindlewade Cressiter', 'Cressiter by Grindlewade, not Ulversholt'])('is not in: %s', (title) =>
    expect(found('name-name', { title, description: '', language: 'en' })).toEqual([]),
  );
});

describe('a line of machines that the model isn’t of', () => {
  it('is found in the title', () =>
    expect(found('name-name', { title: 'Grindlewade Fildercott Cressiter', description: '', language: 'en' })).toEqual([
      'disproved: Grindlewade Fildercott | Cressiter',
    ]));

  it('is found where the text says in so many words what it is', () =>
    expect(check('This is a Fildercott.')).toEqual(['disproved: Fildercott | Cressiter']));

  it.each([
    'Fits the Fildercott as well.',
    'Looks like a Fildercott.',
    'It is not a Fildercott.',
    'It is a Grindlewade.',
  ])('is none: %s', (text) => expect(check(text)).toEqual([]));
});
