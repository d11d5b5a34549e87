import { entriesOf, isFound, isMeant, type MarketPage, ofStanding } from './market';
import type { Count } from './totals';

export interface MarketTotals {
  pages: number;
  /** Of what labels ask for, how much is there. */
  counts: (Count & { name: string })[];
  /** "Doesn't hold", safety notes and photographs that no label has, each with its page. */
  unexpected: string[];
}

/** Counts over the pages of the invented market what is found of what was expected, and what was found beside it. */
export function marketTotals(pages: readonly MarketPage[]): MarketTotals {
  const counts = new Map<string, Count>();
  const unexpected: string[] = [];
  const tally = (name: string, hit: boolean): void => {
    const count = counts.get(name) ?? { hits: 0, of: 0 };
    counts.set(name, { hits: count.hits + Number(hit), of: count.of + 1 });
  };
  for (const page of pages) {
    const { expected, name } = page;
    const disproved = ofStanding(page, 'disproved');
    for (const wanted of expected.disproved)
      tally('doesn’t hold: found of the expected ones', isFound(disproved, wanted));
    for (const wanted of expected.agrees ?? []) tally('agrees', isFound(ofStanding(page, 'agrees'), wanted));
    for (const wanted of expected.minded ?? []) tally('minded', isFound(ofStanding(page, 'caution'), wanted));
    for (const wanted of expected.unproved ?? []) tally('not shown yet', isFound(ofStanding(page, 'unproved'), wanted));
    const asked = entriesOf(page, 'missing');
    for (const entry of expected.asked ?? []) tally('photographs asked for', asked.includes(entry));
    const cautions = entriesOf(page, 'caution');
    for (const entry of expected.cautions ?? []) tally('safety notes', cautions.includes(entry));
    for (const finding of disproved) {
      const isExpected = expected.disproved.some((wanted) => isMeant(finding, wanted));
      tally('doesn’t hold: expected ones among those found', isExpected);
      if (!isExpected) unexpected.push(`${name}: ${finding.id}`);
    }
    for (const [wanted, found] of [
      [expected.cautions, cautions],
      [expected.asked, asked],
    ] as const)
      if (wanted) unexpected.push(...found.filter((one) => !wanted.includes(one)).map((one) => `${name}: ${one}`));
  }
  return { pages: pages.length, counts: [...counts].map(([name, count]) => ({ name, ...count })), unexpected };
}
