import { describe, expect, test } from 'vitest';
import { localText } from '../../../src/pack/local-text';

const text = { de: 'Nähmaschine', en: 'sewing machine', 'pt-BR': 'máquina de costura', fr: 'machine à coudre' };

describe('localText', () => {
  test('a plain text is the text, whatever language is wanted', () => {
    expect(localText('bed', 'de')).toBe('bed');
  });

  test.each<[(string | null | undefined)[], string]>([
    [['de'], 'Nähmaschine'],
    [['de-AT'], 'Nähmaschine'],
    [['pt-BR'], 'máquina de costura'],
    [['xx', 'fr'], 'machine à coudre'],
    [['fr', 'de'], 'machine à coudre'],
    [[null, undefined, 'fr'], 'machine à coudre'],
    [['', 'fr'], 'machine à coudre'],
    [[], 'sewing machine'],
    [['xx'], 'sewing machine'],
    [['DE'], 'Nähmaschine'],
    [['De-at'], 'Nähmaschine'],
    [['pt-br'], 'máquina de costura'],
    [['PT-BR'], 'máquina de costura'],
  ])('for %j', (languages, expected) => {
    expect(localText(text, ...languages)).toBe(expected);
  });

  test('in none of the wanted languages nor English: the first there is', () => {
    expect(localText({ nl: 'naaimachine', fr: 'machine à coudre' }, 'de')).toBe('naaimachine');
  });

  test('nothing at all is an empty text', () => {
    expect(localText({}, 'de')).toBe('');
  });

  // A page says what its language is, and may say anything.
  test.each(['constructor', 'toString', '__proto__', 'hasOwnProperty', 'constructor-x', '__proto__-x'])(
    'a page whose language is "%s" gets a text all the same',
    (language) => {
      expect(localText(text, language)).toBe('sewing machine');
      expect(localText({}, language)).toBe('');
    },
  );
});
