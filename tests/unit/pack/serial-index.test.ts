import { describe, expect, test } from 'vitest';
import type { Scheme } from '../../../src/pack/schema/serials';
import { SerialIndex } from '../../../src/pack/serial-index';
import type { RunColumns } from '../../../src/pack/serials/pack-runs';
import { tabulate } from '../../../src/pack/serials/run-table';
import { columnsFrom, columnsOf, FIVE_DIGITS, indexOf, serialsOf, told } from './support/runs';

const spans = (index: SerialIndex, serial: string) =>
  index.find(serial).map((run) => [run.firstNumber, run.lastNumber]);

describe('find', () => {
  test('no runs, no answer', () => {
    expect(new SerialIndex([]).find('K00001')).toEqual([]);
    expect(indexOf().find('K00001')).toEqual([]);
  });

  test('the example of the index: runs that nest, the narrowest first', () => {
    const index = indexOf([1, 100], [40, 60], [50, 50], [70, 80]);
    expect(spans(index, 'K00050')).toEqual([
      [50, 50],
      [40, 60],
      [1, 100],
    ]);
    expect(spans(index, 'K00075')).toEqual([
      [70, 80],
      [1, 100],
    ]);
    expect(spans(index, 'K00101')).toEqual([]);
  });

  test('both ends are in the run', () => {
    const index = indexOf([40, 60]);
    expect(['K00039', 'K00040', 'K00060', 'K00061'].map((serial) => index.find(serial).length)).toEqual([0, 1, 1, 0]);
  });

  test('runs that overlap, begin or end together, or are the same', () => {
    const index = indexOf([1, 50], [40, 90], [40, 60], [30, 60], [40, 60]);
    expect(spans(index, 'K00045')).toEqual([
      [40, 60],
      [40, 60],
      [30, 60],
      [1, 50],
      [40, 90],
    ]);
  });

  test("a number of no scheme's form is in no run", () => {
    const index = indexOf([1, 100]);
    for (const serial of ['50', 'K50', 'L00050', 'K000050', '', 'K']) expect(index.find(serial)).toEqual([]);
  });

  test('schemes of one form answer beside each other, those of another form do not', () => {
    const other: Scheme = { id: 'other', prefix: 'K', digits: [4, 6] };
    const longer: Scheme = { id: 'longer', prefix: 'K', digits: 6 };
    const index = new SerialIndex([
      columnsOf([[1, 100]]),
      columnsOf([[1, 60]], 'q', other),
      columnsOf([[1, 60]], 'r', longer),
    ]);
    expect(index.find('K00050').map((run) => run.pack)).toEqual(['q', 'p']);
    expect(index.find('K0050').map((run) => run.pack)).toEqual(['q']);
  });

  test('a run is put together from its columns', () => {
    const scheme = { ...FIVE_DIGITS, source: 'ledger' };
    const columns: RunColumns = {
      pack: 'p',
      table: tabulate({
        schemes: [scheme],
        runs: {
          scheme: ['k', 'k', 'k'],
          first: ['K 20-001', '20101', '20201'],
          last: ['K 20-100', '20200', '20300'],
          models: [['m'], ['m', 'other/n'], []],
          year: [1951, null, null],
          date: ['1950-12', '1952-03-04', null],
          place: ['Hallowdene', null, null],
          source: ['page', null, null],
        },
      }),
      modelRef: (ref) => (ref.includes('/') ? ref : `p/${ref}`),
      citation: (id) => (id ? `cited: ${id}` : null),
    };
    const index = new SerialIndex([columns]);
    expect(index.find('K20050').map(told)).toEqual([
      {
        pack: 'p',
        entry: 'k-k20001',
        scheme,
        first: 'K 20-001',
        last: 'K 20-100',
        firstNumber: 20001,
        lastNumber: 20100,
        models: ['p/m'],
        year: 1951,
        place: 'Hallowdene',
        source: 'cited: page',
      },
    ]);
    expect(index.find('K20150').map(told)).toMatchObject([
      { models: ['p/m', 'other/n'], year: 1952, place: null, source: 'cited: ledger' },
    ]);
    expect(index.find('K20250').map(told)).toMatchObject([{ models: [], year: null }]);
  });
});

describe('a hostile table', () => {
  test('with a thousand runs that hold one number answers 64', () => {
    const index = indexOf(...Array.from({ length: 1000 }, (_, i): [number, number] => [i, 5000 - i]));
    const found = index.find('K02000');
    expect(found).toHaveLength(64);
    for (const run of found) expect(run.firstNumber <= 2000 && run.lastNumber >= 2000).toBe(true);
  });

  test('can not push out what an honest pack says', () => {
    const hostile = columnsOf(
      Array.from({ length: 1000 }, () => [50, 50] as const),
      'hostile',
    );
    const honest = columnsOf(
      [
        [1, 100],
        [40, 60],
      ],
      'honest',
    );
    for (const packs of [
      [hostile, honest],
      [honest, hostile],
    ])
      expect(new SerialIndex(packs).find('K00050').filter((run) => run.pack === 'honest')).toHaveLength(2);
  });

  test('can not fill the answer by naming many schemes of one form', () => {
    const schemes = Array.from({ length: 1000 }, (_, i): Scheme => ({ id: `s${i}`, prefix: 'K', digits: 5 }));
    const { runs } = serialsOf(schemes.map(() => [50, 50] as const));
    const index = new SerialIndex([
      columnsFrom({ schemes, runs: { ...runs, scheme: schemes.map(({ id }) => id) } }, 'hostile'),
    ]);
    expect(index.find('K00050')).toHaveLength(64);
  });

  test('columns that were never checked: runs that end before they begin or are no numbers are left out', () => {
    expect(indexOf([100, 1]).find('K00050')).toEqual([]);
    const serials = serialsOf([
      [1, 100],
      [1, 100],
    ]);
    serials.runs.first = ['x'];
    expect(new SerialIndex([columnsFrom(serials)]).find('K00050')).toEqual([]);
  });
});

describe('schemesOf and schemes', () => {
  const index = new SerialIndex([
    columnsOf([], 'p'),
    columnsOf([[1, 2]], 'q', { id: 'o', prefix: '', digits: [4, 6] }),
  ]);

  test('of whose form a number is, whether or not a run holds it', () => {
    expect(index.schemesOf('K00007')).toEqual([{ pack: 'p', scheme: FIVE_DIGITS, number: 7 }]);
    expect(index.schemesOf('99999')).toMatchObject([{ pack: 'q', number: 99999 }]);
    expect(index.schemesOf('X1')).toEqual([]);
  });

  test('all there are', () => {
    expect(index.schemes.map(({ pack, scheme }) => `${pack}/${scheme.id}`)).toEqual(['p/k', 'q/o']);
  });
});

describe('the runs around a number', () => {
  const index = indexOf([30, 39], [10, 19], [20, 29], [50, 59], [12, 14]);
  const firsts = (number: number, each: number) => index.around('p', 'k', number, each).map((run) => run.firstNumber);

  test('are those that begin at or before it and those that begin after it, in order', () => {
    expect(firsts(25, 2)).toEqual([12, 20, 30, 50]);
    expect(firsts(45, 1)).toEqual([30, 50]);
    expect(firsts(45, Number.POSITIVE_INFINITY)).toEqual([10, 12, 20, 30, 50]);
  });

  test('are fewer at the ends of a table, and none of another one', () => {
    expect(firsts(5, 2)).toEqual([10, 12]);
    expect(firsts(99, 2)).toEqual([30, 50]);
    expect(index.around('q', 'k', 25, 2)).toEqual([]);
  });
});
