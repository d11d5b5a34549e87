import { describe, expect, it } from 'vitest';
import { found } from '../support/demo';

const check = (title: string, description = ''): string[] => found('fits', { title, description, language: 'en' });

describe('a part and what it is said to fit', () => {
  it.each([
    ['Class 66 bobbins for Grindlewade Cressiter', 'disproved: Class 66 bobbins | Cressiter'],
    ['Long bobbins for Grindlewade Wendelow', 'disproved: Long bobbins | Wendelow'],
  ])('has the wrong form: %s', (title, expected) => expect(check(title)).toContain(expected));

  it.each([
    ['Class 15 bobbins for Grindlewade Cressiter', 'agrees: Class 15 bobbins | Cressiter'],
    ['Class 66 bobbins, fit the Ostlewick', 'agrees: Class 66 bobbins | Ostlewick'],
  ])('has the right one: %s', (title, expected) => expect(check(title)).toContain(expected));

  it.each([
    [
      'Bobbins for Cressiter',
      'Pack of 15 class 66 bobbins for your Cressiter.',
      'disproved: class 66 bobbins | Cressiter',
    ],
    ['High shank zipper foot for Cressiter', '', 'disproved: High shank | Cressiter'],
  ])('what is said of the part itself: %s. %s', (title, description, expected) =>
    expect(check(title, description)).toContain(expected),
  );

  it.each(['NFC', 'NFD'])('named behind “für”, its letters written as %s', (form) => {
    const description = 'Spulen Klasse 66 für Ostlewick.'.normalize(form);
    expect(found('fits', { title: 'Spulen Klasse 66', description, language: 'de' })).toContain(
      'agrees: Spulen Klasse 66 | Ostlewick',
    );
  });

  it('may fit some models and not others', () => {
    const lines = check('Class 15 bobbins for Cressiter and Ostlewick');
    expect(lines).toContain('agrees: Class 15 bobbins | Cressiter');
    expect(lines).toContain('disproved: Class 15 bobbins | Ostlewick');
  });

  it.each([
    ['Class 15 bobbins for Grindlewade Cressiter', 'They do not fit the Ostlewick.'],
    ['Class 66 bobbins for Ostlewick', 'They will jam in a Cressiter.'],
    ['High shank to low shank adapter for Cressiter', 'Lets you use your old feet.'],
    ['Motor for Grindlewade Cressiter', 'Not a bobbin, takes no class 66.'],
  ])('what the seller warns of is no mistake: %s. %s', (title, description) =>
    expect(check(title, description).filter((line) => line.startsWith('disproved'))).toEqual([]),
  );

  it('a machine’s own bobbins are another check’s', () =>
    expect(check('Grindlewade Cressiter sewing machine', 'Takes class 66 bobbins.')).toEqual([]));

  it('what must not be the same may differ: the metal of a case says nothing of the machine', () =>
    expect(check('Aluminium case for Grindlewade Cressiter')).toEqual([]));
});

describe('parts that packs list by name', () => {
  it('agree for a model on the list', () =>
    expect(check('Pellucket shuttle for Grindlewade Quarrendle')).toContainEqual(
      expect.stringMatching(/^agrees: Pellucket shuttle/),
    ));
  it('are a question for one that isn’t', () =>
    expect(check('Fildercott shuttle for Grindlewade Pellucket')).toContainEqual(
      expect.stringMatching(/^unproved: Fildercott shuttle/),
    ));
});
