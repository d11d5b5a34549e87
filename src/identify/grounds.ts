import type { Identified } from './identify';
import { type Piece, posterior } from './posterior';

/** A piece of evidence with what it weighs for one hypothesis against another, in bits; below 0 it speaks against. */
export interface Weighed {
  piece: Piece;
  bits: number;
}

/**
 * What each piece weighs for a hypothesis against its rival: by how much the log-odds (base 2) of the two would be
 * smaller without it. Pieces that meet in one belief of the seller's share what they weigh, so these don't add up to the
 * whole.
 * @returns for each pair the pieces, the weightiest first
 */
export function weighed(
  { evidence, posterior: whole }: Identified,
  pairs: readonly { own: number; rival: number }[],
): Weighed[][] {
  const out: Weighed[][] = pairs.map(() => []);
  for (const piece of piecesOf(evidence)) {
    const { logs } = posterior(evidence, piece);
    pairs.forEach(({ own, rival }, i) => {
      const change = whole.logs[own]! - whole.logs[rival]! - (logs[own]! - logs[rival]!);
      out[i]!.push({ piece, bits: change / Math.LN2 });
    });
  }
  return out.map((list) => list.sort((a, b) => Math.abs(b.bits) - Math.abs(a.bits)));
}

function piecesOf({ attributes, names, serial, stated }: Identified['evidence']): Piece[] {
  return [
    { kind: 'prior' },
    ...(serial ? [{ kind: 'serial' } as const] : []),
    ...(names.any ? [{ kind: 'name' } as const] : []),
    ...attributes.flatMap(({ attribute, claimed, seen }): Piece[] => [
      ...(claimed ? [{ kind: 'claimed' as const, attribute }] : []),
      ...(seen ? [{ kind: 'seen' as const, attribute }] : []),
    ]),
    ...[...stated.keys()].map((attribute): Piece => ({ kind: 'stated', attribute })),
  ];
}
