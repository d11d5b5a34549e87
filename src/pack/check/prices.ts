import { packTexts as texts } from '../../text/catalogue/pack';
import type { PackIssue } from '../issues';
import type { Pack } from '../schema/index';

export function checkPrices(pack: Pack): PackIssue[] {
  const issues: PackIssue[] = [];
  const grades = new Set(pack.prices?.grades?.map((grade) => grade.id));
  pack.prices?.bands?.forEach((band, index) => {
    const mid = band.mid ?? Math.sqrt(band.low * band.high);
    if (!(band.low <= mid && mid <= band.high && band.low < band.high))
      issues.push({
        path: `prices.bands[${index}]`,
        what: texts.what.order(String(band.low), String(band.high)),
        expected: texts.expected.lowHigh,
      });
    if (band.grade !== undefined && !grades.has(band.grade))
      issues.push({
        path: `prices.bands[${index}].grade`,
        what: texts.what.unknown(band.grade),
        expected: texts.expected.knownEntry(texts.parts.grades),
      });
  });
  return issues;
}
