import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/audit/types';
import { compile } from '../../src/engine';
import { entriesOf, isFound, type MarketPage, marketPages, ofStanding } from './market';
import { marketTotals } from './market-totals';
import { allPacks } from './packs';

/**
 * The invented market: for each page what a knowledgeable person would say of it, beside what the engine says. It holds
 * the demonstration together; it is no evidence of the engine's accuracy on other adverts.
 */
const pages = marketPages(compile(allPacks()));

/** Two ways of writing an amount ("140", "140.00") are one price. */
function inNumbers(price: unknown): unknown {
  const { amount, ...rest } = (price ?? {}) as { amount?: string };
  return amount === undefined ? null : { ...rest, amount: Number(amount) };
}

const brief = (finding: Finding): string =>
  `${finding.check} ${finding.attribute ?? '-'} ${finding.said.map((said) => said.quote).join(' + ')}`;

describe.each(pages)('$name', (page: MarketPage) => {
  const { expected, listing, result } = page;

  it('reads as a person reads it', () => {
    const { photosCount, ...fields } = expected.listing ?? {};
    for (const [field, value] of Object.entries(fields)) {
      const read = listing[field as keyof typeof listing];
      expect(field === 'price' ? inNumbers(read) : read, field).toEqual(field === 'price' ? inNumbers(value) : value);
    }
    if (photosCount !== undefined) expect(listing.photos).toHaveLength(photosCount);
  });

  it('is of its kind, and offers what it offers', () => {
    expect(result.kind).toBe(expected.kind);
    expect(result.claimedModel).toBe(expected.claimedModel);
    if (expected.serialVerdict) expect(result.serial.verdict).toBe(expected.serialVerdict);
    if (expected.priceStanding) expect(result.price.standing).toBe(expected.priceStanding);
  });

  it('all that doesn’t hold is found, and nothing else', () => {
    const disproved = ofStanding(page, 'disproved');
    const extra = disproved.filter((finding) => !expected.disproved.some((wanted) => isFound([finding], wanted)));
    expect(extra.map(brief)).toEqual([]);
    expect(expected.disproved.filter((wanted) => !isFound(disproved, wanted))).toEqual([]);
  });

  it('what agrees, what is open, what to mind and the cautions are there', () => {
    for (const [standing, wanted] of [
      ['agrees', expected.agrees],
      ['caution', expected.minded],
      ['unproved', expected.unproved],
    ] as const) {
      const found = ofStanding(page, standing);
      expect((wanted ?? []).filter((one) => !isFound(found, one))).toEqual([]);
    }
    if (expected.cautions) expect(entriesOf(page, 'caution').sort()).toEqual([...expected.cautions].sort());
  });

  it('is asked for what would tell its kind, and belongs to it', () => {
    if (expected.asked) expect(entriesOf(page, 'missing')).toEqual(expected.asked);
    if (!expected.likely) return;
    const first = result.likely[0]?.model?.split('/')[1];
    expect(expected.likely.length === 0 ? [] : expected.likely).toEqual(
      first === undefined ? [] : expect.arrayContaining([first]),
    );
  });

  it('every quote is the text between its offsets', () => {
    for (const finding of result.findings)
      for (const { field, quote, start, end } of finding.said) {
        if (field === 'serials') expect(listing.serials).toContain(quote);
        else expect((field === 'price' ? listing.priceText : (listing[field] ?? '')).slice(start, end)).toBe(quote);
      }
  });
});

it('the totals that are printed count what the tests above hold', () => {
  const totals = marketTotals(pages);
  expect(totals.pages).toBe(pages.length);
  expect(totals.unexpected).toEqual([]);
  for (const { name, hits, of } of totals.counts) expect({ name, hits }).toEqual({ name, hits: of });
});
