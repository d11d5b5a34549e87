import { packTexts as texts } from '../../text/catalogue/pack';
import type { PackIssue } from '../issues';
import { MOST_ISSUES } from '../issues';
import type { Pack } from '../schema/index';
import { formText, numberInTable } from '../serial-form';

const COLUMNS = ['first', 'last', 'models', 'year', 'date', 'place', 'source'] as const;

/** Columns of one length, schemes that are there, numbers of their form, first no later than last. */
export function checkRuns(pack: Pack): PackIssue[] {
  if (!pack.serials) return [];
  const { schemes, runs } = pack.serials;
  const issues: PackIssue[] = [];
  const length = runs.scheme.length;
  for (const column of COLUMNS) {
    const there = runs[column]?.length;
    if (there !== undefined && there !== length)
      issues.push({
        path: `serials.runs.${column}`,
        what: texts.what.length(there),
        expected: texts.expected.sameLength(length),
      });
  }
  schemes.forEach(({ digits }, i) => {
    if (typeof digits !== 'number' && digits[0] > digits[1])
      issues.push({
        path: `serials.schemes[${i}].digits`,
        what: texts.what.order(String(digits[0]), String(digits[1])),
        expected: texts.expected.ordered,
      });
  });
  if (issues.length > 0) return issues;
  const byId = new Map(schemes.map((scheme) => [scheme.id, scheme]));
  for (let i = 0; i < length && issues.length < MOST_ISSUES; i++) {
    const id = runs.scheme[i]!;
    const scheme = byId.get(id);
    if (!scheme) {
      issues.push({
        path: `serials.runs.scheme[${i}]`,
        what: texts.what.unknown(id),
        expected: texts.expected.knownEntry(texts.parts.schemes),
      });
      continue;
    }
    const first = numberInTable(scheme, runs.first[i]!);
    const last = numberInTable(scheme, runs.last[i]!);
    for (const [column, number] of [
      ['first', first],
      ['last', last],
    ] as const)
      if (number === null)
        issues.push({
          path: `serials.runs.${column}[${i}]`,
          what: texts.what.is(JSON.stringify(runs[column][i])),
          expected: texts.expected.schemeForm(formText(scheme)),
        });
    if (first !== null && last !== null && first > last)
      issues.push({
        path: `serials.runs.first[${i}]`,
        what: texts.what.order(runs.first[i]!, runs.last[i]!),
        expected: texts.expected.ordered,
      });
  }
  return issues;
}
