import type { Candidate } from '../types';
import { readDate } from './dates';
import { grouped, noteOf } from './groups';
import { dayBefore, daysAgo } from './relative-date';
import type { SettledText } from './words';

/** The day the advert was placed. `asOf`: the day on which it was read, which "3 days ago" is counted from, or null. */
export function settleDate(candidates: Candidate[], language: string | null, asOf: string | null): SettledText | null {
  const dated: Candidate[] = [];
  for (const candidate of candidates) {
    const days = asOf === null ? null : daysAgo(candidate.value, language);
    const value = readDate(candidate.value, language) ?? (days === null ? null : dayBefore(asOf!, days));
    if (value) dated.push({ ...candidate, value });
  }
  const [winner, ...losers] = grouped(dated, ({ value }) => value);
  const [best] = winner?.members ?? [];
  return winner && best ? { text: best.value, note: noteOf(winner, best.source, losers) } : null;
}
