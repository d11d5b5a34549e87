import { describe, expect, it } from 'vitest';
import { knowledgeOf } from '../../../../src/pack/compile/knowledge-of';
import { partsOf } from '../../../../src/pack/compile/parts-of';
import { partsIn, partsStored } from '../../../../src/pack/compiled/read';
import { bytesOf } from '../../../../src/pack/compiled/write';
import { tokenise } from '../../../../src/text/tokens';
import { accepted, fullPack, smallPack } from '../support/packs';

const pack = accepted(fullPack());
const { extends: _, ...about } = pack.about;
const bytes = bytesOf(partsOf({ ...pack, about }));
const parts = partsIn(bytes.buffer)!;
const known = knowledgeOf([parts], new Map([['ottermere', 'ab cd']]));

describe('a pack that is read from its bytes', () => {
  it('is known by its head, its small parts and its seal', () => {
    expect(parts.about).toEqual(about);
    const { $schema, schema, serials, families, models, types, about: __, ...rest } = pack;
    expect(parts.rest).toEqual({ schema, ...rest });
    expect(known.packs[0]).toMatchObject({ id: 'ottermere', sealedBy: 'ab cd', cautions: pack.cautions });
  });

  it('has its models, types and families, each as its file says it', () => {
    expect([...known.models.values()].map(({ def }) => def)).toEqual([...pack.models!, ...pack.types!]);
    expect([...known.models.values()].map(({ isType }) => isType)).toEqual([false, false, true]);
    expect(known.families.get('ottermere/full-size')?.def).toEqual(pack.families![0]);
    expect(known.models.get('ottermere/m12')?.family).toBe(known.families.get('ottermere/full-size'));
    expect(known.models.get('ottermere/m12')?.facts.get('ottermere/weight')?.[0]?.source).toBe('A page, invented');
  });

  it('finds its phrases and names', () => {
    const found = known.phrases.search(tokenise('A heavy sewing machine with needles, Nähmaschine, of Hallowdene'));
    expect(found.map(({ value }) => `${value.lang} ${value.meaning.kind}`)).toEqual([
      'en wording',
      'en thing',
      'en fit',
      'de thing',
      'und place',
    ]);
    const names = known.names.search(tokenise('Ottermere 12'));
    expect(names.map(({ value }) => [value.text, value.stands])).toEqual([
      ['Ottermere 12', 'alone'],
      ['Ottermere', 'alone'],
      ['12', 'near'],
    ]);
  });

  it('finds a number’s runs', () => {
    expect(known.serials.find('K20120B')).toMatchObject([
      { first: '20101', last: '20150', models: ['ottermere/m12', 'ottermere/m14'], source: 'Works ledger, invented' },
      { first: 'K 20001 B', last: 'K20400B', place: 'Hallowdene', year: 1952 },
    ]);
    expect(known.serials.find('150000')).toMatchObject([
      { models: ['trade/other'], year: 1954, source: 'A page, invented' },
    ]);
  });

  it('has its prices', () => {
    expect(known.bands.get('ottermere/m12')).toMatchObject([{ entry: 'band-1', def: pack.prices!.bands![0] }]);
  });

  it('may have next to nothing in it', () => {
    const least = partsIn(bytesOf(partsOf(accepted(smallPack()))).buffer)!;
    expect(least.runs).toBeNull();
    const nothing = knowledgeOf([least], new Map());
    expect([...nothing.models.keys(), ...nothing.attributes.keys(), ...nothing.nameList]).toEqual([]);
    expect(nothing.phrases.search(tokenise('sewing machine'))).toHaveLength(1);
  });
});

describe('a pack that lies elsewhere', () => {
  it('is read as far as it is asked, and answers as one that is here', () => {
    let fetched = 0;
    const read = (from: number, to: number) => {
      fetched += to - from;
      return bytes.buffer.slice(from, to);
    };
    const stored = partsStored({ length: bytes.length, first: bytes.buffer.slice(0, 200), read }, false)!;
    const elsewhere = knowledgeOf([stored], new Map());
    expect(fetched).toBeLessThan(bytes.length);
    expect(elsewhere.serials.find('K20120B').map(({ last }) => last)).toEqual(['20150', 'K20400B']);
    expect([...elsewhere.models.values()].map(({ def }) => def)).toEqual([...pack.models!, ...pack.types!]);
  });

  it('is looked at as a whole where that is wanted', () => {
    const damaged = bytes.slice();
    damaged[bytes.length - 1]! ^= 1;
    const stored = {
      length: bytes.length,
      first: damaged.buffer.slice(0, 200),
      read: (from: number, to: number) => damaged.buffer.slice(from, to),
    };
    expect(partsStored(stored, true)).toBeNull();
  });
});

describe('bytes that are not whole', () => {
  it('are refused, wherever the damage is', () => {
    for (let at = 0; at < bytes.length; at += 7) {
      const damaged = bytes.slice();
      damaged[at]! ^= 1 << (at % 8);
      expect(partsIn(damaged.buffer)).toBeNull();
      expect(partsIn(bytes.buffer.slice(0, at))).toBeNull();
    }
    expect(partsIn(new ArrayBuffer(0))).toBeNull();
    expect(partsIn(bytes.slice().buffer)).not.toBeNull();
  });
});
