import { COPIES } from './assumptions';
import { beliefsOf } from './beliefs';
import type { AttributeEvidence, Evidence } from './evidence';
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
    if (list) add(sums.list, one.claimedLogs);
    if (seen) add(sums.seen, one.seenLogs);
    if (list || seen) add(sums.both, bothOf(one, list, seen));
  }
  for (const [key, logs] of stated)
    if (left('stated', key)) {
      add(sums.list, logs);
      add(sums.both, logs);
    }
  return sums;
}

function bothOf(one: AttributeEvidence, list: boolean, seen: boolean): Float64Array {
  return list && seen ? one.bothLogs : list ? one.claimedLogs : one.seenLogs;
}

function add(to: Float64Array, what: Float64Array): void {
  for (let i = 0; i < to.length; i++) to[i]! += what[i]!;
}

/** log P(names, list, seen | M) and the share of it in which the list is another model's. */
function sellersPart(
  { field, names }: Evidence,
  { list, seen, both }: Sums,
  nameless: boolean,
): Pick<Posterior, 'logs' | 'copied'> {
  const { hypotheses } = field;
  const beliefs = beliefsOf(field);
  const size = hypotheses.length;
  // For each B that can be named: how likely the names are, and the names with its list (scaled by the likeliest list).
  const named = new Float64Array(size);
  const listed = new Float64Array(size);
  let most = Number.NEGATIVE_INFINITY;
  for (const b of beliefs.nameable) if (list[b]! > most) most = list[b]!;
  for (const b of beliefs.nameable) {
    named[b] = nameless ? 1 : names.takenFor(hypotheses[b]!.model!);
    listed[b] = named[b]! * Math.exp(list[b]! - most);
  }
  const { weight, groups } = beliefs;
  const sum = (values: Float64Array, of: readonly number[]): number =>
    of.reduce((all, b) => all + weight[b]! * values[b]!, 0);
  const allNamed = sum(named, beliefs.nameable);
  const allListed = sum(listed, beliefs.nameable);
  const groupNamed = groups.map((group) => sum(named, group));
  const groupListed = groups.map((group) => sum(listed, group));
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
    const vague = beliefs.vague[m]! * (nameless ? 1 : names.vague(hypotheses[m]!.model));
    const own = vague + beliefs.right[m]! * named[m]! + (1 - COPIES) * mistaken;
    const ownLog = Math.log(own) + both[m]!;
    const copyLog = Math.log(COPIES * copying) + most + seen[m]!;
    const whole = addedLogs(ownLog, copyLog);
    logs[m] = whole;
    copied[m] = whole === Number.NEGATIVE_INFINITY ? 0 : Math.exp(copyLog - whole);
  }
  return { logs, copied };
}

/** log(exp(a) + exp(b)). With no B to name, b is no number: nothing is copied. */
function addedLogs(a: number, b: number): number {
  if (!(b > Number.NEGATIVE_INFINITY)) return a;
  const most = Math.max(a, b);
  return most + Math.log1p(Math.exp(-Math.abs(a - b)));
}
