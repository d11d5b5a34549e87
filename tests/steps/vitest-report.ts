import type { Tally } from './tally';

/** The part of Vitest's JSON report that is counted. */
export interface VitestReport {
  testResults: {
    name: string;
    status: string;
    message?: string;
    assertionResults: { status: string; fullName: string }[];
  }[];
}

/**
 * Counts a report. A file that could not even be loaded counts as one failure, and so does a run that ended badly
 * though no test of it failed (an error outside of any test).
 */
export function countReport(report: VitestReport, endedWell: boolean, root: string): Tally {
  const tally: Tally = { passed: 0, failed: 0, skipped: 0, notes: [] };
  for (const file of report.testResults) {
    const name = file.name.replace(root, '').replace(/^[\\/]/, '');
    for (const { status, fullName } of file.assertionResults) {
      if (status === 'passed') tally.passed += 1;
      else if (status === 'failed') tally.failed += 1;
      else tally.skipped += 1;
      if (status !== 'passed') tally.notes.push(`${status}: ${name}: ${fullName}`);
    }
    if (file.status === 'failed' && !file.assertionResults.some(({ status }) => status === 'failed')) {
      tally.failed += 1;
      tally.notes.push(`failed: ${name}: ${(file.message ?? '').split('\n')[0] || 'could not be run'}`);
    }
  }
  if (!endedWell && tally.failed === 0) {
    tally.failed += 1;
    tally.notes.push('failed: the run ended badly although no test failed');
  }
  return tally;
}
