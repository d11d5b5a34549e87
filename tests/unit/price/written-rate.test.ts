import { describe, expect, it } from 'vitest';
import { NO_RATE_WRITTEN, type WrittenRate, writtenRate } from '../../../src/price/written-rate';

const GOOD: WrittenRate = { from: 'eur', rate: '0.86', to: ' GBP', date: '2026-06' };
const read = (rest: Partial<WrittenRate> = {}) => writtenRate({ ...GOOD, ...rest }, '2026-11-25');
const problems = (rest: Partial<WrittenRate>) => {
  const found = read(rest);
  return found.ok ? [] : found.problems.map(({ field, wrong }) => `${field} ${wrong}`);
};

describe('an exchange rate as somebody writes it', () => {
  it('is read whatever the case, with a point or a comma', () => {
    expect(read()).toEqual({ ok: true, rate: { from: 'EUR', to: 'GBP', rate: 0.86, date: '2026-06' } });
    expect(read({ rate: '0,86' })).toEqual(read());
    expect(read({ rate: '1.163', date: '3.4.2026' })).toMatchObject({ rate: { rate: 1.163, date: '2026-04-03' } });
  });
  it.each<[string, Partial<WrittenRate>, string[]]>([
    ['nothing at all', NO_RATE_WRITTEN, ['from missing', 'rate missing', 'to missing', 'date missing']],
    ['no currency', { from: 'EURO', to: 'XYZ' }, ['from unknown', 'to unknown']],
    ['twice the same', { to: 'EUR' }, ['to same']],
    ['zero', { rate: '0' }, ['rate too-low']],
    ['less than nothing', { rate: '-0.86' }, ['rate too-low']],
    ['far too much', { rate: '1000000000000' }, ['rate too-high']],
    ['a word', { rate: 'half' }, ['rate form']],
    ['what may be thousands', { rate: '1,163' }, ['rate form']],
    ['a day that has not come', { date: '2026-11-26' }, ['date future']],
    ['a year that has not come', { date: '2027' }, ['date future']],
    ['no day', { date: '2026-02-30' }, ['date form']],
    ['a day that is another one elsewhere', { date: '3/4/2026' }, ['date form']],
  ])('%s is refused', (_, rest, told) => expect(problems(rest)).toEqual(told));
});
