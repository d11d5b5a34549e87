import type { Stanced } from '../claims/types';
import { judge, type Verdict } from '../identify/judge';
import type { Allowed, AttributeKnown, FactKnown, ModelKnown } from '../pack/knowledge';
import { type AuditCase, type HeldAgainst, heldAgainst } from './case';
import { type Conditions, factsInForce } from './conditions';
import { yearsClaimed } from './years';

/** What came of one claim: refuted or agreed, by which facts of which models; or packs disagree about it. */
export interface Held {
  verdict: 'refutes' | 'agrees' | 'conflict';
  /** Every fact behind it holds without exception. */
  firm: boolean;
  facts: { model: ModelKnown; fact: FactKnown }[];
}

/**
 * Holds a claim against the claimed model, in each pack that has it; where none is claimed, against every model that
 * the thing may well be, and it is refuted only if all of them refute it.
 */
export function hold(auditCase: AuditCase, attribute: AttributeKnown, allowed: Allowed, denied: boolean): Held | null {
  const { each, all } = heldAgainst(auditCase);
  const results = each.map((one) => against(auditCase, one, attribute, allowed, denied));
  const refuted = results.find((one) => one.verdict === 'refutes');
  const agreed = results.find((one) => one.verdict === 'agrees');
  if (refuted && agreed) return { verdict: 'conflict', firm: false, facts: [...refuted.facts, ...agreed.facts] };
  const decided = refuted ?? agreed;
  if (decided) return { ...decided, verdict: decided.verdict as Held['verdict'] };
  return holdFor(auditCase, all, attribute, allowed, denied);
}

/** Holds a claim against models of which the thing is one: refuted or agreed only if all of them say so. */
export function holdFor(
  auditCase: AuditCase,
  all: readonly HeldAgainst[],
  attribute: AttributeKnown,
  allowed: Allowed,
  denied: boolean,
): Held | null {
  if (all.length === 0) return null;
  const open = all.map((one) => against(auditCase, one, attribute, allowed, denied));
  for (const verdict of ['refutes', 'agrees'] as const)
    if (open.every((one) => one.verdict === verdict))
      return { verdict, firm: open.every((one) => one.firm), facts: open.flatMap((one) => one.facts) };
  return null;
}

interface Against {
  verdict: Verdict;
  firm: boolean;
  facts: Held['facts'];
}

function against(
  auditCase: AuditCase,
  { model, run }: HeldAgainst,
  attribute: AttributeKnown,
  allowed: Allowed,
  denied: boolean,
): Against {
  const { facts, whole } = factsInForce(model, attribute.ref, conditionsOf(auditCase, run));
  const verdict = judge({ allowed, denied }, attribute, facts);
  return {
    // Facts that hold under conditions only, none of them sure: outside of them nothing is known.
    verdict: whole ? verdict : 'open',
    firm: facts.every((fact) => fact.always),
    facts: facts.map((fact) => ({ model, fact })),
  };
}

/** The serial's run is surest; without one, an exact year that the advert itself gives. */
export function conditionsOf(auditCase: AuditCase, run: HeldAgainst['run']): Conditions {
  const serial = auditCase.serial;
  if (run && serial) {
    const { number = null } =
      auditCase.knowledge.serials.schemesOf(serial.claim.normal).find(({ scheme }) => scheme === run.scheme) ?? {};
    return {
      years: run.year === null ? null : { from: run.year, to: run.year },
      place: run.place,
      serial: number === null ? null : { scheme: run.scheme.id, number, run },
    };
  }
  const year = yearsClaimed(auditCase.reading)[0];
  return { years: year ? { from: year.from, to: year.to } : null, place: null, serial: null };
}

/** Claims about this thing that say or deny something; guesses, likenesses and quotations are not held against it. */
export function isAsserted(claim: Stanced): boolean {
  return claim.subject === 'this' && (claim.stance === 'says' || claim.stance === 'denies');
}
