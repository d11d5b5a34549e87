/** What a step of `npm test` came to. */
export interface Tally {
  passed: number;
  failed: number;
  skipped: number;
  /** One line for each failure and each skip. */
  notes: string[];
}

export const passedOne = (): Tally => ({ passed: 1, failed: 0, skipped: 0, notes: [] });
export const failedOne = (note: string): Tally => ({ passed: 0, failed: 1, skipped: 0, notes: [note] });
export const skippedOne = (note: string): Tally => ({ passed: 0, failed: 0, skipped: 1, notes: [`skipped: ${note}`] });

export function sum(tallies: readonly Tally[]): Tally {
  return {
    passed: tallies.reduce((all, each) => all + each.passed, 0),
    failed: tallies.reduce((all, each) => all + each.failed, 0),
    skipped: tallies.reduce((all, each) => all + each.skipped, 0),
    notes: tallies.flatMap((each) => each.notes),
  };
}

/** The last line of a run. */
export function lastLine(all: Tally): string {
  return `${all.passed} passed, ${all.failed} failed, ${all.skipped} skipped`;
}

/** 0 where nothing failed and something passed; on a machine that lands changes (`ci`) a skip counts as a failure. */
export function exitCode(all: Tally, ci: boolean): number {
  return all.failed > 0 || all.passed === 0 || (ci && all.skipped > 0) ? 1 : 0;
}
