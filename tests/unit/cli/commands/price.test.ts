import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { PriceAnswer } from '../../../../src/audit/price-enquiry';
import { BadInput } from '../../../../src/cli/bad-input';
import { priceCommand } from '../../../../src/cli/commands/price';
import { ROOT } from '../../../steps/root';

const club = join(ROOT, 'fixtures/packs/grindlewade-circle.json');
const ON = ['--as-of', '2026-11-25', '--pack', club];
const json = (...argv: string[]): PriceAnswer => JSON.parse(priceCommand([...argv, ...ON, '--json']));
const cressiter = (...argv: string[]) => json('--model', 'cressiter', ...argv);

describe('the price command', () => {
  it('tells the band of a model in a grade, and where an asking price stands on it', () => {
    const answer = cressiter('--grade', 'good', '--asking', '£480');
    expect(answer).toMatchObject({
      ...{ schema: 1, model: 'grindlewade-circle/cressiter', grade: { id: 'good' }, standing: 'above', why: null },
      stated: { pack: 'grindlewade-circle', date: '2026-06' },
    });
    expect(answer.ratio).toBeCloseTo(480 / answer.band!.mid, 3);
    expect(answer.band!.low).toBeLessThan(answer.band!.half.low);
  });
  it.each(['grindlewade-circle/cressiter', 'Cressiter', 'Grindlewade Cressiter'])('finds the model as “%s”', (model) =>
    expect(json('--model', model).model).toBe('grindlewade-circle/cressiter'),
  );
  it('another currency by a pack’s rate, or by one that is typed in', () => {
    expect(cressiter('--asking', '€150').standing).toBe('within');
    expect(cressiter('--asking', 'CHF 150').why).toBe('no-rate');
    expect(cressiter('--asking', 'CHF 150', '--rate', 'CHF GBP 0.88 2026-06').standing).toBe('within');
  });
  it('says that it was converted, at which rate, of which day and whose', () => {
    expect(cressiter('--asking', '€150').converted).toEqual({
      ...{ from: 'EUR', to: 'GBP', amount: 129, times: 0.86, date: '2026-06', pack: 'grindlewade-circle' },
    });
    expect(cressiter('--asking', '£150').converted).toBeNull();
    const words = (...argv: string[]) => priceCommand(['--model', 'cressiter', ...argv, ...ON]).replace(/\s+/g, ' ');
    expect(words('--asking', '€480')).toContain(
      'At the rate of 2026-06, 0.86 GBP for 1 EUR (grindlewade-circle), that is £413.',
    );
    const typed = words('--asking', 'CHF 150', '--rate', 'GBP CHF 1.25 2026-10-02');
    expect(typed).toContain('At the rate of 2026-10-02, 0.8 GBP for 1 CHF (typed in by you), that is £120.');
  });
  it('refinished ones have no band here', () =>
    expect(cressiter('--finish', 'refinished')).toMatchObject({ standing: 'no-band', band: null }));
  it('tells what it cost when it was new, in today’s money and in weeks of a wage', () => {
    const { launch } = cressiter();
    expect(launch).toMatchObject({ amount: 34, currency: 'GBP', date: '1949', today: { last: '2025' } });
    expect(launch!.today!.amount).toBeGreaterThan(1000);
    expect(launch!.weeks!.number).toBeGreaterThan(1);
  });
  it('tells what would do the same, what differs, and what that costs', () => {
    const { alternatives } = cressiter();
    expect(alternatives.length).toBeGreaterThan(2);
    expect(alternatives.map(({ model }) => model)).not.toContain('grindlewade-circle/cressiter');
    for (const { common, band } of alternatives) {
      expect(common.length).toBeGreaterThan(0);
      expect(band).not.toBeNull();
    }
  });
  it('takes one’s own prices from a table, all of them or none', () => {
    const file = join(mkdtempSync(join(tmpdir(), 'prices-')), 'seen.csv');
    const row = (amount: string) => `Cressiter,paid,${amount},GBP,2026-10,good\n`;
    const heading = 'model,kind,amount,currency,date,grade\n';
    writeFileSync(file, heading + row('190').repeat(8));
    expect(cressiter('--seen', file).band!.mid).toBeGreaterThan(cressiter().band!.mid + 10);
    writeFileSync(file, heading + row('190') + row('nothing'));
    expect(bad('--model', 'cressiter', '--seen', file)).toContain('row 3: price: is no price');
    expect(bad('--model', 'cressiter', '--seen', `${file}x`)).toContain(`${file}x`);
  });
  it('--exact lets a wild price count like any other', () => {
    const file = join(mkdtempSync(join(tmpdir(), 'prices-')), 'wild.csv');
    writeFileSync(file, `model,kind,amount,currency,date,grade\nCressiter,paid,90000,GBP,2026-10,good\n`);
    const [held, exact] = [cressiter('--seen', file), cressiter('--seen', file, '--exact')];
    const counted = ({ seen }: PriceAnswer) => seen.find(({ amount }) => amount === 90_000)!.counted;
    expect([counted(held) < 0.05, counted(exact) > 0.9]).toEqual([true, true]);
    expect(exact.band!.high).toBeGreaterThan(held.band!.high);
  });
  it('lays it out in words', () => {
    const text = priceCommand(['--model', 'cressiter', '--asking', '£480', ...ON]).replace(/\s+/g, ' ');
    for (const part of ['£480: Above the band', 'Prices looked at', 'Good for', 'Not for', 'What else would do'])
      expect(text).toContain(part);
  });

  const bad = (...argv: string[]): string => {
    try {
      priceCommand([...argv, ...ON]);
    } catch (error) {
      if (error instanceof BadInput) return error.message;
      throw error;
    }
    return '';
  };
  it.each<[string, string[], string]>([
    ['no model', [], '--model is missing'],
    ['a word too many', ['--model', 'cressiter', 'x'], '"x" belongs to no option'],
    ['an unknown model', ['--model', 'nowhere'], 'no pack here knows "nowhere"'],
    ['part of a name', ['--model', 'cressit'], 'near it: grindlewade-circle/cressiter'],
    ['an unknown grade', ['--model', 'cressiter', '--grade', 'superb'], 'there are: worn, good, fine'],
    ['a finish', ['--model', 'cressiter', '--finish', 'shiny'], 'neither plain nor refinished'],
    ['no price', ['--model', 'cressiter', '--asking', 'a lot'], '"a lot" is no price'],
    ['nothing', ['--model', 'cressiter', '--asking', '£0'], 'is no price'],
    ['less than nothing', ['--model', 'cressiter', '--asking', '£-20'], 'is no price'],
    ['less than nothing, the sign first', ['--model', 'cressiter', '--asking=-£20'], 'is no price'],
    ['a rate of tomorrow', ['--model', 'cressiter', '--rate', 'EUR GBP 0.86 2026-11-26'], 'has not come yet'],
    ['a rate of nothing', ['--model', 'cressiter', '--rate', 'EUR GBP 0 2026-06'], 'must be above 0'],
    ['too much', ['--model', 'cressiter', '--asking', 'GBP 1000000000000'], 'is no price'],
    ['no currency', ['--model', 'cressiter', '--asking', '$480'], 'of which currency'],
    ['a rate', ['--model', 'cressiter', '--rate', 'EUR 0.86'], 'It is written like'],
  ])('refuses %s in one line', (_, argv, message) => {
    const told = bad(...argv);
    expect(told).toContain(message);
    expect(told).not.toContain('\n');
  });
});
