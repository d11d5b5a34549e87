import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Observation } from '../../../src/price/observation';
import { NOTHING_WRITTEN, observationOf, type Writing, type Written } from '../../../src/price/observation-fields';
import { decodeTable, guessColumns, readRow, readTable, tableOf } from '../../../src/price/table';

const WRITING: Writing = {
  modelOf: (written) => (/^(p\/)?ottermere$/i.test(written) ? 'p/ottermere' : null),
  gradeOf: (written) => (written === 'good' ? 'good' : null),
  today: '2026-11-25',
};
const WRITTEN: Written = {
  ...NOTHING_WRITTEN,
  ...{ model: 'Ottermere', kind: 'paid', amount: '120', currency: 'GBP', date: '2026-03-14' },
};
const read = (rest: Partial<Written>) => observationOf({ ...WRITTEN, ...rest }, WRITING);

describe('an observation as somebody writes it', () => {
  it.each<[Partial<Written>, Partial<Observation>]>([
    [{}, { model: 'p/ottermere', kind: 'paid', amount: 120, currency: 'GBP', date: '2026-03-14' }],
    [
      { amount: '£1,340.50', currency: '' },
      { amount: 1340.5, currency: 'GBP' },
    ],
    [
      { amount: '1.340,50 €', currency: '' },
      { amount: 1340.5, currency: 'EUR' },
    ],
    // Money has no thousandths, but where its currency has.
    [
      { amount: '1.340', currency: 'EUR' },
      { amount: 1340, currency: 'EUR' },
    ],
    [
      { amount: '1.340', currency: 'KWD' },
      { amount: 1.34, currency: 'KWD' },
    ],
    [{ amount: '0.125' }, { amount: 0.125 }],
    [{ amount: '1340.5' }, { amount: 1340.5 }],
    [{ kind: 'Asking' }, { kind: 'asked' }],
    [{ date: '2019' }, { date: '2019' }],
    [{ date: '3.4.2025' }, { date: '2025-04-03' }],
    [{ date: '25/12/2025' }, { date: '2025-12-25' }],
    [{ date: '12/25/2025' }, { date: '2025-12-25' }],
    [
      { grade: 'good', complete: 'no', finish: 'Refinished', seller: 'trade', place: 'Hexgarth', note: 'by post' },
      { grade: 'good', complete: false, finish: 'refinished', seller: 'trade', place: 'Hexgarth', note: 'by post' },
    ],
  ])('%o', (written, observation) => expect(read(written)).toMatchObject({ ok: true, observation }));

  it.each<[Partial<Written>, string, string]>([
    [{ model: '' }, 'model', 'missing'],
    [{ model: 'Nowhere' }, 'model', 'unknown'],
    [{ kind: 'sold out' }, 'kind', 'unknown'],
    [{ kind: 'constructor' }, 'kind', 'unknown'],
    [{ complete: 'constructor' }, 'complete', 'unknown'],
    [{ amount: '0' }, 'amount', 'too-low'],
    [{ amount: '-5' }, 'amount', 'too-low'],
    [{ amount: '1e12' }, 'amount', 'too-high'],
    [{ amount: 'a lot' }, 'amount', 'form'],
    [{ currency: '' }, 'currency', 'missing'],
    [{ currency: 'XYZ' }, 'currency', 'unknown'],
    [{ date: '2026-11-26' }, 'date', 'future'],
    [{ date: '2026-02-30' }, 'date', 'form'],
    [{ date: '3/4/2025' }, 'date', 'form'],
    [{ date: 'last year' }, 'date', 'form'],
    [{ grade: 'superb' }, 'grade', 'unknown'],
    [{ complete: 'perhaps' }, 'complete', 'unknown'],
    [{ link: 'javascript:alert(1)' }, 'link', 'form'],
    [{ note: 'x'.repeat(501) }, 'note', 'too-long'],
  ])('%o: %s %s', (written, field, wrong) =>
    expect(read(written)).toEqual({ ok: false, problems: [{ field, wrong }] }),
  );

  it('names everything that is wrong at once', () => {
    const found = observationOf(NOTHING_WRITTEN, WRITING);
    expect(found.ok ? [] : found.problems.map(({ field }) => field)).toEqual(['model', 'kind', 'amount', 'date']);
  });
});

