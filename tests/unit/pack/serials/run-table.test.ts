import { describe, expect, it } from 'vitest';
import { tabulate } from '../../../../src/pack/serials/run-table';

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
  const rows = Array.from({ length: table.firsts.length }, (_, i) => [
    table.firsts.at(i),
    table.firsts.at(i) + table.widths.at(i),
    table.years.at(i),
    table.words.models.at(table.models.at(i)),
    table.words.places[table.places.at(i)],
    table.words.sources[table.sources.at(i)],
  ]);

  it('lies by scheme, then by number, the wider first; what has no scheme is left out', () => {
    expect([...table.from]).toEqual([0, 2, 3]);
    expect(rows).toEqual([
      [100, 150, 0, ['a'], null, null],
      [300, 399, 1950, ['a', 'b'], 'Hallowdene', null],
      [5, 9, 1949, ['a'], null, 'ledger'],
    ]);
  });

  it('keeps what is printed in no usual way as it is', () => {
    const odd = tabulate({
      schemes,
      runs: { scheme: ['k'], first: ['K 001-00'], last: ['K00200'], models: [[]] },
    });
    expect(odd.words.odd).toEqual({ 0: 'K 001-00' });
  });
});
