import { describe, expect, test } from 'vitest';
import type { NameKnown } from '../../../../src/pack/knowledge';
import type { Pack } from '../../../../src/pack/schema/index';
import { tokenise } from '../../../../src/text/tokens';
import { knowing } from '../support/knowledge';
import { smallPack } from '../support/packs';

function named(parts: Partial<Pack>): readonly NameKnown[] {
  return knowing(smallPack(parts)).nameList;
}

function whose(name: NameKnown): string {
  if ('model' in name.of) return name.of.model.ref;
  return 'family' in name.of ? name.of.family.ref : `maker ${name.of.maker}`;
}

describe('names', () => {
  test('of models, types, families and makers, each as its own', () => {
    const names = named({
      families: [{ id: 'f', label: 'F', names: ['Full size'], maker: 'Ottermere' }],
      models: [{ id: 'm', label: 'M', names: ['Twelve', { text: 'The Dozen' }] }],
      types: [{ id: 't', label: 'T', names: ['Upright'] }],
    });
    expect(names.map((name) => [name.text, whose(name)])).toEqual([
      ['Full size', 'small/f'],
      ['Ottermere', 'maker Ottermere'],
      ['Twelve', 'small/m'],
      ['The Dozen', 'small/m'],
      ['Upright', 'small/t'],
    ]);
  });

  test('a maker stands once, however often and in whatever capitals it is named', () => {
    const names = named({
      families: [{ id: 'f', label: 'F', names: [], maker: 'Ottermere' }],
      models: [{ id: 'm', label: 'M', names: [], maker: 'OTTERMERE' }],
      serials: {
        schemes: [{ id: 'k', prefix: '', digits: 5, maker: 'Ottermere' }],
        runs: { scheme: [], first: [], last: [], models: [] },
      },
    });
    expect(names.map(whose)).toEqual(['maker Ottermere']);
  });

  test.each([
    ['12', 'near'],
    ['K', 'near'],
    ['5/7', 'near'],
    ['5 B', 'named'],
    ['12-K', 'named'],
    ['K 12', 'named'],
    ['Ottermere 12', 'alone'],
    ['Twelve', 'alone'],
    ['De Luxe', 'alone'],
  ])('"%s" is a name where it stands %s', (text, stands) => {
    expect(named({ models: [{ id: 'm', label: 'M', names: [text] }] })[0]?.stands).toBe(stands);
  });

  test('the pack may call any name weak, and none strong that is too bare', () => {
    const names = [
      { text: 'Universal', weak: true },
      { text: '12', weak: false },
    ];
    expect(named({ models: [{ id: 'm', label: 'M', names }] }).map((name) => name.stands)).toEqual(['near', 'near']);
  });

  test('are found in an advert, whatever the case and hyphens', () => {
    const known = knowing(smallPack({ models: [{ id: 'm', label: 'M', names: ['Ottermere 12K'] }] }));
    for (const text of ['OTTERMERE 12-K', 'Ottermere 12 k machine'])
      expect(known.names.search(tokenise(text))).toHaveLength(1);
    expect(known.names.search(tokenise('Ottermere 13K'))).toEqual([]);
  });

  test('of mere marks are listed and never found', () => {
    const known = knowing(smallPack({ models: [{ id: 'm', label: 'M', names: ['***'] }] }));
    expect(known.names.search(tokenise('*** machine ***'))).toEqual([]);
  });
});
