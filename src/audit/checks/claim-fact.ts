import { findingTexts } from '../../text/catalogue/findings';
import { type Assertion, assertions } from '../assertions';
import type { AuditCase } from '../case';
import { type Held, hold } from '../claims-held';
import { exclude } from '../exclusion';
import type { Finding } from '../types';
import { allowedText, knownFact, saidEach, say } from '../words';

const texts = findingTexts.claimFact;

/** Features that the advert asserts or denies, held against the facts of the claimed model. */
export function claimFact(auditCase: AuditCase): Finding[] {
  const all = assertions(auditCase);
  return all.flatMap((assertion) => {
    const held = hold(auditCase, assertion.attribute, assertion.allowed, assertion.denied);
    // A family's necessary conditions and packs that disagree are other checks'.
    if (!held || held.verdict === 'conflict' || held.facts.every(({ fact }) => fact.necessary)) return [];
    const refuted = held.verdict === 'refutes';
    if (refuted && isSaidAnyhow(auditCase, all, assertion)) return [];
    return finding(assertion, held, refuted ? counter(auditCase, all, assertion) : null);
  });
}

/**
 * What the advert says elsewhere of the same feature, and rightly: of two words that exclude each other the one that
 * fits is more likely meant, and the other more likely misunderstood here.
 */
function counter(auditCase: AuditCase, all: readonly Assertion[], assertion: Assertion): Assertion | null {
  const others = all.filter(
    (other) => other.attribute === assertion.attribute && !other.guessed && exclude(assertion, other),
  );
  return others.find((one) => hold(auditCase, one.attribute, one.allowed, one.denied)?.verdict === 'agrees') ?? null;
}

/** "Alloy and not iron", of an iron one: the first half says it all. */
function isSaidAnyhow(auditCase: AuditCase, all: readonly Assertion[], { attribute, denied }: Assertion): boolean {
  if (!denied) return false;
  return all.some(
    (one) =>
      one.attribute === attribute &&
      !one.denied &&
      !one.guessed &&
      !one.loose &&
      hold(auditCase, attribute, one.allowed, false)?.verdict === 'refutes',
  );
}

function finding(assertion: Assertion, held: Held, countered: Assertion | null): Finding[] {
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
  const disproves = held.firm && !guessed && !loose && !countered;
  const text = agrees
    ? texts.agrees(label, quote)
    : countered
      ? texts.bothWays(quote, countered.said[0]!.quote, label)
      : (held.firm ? texts.disproved : texts.usually)(label, say(attribute.def.label), value, quote);
  return [
    {
      id: `claim-fact:${assertion.key.replaceAll(' ', ':')}`,
      check: 'claim-fact',
      standing: agrees ? 'agrees' : disproves ? 'disproved' : guessed || countered ? 'unproved' : 'caution',
      attribute: attribute.id,
      said: saidEach(countered ? [...quotes, countered.said[0]!] : quotes),
      known: held.facts.slice(0, 3).map(({ model, fact }) => knownFact(model, fact)),
      text,
      ask: agrees || !attribute.def.ask ? null : say(attribute.def.ask),
    },
  ];
}
