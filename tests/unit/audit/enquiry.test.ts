import { describe, expect, it } from 'vitest';
import { enquire } from '../../../src/audit/enquiry';
import { compile } from '../../../src/pack/compile';
import { parsePack } from '../../../src/pack/parse';
import type { Pack } from '../../../src/pack/schema/index';

function packWith(id: string, serials: unknown): Pack {
  const { pack, issues } = parsePack(
    JSON.stringify({
      schema: 1,
      about: {
        ...{ id, title: id, edition: 1, licence: 'CC0', language: 'en' },
        covers: { thing: 'sewing machine', words: ['sewing machine'] },
        sources: { book: 'Allotment book' },
      },
      models: [
        { id: 'plain', label: 'Plainmodel', names: ['Plainmodel'] },
        { id: 'fancy', label: 'Fancymodel', names: ['Fancymodel'] },
      ],
      serials,
    }),
  );
  if (!pack) throw new Error(JSON.stringify(issues));
  return pack;
}

const club = packWith('club', {
  schemes: [
    { id: 'k', maker: 'Maker', prefix: 'K', digits: 5, source: 'book' },
    { id: 'z', prefix: 'Z', digits: 3, complete: true },
  ],
  runs: {
    scheme: ['k', 'k', 'k', 'k', 'k', 'k', 'k', 'k', 'z'],
    first: ['10001', '20001', '30001', '30501', '40001', '50001', '60001', '80001', '100'],
    last: ['20000', '30000', '40000', '30600', '50000', '60000', '70000', '90000', '200'],
    models: [['plain'], ['plain'], ['plain'], ['fancy'], ['plain'], ['fancy'], ['plain'], ['plain'], ['plain']],
    year: [1901, 1902, 1903, 1903, 1904, 1905, 1906, 1908, 1910],
    place: ['North works', null, 'South works', null, null, null, null, null, null],
  },
});
const other = packWith('other', {
  schemes: [{ id: 'k', prefix: 'K', digits: 5 }],
  runs: { scheme: ['k'], first: ['30000'], last: ['39999'], models: [['plain']] },
});
const knowledge = compile([club, other]);
const shortRun = ({ first, last, holds }: { first: string; last: string; holds: boolean }) =>
  `${first}-${last}${holds ? ' holds' : ''}`;

describe('a bare number', () => {
  it('is found in all runs that hold it, however it is written, with year, place and source', () => {
    const { verdict, normal, runs } = enquire(' k 30-550 ', 'club', knowledge);
    expect([verdict, normal]).toEqual(['found', 'K30550']);
    expect(runs).toMatchObject([
      { models: ['club/fancy'], year: 1903, place: null, source: 'Allotment book' },
      { models: ['club/plain'], year: 1903, place: 'South works', source: 'Allotment book' },
    ]);
  });

  it('stands among the runs next to it, in order', () => {
    const { lines } = enquire('K30550', 'club', knowledge);
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatchObject({ pack: 'club', maker: 'Maker', gapAfter: null });
    expect(lines[0]?.runs.map(shortRun)).toEqual([
      '20001-30000',
      '30001-40000 holds',
      '30501-30600 holds',
      '40001-50000',
      '50001-60000',
      '60001-70000',
    ]);
  });

  it('is asked of one pack or of all', () => {
    expect(enquire('K30550', null, knowledge).runs.map(({ pack }) => pack)).toEqual(['club', 'other', 'club']);
    expect(enquire('K30550', 'other', knowledge).runs.map(({ pack }) => pack)).toEqual(['other']);
  });

  it('in a gap says between which runs it would stand', () => {
    const { verdict, lines, runs } = enquire('K75000', 'club', knowledge);
    expect([verdict, runs]).toEqual(['gap', []]);
    const line = lines[0];
    expect(line?.complete).toBe(false);
    expect(line?.runs.slice((line.gapAfter ?? 0) - 1).map(shortRun)).toEqual(['60001-70000', '80001-90000']);
    expect(enquire('Z999', 'club', knowledge).lines[0]).toMatchObject({ complete: true, gapAfter: 1 });
  });

  it('that is misread gets what it may be', () => {
    const { verdict, suggestions } = enquire('K3O550', 'club', knowledge);
    expect(verdict).toBe('misread');
    expect(suggestions).toContainEqual({ normal: 'K30550', models: ['club/fancy', 'club/plain'], year: 1903 });
  });

  it('of a form that nobody knows gets the forms that are known', () => {
    const { verdict, forms } = enquire('XX-1', 'club', knowledge);
    expect(verdict).toBe('bad-form');
    expect(forms.map(({ maker, form }) => [maker, form])).toEqual([
      ['Maker', 'K + 5 digits'],
      [null, 'Z + 3 digits'],
    ]);
  });

  it.each(['', '   ', '-'])('that is none (%j) finds nothing', (serial) => {
    expect(enquire(serial, null, knowledge)).toMatchObject({ verdict: 'none', runs: [], lines: [] });
  });
});