describe('a table', () => {
  const TEXT = 'Machine;Preis;Währung;Datum;Art\nOttermere;120;GBP;2026;paid\n\nNowhere;;GBP;2026;paid\n';
  const table = (text: string) => {
    const found = readTable(text);
    if (!found.ok) throw new Error(found.problem);
    return found.table;
  };

  it('is read in whatever dialect it is, its columns found by their headings', () => {
    const found = table(TEXT);
    const columns = guessColumns(found);
    expect(columns).toMatchObject({ model: 0, amount: 1, currency: 2, date: 3, kind: 4, note: null });
    expect(readRow(found, 0, columns, {}, WRITING)).toMatchObject({ row: 2, ok: true });
    expect(readRow(found, 1, columns, {}, WRITING)).toEqual({
      ...{ row: 3, ok: false },
      problems: [
        { field: 'model', wrong: 'unknown' },
        { field: 'amount', wrong: 'missing' },
      ],
    });
  });
  it('what holds for every row stands in where a row says nothing', () => {
    const found = table('model,amount,date\nOttermere,99,2025-01\n');
    const row = readRow(found, 0, guessColumns(found), { currency: 'GBP', kind: 'asked' }, WRITING);
    expect(row).toMatchObject({ ok: true, observation: { currency: 'GBP', kind: 'asked', amount: 99 } });
  });
  it.each([
    ['', 'empty'],
    ['model,amount\n', 'empty'],
    ['PK\u0003\u0004\u0000', 'not-text'],
  ])('%j: %s', (text, problem) => expect(readTable(text)).toEqual({ ok: false, problem }));

  it('is read in the encoding that it has', () => {
    const latin = Uint8Array.from([0x4d, 0x6f, 0x64, 0xe8, 0x6c, 0x65]);
    expect(decodeTable(latin)).toEqual({ text: 'Modèle', encoding: 'windows-1252' });
    expect(decodeTable(new TextEncoder().encode('Modèle'))).toEqual({ text: 'Modèle', encoding: 'utf-8' });
    expect(decodeTable(Uint8Array.from([0xff, 0xfe, 0x4d, 0x00])).encoding).toBe('utf-16');
  });

  it('goes out and comes in again as it was', () => {
    const text = fc.string({ maxLength: 30 }).map((one) => one.replaceAll('\u0000', '').trim());
    const observation = fc.record({
      ...{ model: fc.constant('p/ottermere'), kind: fc.constantFrom('asked' as const, 'paid' as const) },
      ...{ amount: fc.integer({ min: 1, max: 1e6 }), currency: fc.constantFrom('GBP', 'EUR') },
      ...{ date: fc.constantFrom('2020', '2024-02', '2025-12-31'), note: text, place: text },
    });
    fc.assert(
      fc.property(fc.array(observation, { minLength: 1, maxLength: 8 }), (all) => {
        const out = table(tableOf(all));
        const back = out.rows.map((_, at) => readRow(out, at, guessColumns(out), {}, WRITING));
        const expected = all.map(({ note, place, ...rest }) => ({
          ...rest,
          ...(place ? { place: place.replace(/^'(?=[=+\-@])/, '') } : {}),
          ...(note ? { note: note.replace(/^'(?=[=+\-@])/, '') } : {}),
        }));
        expect(back.map((row) => (row.ok ? row.observation : row))).toEqual(expected);
      }),
    );
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)'])('leaves no cell that would be a formula: %s', (note) => {
    const cells = tableOf([{ model: 'p/m', kind: 'paid', amount: 1, currency: 'GBP', date: '2020', note }]);
    expect(cells).toContain(`'${note}`);
  });
});
