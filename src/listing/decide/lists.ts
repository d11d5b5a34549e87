import { fold } from '../../text/fold';
import { cutTo } from '../tidy';
import type { Candidate, FieldNote } from '../types';
import { rounded } from './groups';
import type { SettledText } from './words';

const ROWS_MOST = 60;
const DETAILS_MOST = 20_000;
const SERIALS_MOST = 10;
const SERIAL_MOST = 60;

export interface SettledList {
  values: string[];
  note: FieldNote;
}

const byWeight = (a: Candidate, b: Candidate): number => b.weight - a.weight;
const labelOf = (row: string): string => fold(row.slice(0, Math.max(0, row.indexOf(':')))).text.trim();

/** The labelled rows, one per line: those shown on the page, then what only machines are told. */
export function settleDetails(candidates: Candidate[]): SettledText | null {
  const rows = candidates.map((candidate) => ({ ...candidate, value: candidate.value.replaceAll('\n', ' ') }));
  const kept: Candidate[] = [];
  for (const isShown of [true, false]) {
    for (const row of rows) {
      if ((row.source === 'page') !== isShown || kept.length >= ROWS_MOST) continue;
      const isKnown = isShown
        ? kept.some(({ value }) => value === row.value)
        : kept.some(
            ({ value, source }) =>
              value === row.value || (source !== row.source && labelOf(value) === labelOf(row.value)),
          );
      if (!isKnown) kept.push(row);
    }
  }
  const [first] = kept;
  if (!first) return null;
  const text = cutTo(kept.map(({ value }) => value).join('\n'), DETAILS_MOST);
  return { text, note: { source: first.source, confidence: rounded(first.weight), alternatives: [] } };
}

/** Serials of fields of their own, as written, each once. "See photo" is none. */
export function settleSerials(candidates: Candidate[]): SettledList | null {
  const sorted = candidates.filter(({ value }) => value.length <= SERIAL_MOST && /\d/.test(value)).sort(byWeight);
  const values: string[] = [];
  const seen = new Set<string>();
  for (const { value } of sorted) {
    const normal = fold(value).text.replace(/[^\p{L}\p{N}]/gu, '');
    if (seen.has(normal) || values.length >= SERIALS_MOST) continue;
    seen.add(normal);
    values.push(value);
  }
  const [first] = sorted;
  if (!first) return null;
  // Two serials are no contradiction by themselves (machine and motor): the audit looks at each.
  return { values, note: { source: first.source, confidence: rounded(first.weight), alternatives: [] } };
}
