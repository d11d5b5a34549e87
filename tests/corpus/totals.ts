import type { Knowledge } from '../../src/pack/knowledge';
import { auditLabelled, disproved, type Labelled, matches } from './labelled';

export interface Count {
  hits: number;
  of: number;
}

export interface Totals {
  adverts: number;
  honest: number;
  /** Honest adverts without any false "doesn't hold". */
  honestClean: Count;
  kind: Count;
  claimedModel: Count;
  serial: Count;
  price: Count;
  precision: Count;
  recall: Count;
  /** Per check: [true found, found], [true found, wanted]. */
  checks: Map<string, { found: Count; wanted: Count }>;
  misses: string[];
}

/** Runs the audit over labelled adverts and counts. `misses` names each disagreement, for the half that is tuned on. */
export function totalsOf(adverts: readonly Labelled[], knowledge: Knowledge): Totals {
  const count = (): Count => ({ hits: 0, of: 0 });
  const totals: Totals = {
    adverts: adverts.length,
    honest: adverts.filter((advert) => advert.honest).length,
    honestClean: count(),
    kind: count(),
    claimedModel: count(),
    serial: count(),
    price: count(),
    precision: count(),
    recall: count(),
    checks: new Map(),
    misses: [],
  };
  const tally = (to: Count, hit: boolean, miss: string): void => {
    to.of++;
    if (hit) to.hits++;
    else totals.misses.push(miss);
  };
  const ofCheck = (check: string) => {
    const there = totals.checks.get(check) ?? { found: count(), wanted: count() };
    totals.checks.set(check, there);
    return there;
  };
  for (const advert of adverts) {
    const { gold, id } = advert;
    const result = auditLabelled(advert, knowledge);
    const found = disproved(result);
    const note = (what: string, want: unknown, got: unknown): string =>
      `${id} ${what}: wanted ${String(want)}, got ${String(got)}`;
    tally(totals.kind, result.kind === gold.kind, note('kind', gold.kind, result.kind));
    tally(
      totals.claimedModel,
      result.claimedModel === gold.claimedModel,
      note('model', gold.claimedModel, result.claimedModel),
    );
    tally(
      totals.serial,
      result.serial.verdict === gold.serialVerdict,
      note('serial', gold.serialVerdict, result.serial.verdict),
    );
    tally(
      totals.price,
      result.price.standing === gold.priceStanding,
      note('price', gold.priceStanding, result.price.standing),
    );
    let clean = true;
    for (const finding of found) {
      const right = gold.disproved.some((wanted) => matches(finding, wanted));
      clean &&= right;
      const quotes = finding.said.map((said) => said.quote).join(' + ');
      tally(totals.precision, right, `${id} false: ${finding.check} ${finding.attribute ?? '-'} “${quotes}”`);
      const { found: per } = ofCheck(finding.check);
      per.of++;
      if (right) per.hits++;
    }
    for (const wanted of gold.disproved) {
      const hit = found.some((finding) => matches(finding, wanted));
      tally(totals.recall, hit, `${id} missed: ${wanted.check} ${wanted.attribute ?? '-'} “${wanted.quote}”`);
      const { wanted: per } = ofCheck(wanted.check);
      per.of++;
      if (hit) per.hits++;
    }
    if (advert.honest) {
      totals.honestClean.of++;
      if (clean) totals.honestClean.hits++;
    }
  }
  return totals;
}
