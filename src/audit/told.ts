import { judge } from '../identify/judge';
import type { Allowed, AttributeKnown, ModelKnown } from '../pack/knowledge';
import { type Assertion, assertions } from './assertions';
import { type AuditCase, type HeldAgainst, heldAgainst } from './case';
import { conditionsOf, hold, isAsserted } from './claims-held';
import { factsInForce } from './conditions';
import { kindsOf } from './kinds';

/**
 * Is it told which value the attribute has: by the advert itself, else by the claimed model, else by every kind of thing
 * of which the advert's words can be true ("vibrating shuttle": the bobbin is long)? "Round bobbin" tells nothing where
 * round bobbins are of several kinds.
 */
export function isTold(auditCase: AuditCase, attribute: AttributeKnown): boolean {
  const firm = firmOf(auditCase);
  const said = firm.some((one) => one.attribute === attribute && !one.denied && oneValue(attribute, one.allowed));
  if (said || auditCase.reading.measures.some((one) => one.attribute === attribute && isAsserted(one))) return true;
  const { each } = heldAgainst(auditCase);
  const held = each.length > 0 ? each : kindsLeft(auditCase, firm).map((model) => ({ model, run: null }));
  const values = held.map((one) => known(auditCase, one, attribute));
  return values.length > 0 && values[0] !== null && values.every((value) => value === values[0]);
}

function firmOf(auditCase: AuditCase): Assertion[] {
  return assertions(auditCase).filter((one) => !one.guessed && !one.loose);
}

/** Where sellers are right as often as this they need not be asked again, though it may still be worth seeing. Assumed. */
const SELDOM_WRONG = 0.9;

/**
 * The attributes of which a question would be silly: whoever has the thing in hand has said it; or the advert says it, of
 * something in which sellers seldom err, and nothing else speaks against it.
 */
export function saidPlainly(auditCase: AuditCase): Set<string> {
  const out = new Set<string>();
  const said = firmOf(auditCase);
  for (const { attribute, allowed, denied } of said) {
    const isSure = auditCase.listing.byHand || (attribute.def.trust?.seller ?? 0) >= SELDOM_WRONG;
    if (!isSure || denied || !oneValue(attribute, allowed)) continue;
    const isContested =
      said.some((other) => other.attribute === attribute && speaksAgainst(other, allowed)) ||
      hold(auditCase, attribute, allowed, denied)?.verdict === 'refutes';
    if (!isContested) out.add(attribute.ref);
  }
  return out;
}

/** Another value of the same attribute, or its denial, stands in the advert too. */
function speaksAgainst(other: Assertion, allowed: Allowed): boolean {
  return other.denied ? meets(other.allowed, allowed) : !meets(other.allowed, allowed);
}

/** The brand-free kinds that the advert's words leave; none where its words rule none out. */
function kindsLeft(auditCase: AuditCase, firm: readonly Assertion[]): ModelKnown[] {
  const kinds = kindsOf(auditCase);
  const left = kinds.filter((kind) =>
    firm.every((one) => judge(one, one.attribute, kind.facts.get(one.attribute.ref) ?? []) !== 'refutes'),
  );
  return left.length < kinds.length ? left : [];
}

/** Is this one of the values that the advert, or every claimed model, gives the attribute? */
export function isSaid(auditCase: AuditCase, attribute: AttributeKnown, wanted: Allowed): boolean {
  const asserted = assertions(auditCase).some(
    (one) => one.attribute === attribute && !one.denied && meets(one.allowed, wanted),
  );
  if (asserted) return true;
  const { each } = heldAgainst(auditCase);
  return (
    each.length > 0 && each.every((held) => inForce(auditCase, held, attribute).some((one) => within(one, wanted)))
  );
}

/** The one value that all facts in force allow, or null. */
function known(auditCase: AuditCase, held: HeldAgainst, attribute: AttributeKnown): string | null {
  const values = inForce(auditCase, held, attribute).map((allowed) => oneValue(attribute, allowed));
  return values[0] && values.every((value) => value === values[0]) ? values[0] : null;
}

function inForce(auditCase: AuditCase, { model, run }: HeldAgainst, attribute: AttributeKnown): Allowed[] {
  const { facts, whole } = factsInForce(model, attribute.ref, conditionsOf(auditCase, run));
  return whole ? facts.map(({ allowed }) => allowed) : [];
}

/** The value where only one is allowed, and it has no narrower kinds. */
function oneValue({ def }: AttributeKnown, allowed: Allowed): string | null {
  if (allowed.kind === 'yes-no') return String(allowed.value);
  if (allowed.kind === 'range') return `${allowed.from}-${allowed.to}`;
  const [value] = allowed.values;
  const isWide = def.kind === 'choice' && def.values.some((other) => other.within === value);
  return allowed.values.size === 1 && value !== undefined && !isWide ? value : null;
}

function meets(a: Allowed, b: Allowed): boolean {
  if (a.kind === 'values' && b.kind === 'values') return [...a.values].some((value) => b.values.has(value));
  return a.kind === 'yes-no' && b.kind === 'yes-no' && a.value === b.value;
}

function within(a: Allowed, b: Allowed): boolean {
  if (a.kind === 'values' && b.kind === 'values') return [...a.values].every((value) => b.values.has(value));
  return meets(a, b);
}
