import { describe, expect, it } from 'vitest';
import type { Audit, Finding, PriceReport } from '../../../src/audit/types';
import { auditText } from '../../../src/cli/audit-text';
import { widthOf } from '../../../src/cli/layout';

const finding = (over: Partial<Finding>): Finding => ({
  id: 'x',
  check: 'claim-fact',
  standing: 'disproved',
  attribute: null,
  said: [{ field: 'title', quote: 'all aluminium', start: 0, end: 13 }],
  known: [{ pack: 'p', entry: 'e', text: 'The frame is cast iron.', source: 'Handbook, page 4' }],
  text: 'The frame is not aluminium.',
  ask: 'Does a magnet stick to the bed?',
  ...over,
});

const NO_BAND: PriceReport = {
  ...{ standing: 'no-band', why: null, ratio: null, probability: null, converted: null, taken: null, band: null },
  ...{ factors: [], seen: [] },
};
const BAND: PriceReport['band'] = {
  ...{ low: 80, mid: 140.5, high: 260, half: { low: 110, high: 185 }, currency: 'GBP', kind: 'asked', grade: null },
  ...{ askedToPaid: 1.1, observations: 7, effective: 4.25, stated: 3 },
};

const auditOf = (over: Partial<Audit> = {}): Audit => ({
  schema: 1,
  kind: 'item',
  listing: {
    title: 'Old machine',
    description: '',
    details: '',
    price: { amount: '1340.00', currency: null, how: 'asking' },
    serials: [],
    condition: null,
    place: null,
    photos: [],
    fields: {},
  },
  claimedModel: 'p/m',
  claimed: [],
  serial: { asWritten: 'K 20-417', normal: 'K20417', verdict: 'fits', runs: [], suggestions: [] },
  serials: [],
  likely: [],
  findings: [finding({})],
  nextEvidence: [],
  price: NO_BAND,
  packs: [{ id: 'p', edition: 3, sealedBy: null }],
  ...over,
});

const models = new Map([['p/m', { label: 'Model M' }]]) as never;
const text = (over: Partial<Audit> = {}, width = 80) => auditText(auditOf(over), { models }, width);

describe('an audit as text', () => {
  it('sets what is said beside what is known, in the same rows', () => {
    const lines = text().split('\n');
    expect(lines.find((line) => line.includes('"all aluminium" (title)'))).toContain('| The frame is cast iron.');
    expect(lines.some((line) => /\| \[p\/e; Handbook, page 4\]/.test(line))).toBe(true);
  });

  it('tells what was held against what', () => {
    expect(text()).toMatch(/^Claims to be +Model M$/m);
    expect(text()).toMatch(/^Serial +K 20-417: fits$/m);
    expect(text()).toMatch(/^Held against +p, edition 3 \(not sealed\)$/m);
    expect(text()).toMatch(/^Price +1340\.00 \(currency not settled\), asked$/m);
  });

  it('asks each question once', () => {
    const twice = text({ findings: [finding({ id: 'a' }), finding({ id: 'b' })] });
    expect(twice.match(/Does a magnet stick to the bed\?/g)).toHaveLength(1);
  });

  it('tells what is so of a kind, where no model is known', () => {
    const follows = [{ attribute: 't/bobbin', name: 'bobbin', text: 'long', usually: false, source: null }];
    const kind = { model: 't/k', label: 'A kind', kind: 'type' as const, restsOn: null, for: [], against: [], follows };
    expect(text({ likely: [{ ...kind, probability: 0.7 }], claimedModel: null })).toMatch(/A kind\n-+\nbobbin {2}long/);
    expect(text({ likely: [{ ...kind, probability: 0.2 }], claimedModel: null })).not.toContain('bobbin');
    expect(text({ likely: [{ ...kind, probability: 0.7 }], claimedModel: 'c/m' })).not.toContain('bobbin');
  });

  it('tells what it most likely is, and what would settle it', () => {
    const lists = { for: [], against: [], follows: [] };
    const one = { model: 'p/m', label: 'Model M', kind: 'model' as const, probability: 0.8, restsOn: null, ...lists };
    const shown = text({ likely: [one] });
    expect(shown).toMatch(/^Most likely\n-+\n 80 % {2}Model M$/m);
    expect(shown).toMatch(/^What would settle it$/m);
    expect(text()).not.toContain('Most likely');
  });

  it('begins with what does not hold', () => {
    const mixed = text({
      findings: [finding({ standing: 'agrees', text: 'GOOD' }), finding({ standing: 'disproved', text: 'BAD' })],
    });
    expect(mixed.indexOf('BAD')).toBeLessThan(mixed.indexOf('GOOD'));
    expect(mixed).toContain("1 statement doesn't hold, 1 agrees with what is known.");
  });

  it('says so where nothing could be held against anything', () => {
    expect(text({ findings: [] })).toContain('Nothing in this advert could be held against');
  });

  it('keeps to the width and lets no text of the advert move the cursor', () => {
    const hostile = `\u001b[2J\u202e${'very long words about nothing at all '.repeat(20)}${'x'.repeat(300)}`;
    for (const width of [72, 80, 100]) {
      const out = text(
        {
          listing: { ...auditOf().listing, title: hostile, condition: hostile, place: hostile },
          findings: [
            finding({
              text: hostile,
              ask: hostile,
              said: [{ field: 'description', quote: hostile, start: 0, end: hostile.length }],
              known: [{ pack: 'p', entry: 'e', text: hostile, source: hostile }],
            }),
          ],
        },
        width,
      );
      expect(out).not.toMatch(/[\u001b\u202e]/);
      for (const line of out.split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(width);
    }
  });

  it('shows a band with what stands behind it', () => {
    const factors = [
      { pack: 'p', entry: 'f', kind: 'completeness' as const, text: 'without its pedal', times: 0.8, source: null },
    ];
    const price: PriceReport = { ...NO_BAND, standing: 'above', ratio: 2.5, probability: 0.97, band: BAND, factors };
    const out = text({ price }).replace(/\s+/g, ' ');
    expect(out).toContain('Above the band');
    expect(out).toContain('between 80 and 260 GBP, half of them below 141.');
    expect(out).toContain('2.50 times the middle');
    expect(out).toContain('The middle half: 110 to 185.');
    expect(out).toContain('7 observations; all that is known is worth 4.3');
    expect(out).toContain('without its pedal: 0.8 times the price');
  });

  it('says why a price can’t be compared', () => {
    const price: PriceReport = { ...NO_BAND, standing: 'not-comparable', why: 'bid', band: BAND };
    expect(text({ price }).replace(/\s+/g, ' ')).toContain('where an auction starts');
  });
});
