import type { Stanced } from '../../claims/types';
import { allowedBy } from '../../pack/compile/facts';
import type { Allowed, AttributeKnown } from '../../pack/knowledge';
import { findingTexts } from '../../text/catalogue/findings';
import type { AuditCase } from '../case';
import { type Held, hold } from '../claims-held';
import type { Finding } from '../types';
import { allowedText, knownFact, saidEach, say } from '../words';

const texts = findingTexts.claimFact;

interface Assertion {
  key: string;
  attribute: AttributeKnown;
  allowed: Allowed;
  denied: boolean;
  guessed: boolean;
  /** A word used loosely disproves nothing. */
  loose: boolean;
  said: Stanced[];
}

/** Features that the advert asserts or denies, held against the facts of the claimed model. */
export function claimFact(auditCase: AuditCase): Finding[] {
  const findings = assertions(auditCase).flatMap((assertion) => {
    const held = hold(auditCase, assertion.attribute, assertion.allowed, assertion.denied);
    return held ? finding(assertion, held) : [];
  });
  return mergeAgreeing(findings);
}

/** "Cast iron" and "not aluminium" agree with one fact: one finding, with all that the advert says of it. */
function mergeAgreeing(findings: readonly Finding[]): Finding[] {
  const byFact = new Map<string, Finding>();
  return findings.flatMap((finding) => {
    if (finding.standing !== 'agrees') return [finding];
    const key = finding.known.map((known) => `${known.pack}/${known.entry} ${known.text}`).join();
    const there = byFact.get(key);
    if (there) {
      there.said = saidEach([...there.said, ...finding.said]);
      return [];
    }
    byFact.set(key, finding);
    return [finding];
  });
}

function assertions({ reading, knowledge }: AuditCase): Assertion[] {
  const byKey = new Map<string, Assertion>();
  const add = (claim: Stanced, attribute: AttributeKnown, allowed: Allowed, loose: boolean): void => {
    if (claim.subject !== 'this' || claim.stance === 'likens' || claim.stance === 'quotes') return;
    const denied = claim.stance === 'denies';
    const guessed = claim.stance === 'guesses';
    const key = [attribute.ref, keyOf(allowed), denied, guessed, loose].join(' ');
    const there = byKey.get(key);
    if (there) there.said.push(claim);
    else byKey.set(key, { key, attribute, allowed, denied, guessed, loose, said: [claim] });
  };
  for (const claim of reading.values) {
    const allowed: Allowed =
      typeof claim.value === 'boolean'
        ? { kind: 'yes-no', value: claim.value }
        : { kind: 'values', values: new Set([claim.value]) };
    add(claim, claim.attribute, allowed, false);
  }
  for (const claim of reading.wordings) {
    const means = claim.entry.means;
    if (!means || !('is' in means)) continue;
    const attribute = attributeOf(means.attribute, claim.pack, knowledge);
    const allowed = attribute && allowedBy(means.is, attribute);
    if (attribute && allowed) add(claim, attribute, allowed, claim.entry.use === 'loose');
  }
  return [...byKey.values()];
}

/** A wording's attribute: of its own pack, or of the one it extends. */
export function attributeOf(ref: string, pack: string, knowledge: AuditCase['knowledge']): AttributeKnown | undefined {
  if (ref.includes('/')) return knowledge.attributes.get(ref);
  const base = knowledge.packs.find((one) => one.id === pack)?.about.extends;
  return knowledge.attributes.get(`${pack}/${ref}`) ?? (base ? knowledge.attributes.get(`${base}/${ref}`) : undefined);
}

function keyOf(allowed: Allowed): string {
  if (allowed.kind === 'values') return [...allowed.values].sort().join('|');
  return allowed.kind === 'yes-no' ? String(allowed.value) : `${allowed.from}-${allowed.to}`;
}

function finding(assertion: Assertion, held: Held): Finding[] {
  const { attribute, said, guessed, loose } = assertion;
  const first = held.facts[0];
  if (!first) return [];
  const sameModel = held.facts.every(({ model }) => model === first.model);
  const label = sameModel ? first.model.label : texts.whichever;
  const quotes = said.map((claim) => (assertion.denied ? (claim.denial ?? claim) : claim));
  const quote = quotes[0]!.quote;
  const value = texts.or([...new Set(held.facts.map(({ fact }) => allowedText(attribute, fact.allowed)))]);
  const agrees = held.verdict === 'agrees';
  if (agrees && (guessed || !sameModel)) return [];
  const disproves = held.firm && !guessed && !loose;
  const text = agrees
    ? texts.agrees(label, quote)
    : (held.firm ? texts.disproved : texts.usually)(label, say(attribute.def.label), value, quote);
  return [
    {
      id: `claim-fact:${assertion.key.replaceAll(' ', ':')}`,
      check: 'claim-fact',
      standing: agrees ? 'agrees' : disproves ? 'disproved' : guessed ? 'unproved' : 'caution',
      attribute: attribute.id,
      said: saidEach(quotes),
      known: held.facts.slice(0, 3).map(({ model, fact }) => knownFact(model, fact)),
      text,
      ask: agrees || !attribute.def.ask ? null : say(attribute.def.ask),
    },
  ];
}
