import { COPIES } from './assumptions';
import { beliefsOf } from './beliefs';
import type { Evidence } from './evidence';
import type { Rows } from './leaf-tables';
import { normalised } from './log-space';

/**
 * One piece of evidence: what can be left out to see what it weighs. "claimed" and "seen" are of one attribute, "stated"
 * is a measure's ref, "year" or "place".
 */
export type Piece = { kind: 'prior' | 'serial' | 'name' } | { kind: 'claimed' | 'seen' | 'stated'; attribute: string };

export interface Posterior {
  /** Of each hypothesis, as shares of one whole. */
  shares: Float64Array;
  /** Natural logarithms of prior times likelihood. */
  logs: Float64Array;
  /** How likely it is, if it is this one, that the advert's list was copied from another model's. */
  copied: Float64Array;
}

/**
 * Which one it is, by Bayes' theorem over models, types and "none".
 *
 * Problem: what a seller claims is not independent. One who takes a thing for another model copies that one's whole
 * list, so ten wrong features weigh no more than one wrong belief.
 * Method: for what he takes it is a hidden variable B. Given B and what it truly is (M), the pieces are independent:
 *   P(advert, seen | M) = P(serial | M) * sum over B of P(B | M) P(names | B) P(list | B, M) P(seen | M)
 * where the list is B's if he copies it, else what M shows. Where he describes M itself, words and what is seen are of
 * one thing: they meet in the value that this very machine has. Sums over B are taken by groups (see Beliefs), so that
 * the work grows with the number of models and not with its square. Exact: nothing is pruned.
 */
export function posterior(evidence: Evidence, without?: Piece): Posterior {
  const { field } = evidence;
  const size = field.hypotheses.length;
  const left = remaining(evidence, without);
  const seller = sellersPart(evidence, left, without?.kind === 'name');
  const logs = new Float64Array(size);
  for (let h = 0; h < size; h++) {
    let log = seller.logs[h]!;
    if (without?.kind !== 'prior') log += field.logPrior[h]!;
    if (evidence.serial && without?.kind !== 'serial') log += evidence.serial[h]!;
    logs[h] = log;
  }
  return { shares: normalised(logs), logs, copied: seller.copied };
}

/** Sums of logs per hypothesis: of the list alone, of what was seen alone, and of both of one thing. */
interface Sums {
  list: Float64Array;
  seen: Float64Array;
  both: Float64Array;
}

function remaining({ field, attributes, stated }: Evidence, without?: Piece): Sums {
  const size = field.hypotheses.length;
  const sums: Sums = { list: new Float64Array(size), seen: new Float64Array(size), both: new Float64Array(size) };
  const left = (kind: Piece['kind'], attribute: string): boolean =>
    !(without && without.kind === kind && 'attribute' in without && without.attribute === attribute);
  for (const one of attributes) {
    const list = left('claimed', one.attribute) && one.claimed !== null;
    const seen = left('seen', one.attribute) && one.seen !== null;
    if (list) addRows(sums.list, one.rows, one.claimedLogs);
    if (seen) addRows(sums.seen, one.rows, one.seenLogs);
    if (list || seen) addRows(sums.both, one.rows, list && seen ? one.bothLogs : list ? one.claimedLogs : one.seenLogs);
  }
  for (const [key, logs] of stated) {
    if (!left('stated', key)) continue;
    for (let i = 0; i < size; i++) {
      sums.list[i]! += logs[i]!;
      sums.both[i]! += logs[i]!;
    }
  }
  return sums;
}

function addRows(to: Float64Array, { of }: Rows, logs: Float64Array): void {
  for (let i = 0; i < to.length; i++) to[i]! += logs[of[i]!]!;
}

/** log P(names, list, seen | M) and the share of it in which the list is another model's. */
function sellersPart(
  { field, names }: Evidence,
  { list, seen, both }: Sums,
  nameless: boolean,
): Pick<Posterior, 'logs' | 'copied'> {
  const beliefs = beliefsOf(field);
  const size = field.hypotheses.length;
  // For each B that can be named: how likely the names are, and the names with its list (scaled by the likeliest list).
  const named = new Float64Array(size);
  const listed = new Float64Array(size);
  // Where nothing can be named, nothing is copied.
  let most = beliefs.nameable.length > 0 ? Number.NEGATIVE_INFINITY : 0;
  for (const b of beliefs.nameable) if (list[b]! > most) most = list[b]!;
  for (const b of beliefs.nameable) {
    named[b] = nameless ? 1 : names.takenFor[b]!;
    listed[b] = named[b]! * Math.exp(list[b]! - most);
  }
  const { weight, groups } = beliefs;
  const allNamed = weightedSum(named, weight, beliefs.nameable);
  const allListed = weightedSum(listed, weight, beliefs.nameable);
  const groupNamed = groups.map((group) => weightedSum(named, weight, group));
  const groupListed = groups.map((group) => weightedSum(listed, weight, group));
  const logs = new Float64Array(size);
  const copied = new Float64Array(size);
  for (let m = 0; m < size; m++) {
    const any = beliefs.anyRate[m]!;
    // A model isn't taken for itself by mistake. The weight of what can't be named is 0.
    const ownNamed = weight[m]! * named[m]!;
    const ownListed = weight[m]! * listed[m]!;
    let mistaken = any * Math.max(0, allNamed - ownNamed);
    let copying = any * Math.max(0, allListed - ownListed);
    const group = beliefs.group[m]!;
    if (group >= 0) {
      mistaken += beliefs.groupRate[m]! * Math.max(0, groupNamed[group]! - ownNamed);
      copying += beliefs.groupRate[m]! * Math.max(0, groupListed[group]! - ownListed);
    }
    for (const { taken, rate } of beliefs.rates[m]!) {
      mistaken += rate * named[taken]!;
      copying += rate * listed[taken]!;
    }
    const vague = beliefs.vague[m]! * (nameless ? 1 : names.vague[m]!);
    const own = vague + beliefs.right[m]! * named[m]! + (1 - COPIES) * mistaken;
    // log(own exp(both) + copying exp(most + seen)), the larger exponent taken out.
    const ahead = most + seen[m]! - both[m]!;
    const base = ahead > 0 ? both[m]! + ahead : both[m]!;
    const described = ahead > 0 ? own * Math.exp(-ahead) : own;
    const copies = ahead > 0 ? COPIES * copying : COPIES * copying * Math.exp(ahead);
    logs[m] = base + Math.log(described + copies);
    copied[m] = copies / (described + copies);
  }
  return { logs, copied };
}

function weightedSum(values: Float64Array, weight: Float64Array, of: readonly number[]): number {
  let sum = 0;
  for (const i of of) sum += weight[i]! * values[i]!;
  return sum;
}
