import { packTexts as texts } from '../../text/catalogue/pack';
import { MOST_ISSUES, type PackIssue } from '../issues';
import type { Pack } from '../schema/index';

/** Bands rise from low over mid to high; series run forward in time. */
export function checkPrices(pack: Pack): PackIssue[] {
  const issues: PackIssue[] = [];
  const add = (path: string, what: string, expected: string): void => {
    if (issues.length < MOST_ISSUES) issues.push({ path, what, expected });
  };
  pack.prices?.bands?.forEach(({ low, mid, high }, i) => {
    if (low >= high) add(`prices.bands[${i}]`, texts.what.order(String(low), String(high)), texts.expected.lowHigh);
    else if (mid !== undefined && (mid < low || mid > high))
      add(`prices.bands[${i}].mid`, texts.what.is(String(mid)), texts.expected.between(String(low), String(high)));
  });
  for (const part of ['index', 'wages'] as const)
    pack.prices?.[part]?.forEach(({ points }, i) => {
      points.forEach(([date], j) => {
        const before = points[j - 1]?.[0];
        // ISO 8601 dates compare as texts; a year alone stands before its months.
        if (before !== undefined && before >= date)
          add(`prices.${part}[${i}].points[${j}]`, texts.what.order(before, date), texts.expected.oldestFirst);
      });
    });
  return issues;
}
