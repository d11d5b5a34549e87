import type { Reading, YearClaim } from '../claims/reading';
import type { Run } from '../pack/serials/run';

/** Blocks were not used up in the year they were allotted: a machine may be some years younger than its number. */
export const STOCK_YEARS = 4;
/** What "circa" allows on either side. */
const CIRCA_YEARS = 5;

/** What the advert says in its own name of when the thing was made. */
export function yearsClaimed(reading: Reading): YearClaim[] {
  return reading.years.filter(
    (year) => year.kind === 'made' && year.stance === 'says' && year.subject === 'this' && !year.aside,
  );
}

/**
 * The years claimed that fit none of the runs. A date is the allotment's: made before it can't be, made some years
 * after can.
 */
export function yearsDisagree(runs: readonly Run[], reading: Reading): YearClaim[] {
  const dated = runs.filter((run) => run.year !== null);
  if (dated.length === 0 || dated.length < runs.length) return [];
  return yearsClaimed(reading).filter((claim) => dated.every((run) => !canBe(claim, run.year!)));
}

export function yearsAgree(runs: readonly Run[], reading: Reading): YearClaim[] {
  return yearsClaimed(reading).filter((claim) => runs.some((run) => run.year !== null && canBe(claim, run.year)));
}

/** Years by whatever word the advert names that fit, beside ones that don't: of the two they are more likely the year made. */
export function yearsBesides(runs: readonly Run[], reading: Reading): YearClaim[] {
  return reading.years.filter(
    (claim) =>
      (claim.kind === 'made' || claim.kind === 'unknown') &&
      claim.stance === 'says' &&
      claim.subject === 'this' &&
      claim.to - claim.from <= LONGEST_SPAN &&
      runs.some((run) => run.year !== null && canBe(claim, run.year)),
  );
}

/** "Before 1960" fits nearly everything. */
const LONGEST_SPAN = 20;

function canBe(claim: YearClaim, allotted: number): boolean {
  const slack = claim.approximate ? CIRCA_YEARS : 0;
  return claim.to + slack >= allotted && claim.from - slack <= allotted + STOCK_YEARS;
}
