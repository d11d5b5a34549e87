import type { Reading } from '../claims/reading';
import type { Knowledge } from '../pack/knowledge';
import { LIMIT_WORD } from './assumptions';
import type { Field } from './field';
import { rangesOf } from './measure-likelihood';
import { attributeMeant } from './said';

/** The key by which what such words say of an attribute stands beside what is measured of it. */
export const limitKey = (attribute: string): string => `${attribute} limit`;

/**
 * Words that limit a measure ("lightweight": at most so many kg), as natural logarithms for each hypothesis. They are
 * said more readily of what keeps the limit, and all the same of much that doesn't.
 */
export function limitLogs(reading: Reading, field: Field, knowledge: Knowledge): Map<string, Float64Array> {
  const limits = new Map<string, Map<string, { from: number; to: number }>>();
  for (const { entry, pack, subject, stance } of reading.wordings) {
    const { means } = entry;
    if (subject !== 'this' || stance !== 'says' || !means || !('attribute' in means) || 'is' in means) continue;
    const attribute = attributeMeant(means.attribute, pack, knowledge);
    if (!attribute) continue;
    const from = means.atLeast ?? Number.NEGATIVE_INFINITY;
    const to = means.atMost ?? Number.POSITIVE_INFINITY;
    const there = limits.get(attribute.ref) ?? new Map<string, { from: number; to: number }>();
    limits.set(attribute.ref, there.set(`${from} ${to}`, { from, to }));
  }
  const out = new Map<string, Float64Array>();
  for (const [ref, all] of limits) {
    const ranges = rangesOf(field, ref);
    const logOf = (range: { from: number; to: number } | null): number => {
      let log = 0;
      for (const limit of all.values()) {
        const kept = range ? within(range, limit) : 0.5;
        log += Math.log(kept * LIMIT_WORD.kept + (1 - kept) * LIMIT_WORD.passed);
      }
      return log;
    };
    out.set(limitKey(ref), Float64Array.from(ranges, logOf));
  }
  return out;
}

/** How much of the range keeps the limit, 0 to 1. */
function within(range: { from: number; to: number }, limit: { from: number; to: number }): number {
  const from = Math.max(range.from, limit.from);
  const to = Math.min(range.to, limit.to);
  if (to < from) return 0;
  return range.to > range.from ? (to - from) / (range.to - range.from) : 1;
}
