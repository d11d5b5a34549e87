import { describe, expect, it } from 'vitest';
import { knowing } from '../../pack/support/knowledge';
import { smallPack } from '../../pack/support/packs';
import { auditOf, cressiter, found } from '../support/demo';

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

  it('a part that is lost was there: that it is missing disproves nothing', () => {
    const wendelow = (description: string): string[] =>
      found('claim-fact', { title: 'Grindlewade Wendelow sewing machine', description, language: 'en' });
    expect(wendelow('Drop feed is missing.')).toEqual(['unproved: Drop feed is missing']);
    expect(wendelow('It has no drop feed.')).toEqual(['disproved: no drop feed']);
  });

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

describe('where the number is another model’s', () => {
  /** KD 318472 was allotted to the Cressiter: cast iron, straight stitch. */
  const facts = (description: string, title = 'Grindlewade Wendelow sewing machine') =>
    auditOf({ title, description, serialText: 'KD 318472', language: 'en' }).findings.filter(
      ({ check, standing }) => check === 'claim-fact' && standing !== 'agrees',
    );

  it('what that one has is said, with both facts', () => {
    const [finding] = facts('Cast iron.');
    expect(finding).toMatchObject({ standing: 'disproved', attribute: 'frame' });
    expect(finding?.text).toBe(
      '“Cast iron” doesn’t hold for Grindlewade Wendelow (frame: aluminium). ' +
        'It fits Grindlewade Cressiter, to which the serial was allotted.',
    );
    expect(finding?.known.map(({ text }) => text)).toEqual([
      'Grindlewade Wendelow, frame: aluminium.',
      'Grindlewade Cressiter, frame: cast iron.',
    ]);
  });
  it('what neither has is said', () =>
    expect(facts('It does zigzag.')[0]?.text).toMatch(/ Nor does it hold for Grindlewade Cressiter, to which/));
  it('what only the one named has is open, and worth asking', () => {
    const [finding] = facts('Alloy body.');
    expect(finding).toMatchObject({ standing: 'unproved', ask: expect.stringMatching(/magnet/) });
    expect(finding?.text).toMatch(
      /^“Alloy body” fits what is known of Grindlewade Wendelow\. It doesn’t hold for Grindlewade Cressiter, to which/,
    );
  });
});

describe('whose fact it is', () => {
  it('a kind’s is told of the kind, and that the model is one by the model’s own entry', () => {
    const { findings } = auditOf({
      ...{ title: 'Ulversholt Q 43 sewing machine', description: 'It has a free arm.', language: 'en' },
    });
    const [finding] = findings.filter(({ check, attribute }) => check === 'claim-fact' && attribute === 'bed');
    expect(finding?.known).toMatchObject([
      { pack: 'trade', entry: 'free-arm-zigzag', text: 'The kind “Free arm, zigzag”, bed: free arm.' },
      {
        ...{ pack: 'grindlewade-circle', entry: 'q-43' },
        text: 'Ulversholt Q 43 is of the kind “Free arm, zigzag”.',
        source: expect.any(String),
      },
    ]);
  });
});
