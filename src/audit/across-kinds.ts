import { judge } from '../identify/judge';
import type { FactKnown, ModelKnown } from '../pack/knowledge';
import type { Assertion } from './assertions';
import type { AuditCase } from './case';
import { kindsOf } from './kinds';

/** Two statements on different features that no kind of the thing has together. */
export interface Apart {
  first: Assertion;
  second: Assertion;
  /** A kind that has the first, and what is known of it that the second is not. */
  kind: ModelKnown;
  fact: FactKnown;
  /** No kind can have both, without exception; else it would be unusual. */
  firm: boolean;
}

/**
 * Statements that exclude each other by what the brand-free kinds are ("vibrating shuttle" and "class 15 bobbin"): each
 * alone is so of some kind, both together of none. Only packs that say that their kinds are all there are can exclude
 * anything; they keep it fair by kinds of which little is said ("another machine with a round bobbin"), so that an
 * unusual size or metal excludes nothing. Where a model is claimed its own facts decide.
 */
export function apartAcrossKinds(auditCase: AuditCase, said: readonly Assertion[]): Apart[] {
  if (auditCase.claimed.length > 0) return [];
  const kinds = kindsOf(auditCase, true);
  const having = new Map(said.map((one) => [one, new Set(kinds.filter((kind) => !refutes(kind, one, false)))]));
  const out: Apart[] = [];
  for (const [i, one] of said.entries())
    for (const other of said.slice(i + 1)) {
      if (one.attribute === other.attribute) continue;
      // The one that fewer kinds have says more of what the thing is.
      const [first, second] = having.get(one)!.size <= having.get(other)!.size ? [one, other] : [other, one];
      const [firsts, seconds] = [[...having.get(first)!], having.get(second)!];
      const kind = firsts[0];
      const fact = kind && refutes(kind, second, false);
      if (!fact || seconds.size === 0 || firsts.some((each) => seconds.has(each))) continue;
      const firm = kinds.every((each) => refutes(each, first, true) || refutes(each, second, true));
      out.push({ first, second, kind, fact, firm });
    }
  return out;
}

/** The fact by which a kind can't have what is said, or null. */
function refutes(kind: ModelKnown, said: Assertion, firmly: boolean): FactKnown | null {
  const facts = (kind.facts.get(said.attribute.ref) ?? []).filter((fact) => !firmly || fact.always);
  return judge(said, said.attribute, facts) === 'refutes' ? facts[0]! : null;
}
