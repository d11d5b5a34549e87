import { describe, expect, it } from 'vitest';
import { knowing } from '../../pack/support/knowledge';
import { smallPack } from '../../pack/support/packs';
import { cressiter, found } from '../support/demo';

const check = (text: string): string[] => found('claim-fact', cressiter(text));

describe('features against the facts of the claimed model', () => {
  it.each([
    ['It does zigzag.', 'disproved: zigzag'],
    ['Light alloy body.', 'disproved: Light alloy | alloy body'],
    ['Vibrating shuttle machine.', 'disproved: Vibrating shuttle machine'],
    ['Takes class 66 bobbins.', 'disproved: class 66 bobbins'],
    ['The frame is not cast iron.', 'disproved: is not cast iron'],
  ])('doesn’t hold: %s', (text, expected) => expect(check(text)).toEqual([expected]));

  it.each([
    ['Cast iron body.', 'agrees: Cast iron body'],
    ['It is not aluminium.', 'agrees: is not aluminium'],
    ['Takes class 15 bobbins.', 'agrees: class 15 bobbins'],
  ])('holds: %s', (text, expected) => expect(check(text)).toEqual([expected]));

  it.each([
    'The case is made of aluminium.',
    'Comes with a zigzag attachment.',
    'As tough as an aluminium one.',
    'I also have a zigzag machine.',
    'Often called an aluminium machine.',
    'Is it a zigzag?',
    'The Bodrannock is the one with zigzag.',
    'Potted motor.',
  ])('says nothing that can be held against it: %s', (text) =>
    expect(check(text).filter((line) => line.startsWith('disproved'))).toEqual([]),
  );

  it('a guess is a question, not a mistake', () =>
    expect(check('I think it does zigzag.')).toEqual(['unproved: zigzag']));

  it('a rule with exceptions disproves nothing', () => {
    const knowledge = knowing(
      smallPack({
        attributes: [
          {
            id: 'frame',
            kind: 'choice',
            label: 'frame',
            values: [
              { id: 'iron', label: 'iron', words: ['iron body'] },
              { id: 'alloy', label: 'alloy', words: ['alloy body'] },
            ],
          },
        ],
        models: [
          { id: 'm', label: 'Ottermere M', names: ['Ottermere M'], facts: { frame: { is: 'iron', holds: 'usually' } } },
        ],
      }),
    );
    const draft = { title: 'Ottermere M sewing machine', description: 'alloy body', language: 'en' };
    expect(found('claim-fact', draft, knowledge)).toEqual(['caution: alloy body']);
  });
});

describe('facts that hold for some years or numbers', () => {
  it('the serial decides which hold', () => {
    expect(check('Drop feed. Serial number KD110000.')).toEqual(['disproved: Drop feed']);
    expect(check('Drop feed. Serial number KD372118.')).toEqual(['agrees: Drop feed']);
  });
  it('without it they can’t be told apart', () => expect(check('Drop feed.')).toEqual([]));
});

describe('where no model is named', () => {
  const check = (description: string): string[] =>
    found('claim-fact', { title: 'Grindlewade sewing machine', description, language: 'en' });

  it('a claim is disproved only if every likely model refutes it', () => {
    expect(check('It has a slant shank.')).toEqual(['disproved: slant shank']);
    expect(check('It has a rotary hook.')).toEqual([]);
  });

  it('what every likely model is, is no finding', () => expect(check('It has a low shank.')).toEqual([]));
});
