import type { Candidate, FieldNote, SourceName } from '../types';

/** Candidates of one field that say the same. */
export interface Group {
  /** Most trusted first. */
  members: Candidate[];
  /** 0 to 1: how much speaks for it, sources counted once each as if they erred independently. */
  score: number;
}

/** Puts candidates together that `key` makes equal; best group first. */
export function grouped(candidates: Candidate[], key: (candidate: Candidate) => string): Group[] {
  const groups = new Map<string, Candidate[]>();
  for (const candidate of candidates) {
    const its = key(candidate);
    const members = groups.get(its);
    if (members) members.push(candidate);
    else groups.set(its, [candidate]);
  }
  return [...groups.values()].map(scored).sort((a, b) => b.score - a.score);
}

function scored(members: Candidate[]): Group {
  const bySource = new Map<SourceName, number>();
  for (const { source, weight } of members) bySource.set(source, Math.max(weight, bySource.get(source) ?? 0));
  let doubt = 1;
  for (const weight of bySource.values()) doubt *= 1 - Math.min(weight, 0.97);
  return { members: [...members].sort((a, b) => b.weight - a.weight), score: 1 - doubt };
}

/** The note of a decided field: less sure, the more speaks for another value. */
export function noteOf(winner: Group, source: SourceName, losers: Group[]): FieldNote {
  const rival = losers[0]?.score ?? 0;
  return {
    source,
    confidence: rounded(winner.score * (1 - rival / 2)),
    alternatives: losers
      .slice(0, 8)
      .map(({ members: [best] }) => ({ value: best!.value.slice(0, 500), source: best!.source })),
  };
}

export const rounded = (value: number): number => Math.round(Math.max(0, Math.min(1, value)) * 100) / 100;
