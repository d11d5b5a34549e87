import { findingTexts } from '../../text/catalogue/findings';
import { type Assertion, assertions } from '../assertions';
import type { AuditCase } from '../case';
import { type Held, hold } from '../claims-held';
import { exclude } from '../exclusion';
import { holdForSerials, serialsLabel, withSerials } from '../serials-model';
import type { Finding, Standing } from '../types';
import { allowedText, askOf, knownFacts, saidEach, say } from '../words';

const texts = findingTexts.claimFact;

/**
 * Features that the advert asserts or denies, held against the facts of the claimed model; where the serial is another
 * model's, against that one's too.
 */
export function claimFact(auditCase: AuditCase): Finding[] {
  const all = assertions(auditCase);
  return all.flatMap((assertion) => {
    const { attribute, allowed, denied } = assertion;
    const held = hold(auditCase, attribute, allowed, denied);
    if (held?.verdict === 'conflict') return [];
    const other = holdForSerials(auditCase, attribute, allowed, denied);
    if (!held) return other?.verdict === 'refutes' ? [onlyOfSerials(auditCase, assertion, other)] : [];
    // A family's necessary conditions are another check's.
    if (held.facts.every(({ fact }) => fact.necessary)) return [];
    const refuted = held.verdict === 'refutes';
    if (refuted && isSaidAnyhow(auditCase, all, assertion)) return [];
    const besides = refuted ? saidBesides(auditCase, all, assertion) : [];
    const countered = refuted ? counter(auditCase, all, assertion) : null;
    return finding(auditCase, assertion, { held, other, countered, besides });
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

/** "Straight stitch only, no zigzag", of one that does zigzag: the second half goes along with the first. */
function saidBesides(auditCase: AuditCase, all: readonly Assertion[], { attribute, denied }: Assertion): Assertion[] {
  if (denied) return [];
  return all.filter(
    (one) =>
      one.attribute === attribute &&
      one.denied &&
      !one.guessed &&
      hold(auditCase, attribute, one.allowed, true)?.verdict === 'refutes',
  );
}

/** What came of a claim: for the model named, for the one whose number it has, and what else the advert says of it. */
interface Outcome {
  held: Held;
  other: Held | null;
  countered: Assertion | null;
  besides: readonly Assertion[];
}

function finding(auditCase: AuditCase, assertion: Assertion, outcome: Outcome): Finding[] {
  const { attribute, guessed } = assertion;
  const { held, other, countered, besides } = outcome;
  const first = held.facts[0];
  if (!first) return [];
  const sameModel = held.facts.every(({ model }) => model === first.model);
  const label = sameModel ? first.model.label : texts.whichever;
  const quote = quotesOf(assertion)[0]!.quote;
  const agrees = held.verdict === 'agrees';
  if (agrees && (guessed || !sameModel)) return [];
  const text = agrees
    ? texts.agrees(label, quote)
    : countered
      ? texts.bothWays(quote, countered.said[0]!.quote, label)
      : (held.firm ? texts.disproved : texts.usually)(
          label,
          say(attribute.def.label),
          knownValue(assertion, held),
          quote,
        );
  const facts = [...held.facts.slice(0, 3), ...(other?.facts ?? [])];
  return [
    {
      ...common(assertion, countered, besides),
      standing: standingOf(assertion, outcome),
      known: knownFacts(facts, auditCase.knowledge, facts.length),
      text: countered ? text : withSerials(auditCase, text, held.verdict, other),
      ask: agrees && other?.verdict !== 'refutes' ? null : ask(auditCase, assertion),
    },
  ];
}

/** What speaks for the model named and against the one whose number it has is still to be seen. */
function standingOf({ guessed, loose, aside }: Assertion, { held, other, countered }: Outcome): Standing {
  if (held.verdict === 'agrees') return other?.verdict === 'refutes' ? 'unproved' : 'agrees';
  if (guessed || aside || countered) return 'unproved';
  return held.firm && !loose ? 'disproved' : 'caution';
}

/** Nothing is known of it for the model named, and the one whose number it has isn't so. */
function onlyOfSerials(auditCase: AuditCase, assertion: Assertion, other: Held): Finding {
  const quote = quotesOf(assertion)[0]!.quote;
  const attribute = say(assertion.attribute.def.label);
  return {
    ...common(assertion, null),
    standing: 'unproved',
    known: knownFacts(other.facts, auditCase.knowledge),
    text: findingTexts.otherModel.only(quote, serialsLabel(auditCase), attribute, knownValue(assertion, other)),
    ask: ask(auditCase, assertion),
  };
}

function common(
  assertion: Assertion,
  countered: Assertion | null,
  besides: readonly Assertion[] = [],
): Pick<Finding, 'id' | 'check' | 'attribute' | 'said'> {
  return {
    id: `claim-fact:${assertion.key.replaceAll(' ', ':')}`,
    check: 'claim-fact',
    attribute: assertion.attribute.id,
    said: saidEach([...[assertion, ...besides].flatMap(quotesOf), ...(countered?.said.slice(0, 1) ?? [])]),
  };
}

function quotesOf({ said, denied }: Assertion) {
  return said.map((claim) => (denied ? (claim.denial ?? claim) : claim));
}

function knownValue({ attribute }: Assertion, held: Held): string {
  return texts.or([...new Set(held.facts.map(({ fact }) => allowedText(attribute, fact.allowed)))]);
}

function ask(auditCase: AuditCase, { attribute: { def } }: Assertion): string | null {
  return def.ask ? askOf(def.ask, auditCase) : null;
}
