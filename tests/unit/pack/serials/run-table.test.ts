import { describe, expect, it } from 'vitest';
import { type SchemeRuns, tabulate } from '../../../../src/pack/serials/run-table';

const schemes = [
  { id: 'k', prefix: 'K', digits: 5 },
  { id: 'l', prefix: 'L', digits: 3, source: 'ledger' },
];

describe('a table of runs', () => {
  const table = tabulate({
    schemes,
    runs: {
      scheme: ['l', 'k', 'k', 'k', 'unknown'],
      first: ['005', '300', 'K 100', '00100', '1'],
      last: ['9', '00399', 'K00199', '00150', '2'],
      models: [['a'], ['a', 'b'], ['a'], ['a'], ['a']],
      year: [null, 1950, null, null, null],
      date: ['1949-05', '1948', null, null, null],
      place: [null, 'Hallowdene', null, null, null],
    },
  });
  const rowsOf = ({ firsts, widths, years, models, places, sources }: SchemeRuns) =>
    Array.from({ length: firsts.length }, (_, i) => [
      firsts.at(i),
      firsts.at(i) + widths.at(i),
      years.at(i),
      table.words.models.at(models.at(i)),
      table.words.places[places.at(i)],
      table.words.sources[sources.at(i)],
    ]);

  it('lies by scheme, then by number, the wider first; what has no scheme is left out', () => {
    expect(table.count).toBe(3);
    expect(rowsOf(table.of(0))).toEqual([
      [100, 150, 0, ['a'], null, null],
      [300, 399, 1950, ['a', 'b'], 'Hallowdene', null],
    ]);
    expect(rowsOf(table.of(1))).toEqual([[5, 9, 1949, ['a'], null, 'ledger']]);
  });

  it('keeps what is printed in no usual way as it is', () => {
    const odd = tabulate({
      schemes,
      runs: {
        scheme: ['k', 'l', 'l'],
        first: ['K 001-00', '1', '100'],
        last: ['K00200', '2', 'L 2-00'],
        models: [[], [], []],
      },
    });
    expect(odd.of(0).odd).toEqual({ 0: 'K 001-00' });
    expect(odd.of(1).odd).toEqual({ 3: 'L 2-00' });
  });
});
