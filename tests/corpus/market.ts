import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { JSDOM } from 'jsdom';
import type { Audit, Finding, Standing } from '../../src/audit/types';
import { audit, readListing } from '../../src/engine';
import type { Listing } from '../../src/listing/types';
import type { Knowledge } from '../../src/pack/knowledge';
import { AS_OF } from './labelled';

/** What a knowledgeable person says of a page, see fixtures/market/README.md. */
export interface Expected {
  /** The packs that speak of the page, where they aren't the machine club's and the trade's. */
  packs?: string[];
  listing?: Record<string, unknown> & { photosCount?: number };
  kind: string;
  claimedModel: string | null;
  serialVerdict?: string;
  disproved: Wanted[];
  agrees?: Wanted[];
  minded?: Wanted[];
  unproved?: Wanted[];
  /** Photographs asked for, by their entries. */
  asked?: string[];
  /** The first of the likely ones is one of these; none of them, where nothing can be said. */
  likely?: string[];
  cautions?: string[];
  priceStanding?: string;
}

export interface Wanted {
  check: string;
  attribute: string | null;
  quote: string;
}

export interface MarketPage {
  name: string;
  listing: Listing;
  expected: Expected;
  result: Audit;
}

const MARKET = new URL('../../fixtures/market/', import.meta.url);
/** The labels of a page, and of what it shows after a press ("-second"). */
const LABELS = /^expected(-\w+)?\.json$/;

/** Every page of the invented market with its labels, read and audited. */
export function marketPages(knowledge: Knowledge): MarketPage[] {
  return readdirSync(MARKET, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .flatMap(({ name: page }) =>
      readdirSync(new URL(`${page}/`, MARKET))
        .filter((file) => LABELS.test(file))
        .map((file) => pageOf(page, LABELS.exec(file)?.[1] ?? '', knowledge)),
    );
}

function pageOf(page: string, shows: string, knowledge: Knowledge): MarketPage {
  const url = `https://market.example/${page}/`;
  // Where a script of the page puts the content in, its settled form stands beside it.
  const settled = new URL(`${page}/settled${shows}.html`, MARKET);
  const file = existsSync(settled) ? settled : new URL(`${page}/page.html`, MARKET);
  const { document } = new JSDOM(readFileSync(file), { url }).window;
  const listing = readListing(document, url);
  const expected = JSON.parse(readFileSync(new URL(`${page}/expected${shows}.json`, MARKET), 'utf8')) as Expected;
  return { name: `${page}${shows}`, listing, expected, result: audit(listing, knowledge, { asOf: AS_OF }) };
}

export function ofStanding({ result }: MarketPage, standing: Standing): Finding[] {
  return result.findings.filter((finding) => finding.standing === standing);
}

export function isFound(findings: readonly Finding[], wanted: Wanted): boolean {
  return findings.some((finding) => isMeant(finding, wanted));
}

export function isMeant({ check, attribute, said }: Finding, wanted: Wanted): boolean {
  const words = wanted.quote.toLowerCase();
  return (
    check === wanted.check &&
    (wanted.attribute === null || attribute === wanted.attribute) &&
    said.some(({ quote }) => quote.toLowerCase().includes(words) || words.includes(quote.toLowerCase()))
  );
}

/** The entries of some check's findings, in their order. */
export function entriesOf({ result }: MarketPage, check: string): string[] {
  return result.findings.flatMap((finding) => (finding.check === check ? (finding.known[0]?.entry ?? []) : []));
}
