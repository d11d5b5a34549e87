import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import type { Finding } from '../../src/audit/types';
import { audit, compile, parsePack, readListing } from '../../src/engine';

/**
 * The invented market: for each page what a knowledgeable person would say of it, beside what the engine says. It holds
 * the demonstration together; it is no evidence of the engine's accuracy on other adverts.
 */
const MARKET = new URL('../../fixtures/market/', import.meta.url);
const AS_OF = '2026-11-25';

interface Expected {
  listing?: Record<string, unknown> & { photosCount?: number };
  kind: string;
  claimedModel: string | null;
  serialVerdict?: string;
  disproved: { check: string; attribute: string | null; quote: string }[];
  agrees?: { check: string; attribute: string | null; quote: string }[];
  minded?: { check: string; attribute: string | null; quote: string }[];
  cautions?: string[];
  priceStanding?: string;
}

const pack = (url: URL) => {
  const { pack: read, issues } = parsePack(readFileSync(url, 'utf8'));
  if (!read) throw new Error(JSON.stringify(issues));
  return read;
};
const PACKS = new URL('../../fixtures/packs/', import.meta.url);
const knowledge = compile([
  pack(new URL('../../src/pack/shipped/trade.json', import.meta.url)),
  ...readdirSync(PACKS)
    .filter((file) => file.endsWith('.json'))
    .map((file) => pack(new URL(file, PACKS))),
]);

/** The labels of a page, and of what it shows after a press ("-second"). */
const LABELS = /^expected(-\w+)?\.json$/;
const pages = readdirSync(MARKET, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .flatMap(({ name }) =>
    readdirSync(new URL(`${name}/`, MARKET))
      .filter((file) => LABELS.test(file))
      .map((file) => LABELS.exec(file)?.[1] ?? '')
      .map((shows) => ({ name: `${name}${shows}`, page: name, shows })),
  );

function read(page: string, shows: string) {
  const url = `https://market.example/${page}/`;
  // Where a script of the page puts the content in, its settled form stands beside it.
  const settled = new URL(`${page}/settled${shows}.html`, MARKET);
  const file = existsSync(settled) ? settled : new URL(`${page}/page.html`, MARKET);
  const { document } = new JSDOM(readFileSync(file), { url }).window;
  return readListing(document, url);
}

/** Two ways of writing an amount ("140", "140.00") are one price. */
function inNumbers(price: unknown): unknown {
  const { amount, ...rest } = (price ?? {}) as { amount?: string };
  return amount === undefined ? null : { ...rest, amount: Number(amount) };
}

const brief = (finding: Finding): string =>
  `${finding.check} ${finding.attribute ?? '-'} ${finding.said.map((said) => said.quote).join(' + ')}`;

const isFound = (
  findings: readonly Finding[],
  wanted: { check: string; attribute: string | null; quote: string },
): boolean =>
  findings.some(
    (finding) =>
      finding.check === wanted.check &&
      (wanted.attribute === null || finding.attribute === wanted.attribute) &&
      finding.said.some(
        ({ quote }) =>
          quote.toLowerCase().includes(wanted.quote.toLowerCase()) ||
          wanted.quote.toLowerCase().includes(quote.toLowerCase()),
      ),
  );

describe.each(pages)('$name', ({ page, shows }) => {
  const expected = JSON.parse(readFileSync(new URL(`${page}/expected${shows}.json`, MARKET), 'utf8')) as Expected;
  const listing = read(page, shows);
  const result = audit(listing, knowledge, { asOf: AS_OF });

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
    const disproved = result.findings.filter((finding) => finding.standing === 'disproved');
    const extra = disproved.filter((finding) => !expected.disproved.some((wanted) => isFound([finding], wanted)));
    expect(extra.map(brief)).toEqual([]);
    expect(expected.disproved.filter((wanted) => !isFound(disproved, wanted))).toEqual([]);
  });

  it('what agrees, what to mind and the cautions are there', () => {
    const of = (standing: string) => result.findings.filter((finding) => finding.standing === standing);
    expect((expected.agrees ?? []).filter((wanted) => !isFound(of('agrees'), wanted))).toEqual([]);
    expect((expected.minded ?? []).filter((wanted) => !isFound(of('caution'), wanted))).toEqual([]);
    const cautions = result.findings
      .filter((finding) => finding.check === 'caution')
      .map((finding) => finding.known[0]?.entry);
    if (expected.cautions) expect([...cautions].sort()).toEqual([...expected.cautions].sort());
  });

  it('every quote is the text between its offsets', () => {
    for (const finding of result.findings)
      for (const { field, quote, start, end } of finding.said) {
        if (field === 'serials') expect(listing.serials).toContain(quote);
        else expect((field === 'price' ? listing.priceText : (listing[field] ?? '')).slice(start, end)).toBe(quote);
      }
  });
});
