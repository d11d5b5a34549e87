import { describe, expect, test } from 'vitest';
import type { Pack } from '../../../../src/pack/schema/index';
import { tokenise } from '../../../../src/text/tokens';
import { knowing } from '../support/knowledge';
import { smallPack } from '../support/packs';

function meanings(text: string, parts: Partial<Pack>, about: Partial<Pack['about']> = {}) {
  return knowing(smallPack(parts, about))
    .phrases.search(tokenise(text))
    .map(({ value }) => value);
}

describe('what a phrase stands for', () => {
  test('the thing, its parts, and what is not the thing', () => {
    const covers = { thing: 'sewing machine', words: ['sewing machine'], parts: ['bobbin'], not: ['toy machine'] };
    expect(meanings('sewing machine. bobbin. toy machine', {}, { covers }).map(({ meaning }) => meaning)).toEqual([
      { kind: 'thing', pack: 'small' },
      { kind: 'part', pack: 'small' },
      { kind: 'not-thing', pack: 'small' },
    ]);
  });

  test('a value of a choice, yes and no, and the name of a measure', () => {
    const attributes: Pack['attributes'] = [
      { id: 'frame', kind: 'choice', label: 'Frame', values: [{ id: 'iron', label: 'iron', words: ['cast iron'] }] },
      { id: 'free-arm', kind: 'yes-no', label: 'Free arm', yes: ['free arm'], no: ['flat bed'] },
      { id: 'arm', kind: 'measure', label: 'Arm', unit: 'mm', words: ['under the arm'] },
    ];
    expect(
      meanings('cast iron. free arm. flat bed. under the arm', { attributes }).map(({ meaning }) => meaning),
    ).toMatchObject([
      { kind: 'value', attribute: { ref: 'small/frame' }, value: 'iron' },
      { kind: 'value', attribute: { ref: 'small/free-arm' }, value: true },
      { kind: 'value', attribute: { ref: 'small/free-arm' }, value: false },
      { kind: 'measured', attribute: { ref: 'small/arm' } },
    ]);
  });

  test('wordings with what they are harmless in, cautions and grades', () => {
    const wording = [{ id: 'rare', words: ['rare'], unless: ['rare colour'] }];
    const cautions = [{ id: 'mains', text: 'Mind the wiring.', words: ['rewired'] }];
    const grades = [{ id: 'good', label: 'good', words: ['good order'] }];
    const found = meanings('rare colour. rewired. good order', { wording, cautions, prices: { grades } });
    expect(found.map(({ meaning }) => [meaning.kind, 'entry' in meaning && meaning.entry.id])).toEqual([
      ['unless', 'rare'],
      ['wording', 'rare'],
      ['caution', 'mains'],
      ['grade', 'good'],
    ]);
  });
});

describe('the language of a phrase', () => {
  test.each([
    ['en', 'rare', 'en'],
    ['pt-BR', 'rare', 'pt'],
    ['en', { text: 'rare', lang: 'fr' }, 'fr'],
    ['en', { text: 'rare', lang: 'de-AT' }, 'de'],
    ['en', { text: 'rare', lang: 'und' }, 'und'],
  ])('in a pack of %s, %j is %s', (language, phrase, lang) => {
    const found = meanings('rare', { wording: [{ id: 'rare', words: [phrase] }] }, { language });
    expect(found.map((one) => one.lang)).toEqual([lang]);
  });
});
