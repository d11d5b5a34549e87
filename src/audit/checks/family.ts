import { judge } from '../../identify/judge';
import type { FactKnown, FamilyKnown } from '../../pack/knowledge';
import { askTexts } from '../../text/catalogue/asks';
import { findingTexts } from '../../text/catalogue/findings';
import { type Assertion, assertions } from '../assertions';
import type { AuditCase } from '../case';
import type { Finding } from '../types';
import { allowedText, askOf, saidEach, say } from '../words';

const texts = findingTexts.family;

/** "Full size can't be one of these": what the advert says, against what every member of the named family must be. */
export function family(auditCase: AuditCase): Finding[] {
  const named = auditCase.reading.claimedFamily;
  if (!named || auditCase.reading.kind !== 'item') return [];
  return assertions(auditCase).flatMap((one) => {
    const facts = (named.facts.get(one.attribute.ref) ?? []).filter((fact) => fact.necessary && fact.when === null);
    // A model's own fact about it speaks in claim-fact.
    const own = auditCase.claimed.some((model) => model.facts.get(one.attribute.ref)?.some((fact) => !fact.necessary));
    if (facts.length === 0 || own || one.guessed) return [];
    const verdict = judge({ allowed: one.allowed, denied: one.denied }, one.attribute, facts);
    return verdict === 'open' || (verdict === 'refutes' && one.aside)
      ? []
      : [finding(auditCase, one, named, facts[0]!, verdict === 'refutes')];
  });
}

function finding(auditCase: AuditCase, one: Assertion, named: FamilyKnown, fact: FactKnown, refuted: boolean): Finding {
  const quotes = one.said.map((claim) => (one.denied ? (claim.denial ?? claim) : claim));
  const { label } = named.def;
  const firm = fact.always && !one.loose;
  return {
    id: `family:${named.ref}:${one.key.replaceAll(' ', ':')}`,
    check: 'family',
    standing: refuted ? (firm ? 'disproved' : 'caution') : 'agrees',
    attribute: one.attribute.id,
    said: saidEach(quotes),
    known: [
      {
        pack: fact.pack,
        entry: fact.entry,
        text: findingTexts.claimFact.known(
          texts.every(label),
          say(one.attribute.def.label),
          allowedText(one.attribute, fact.allowed),
        ),
        source: fact.source,
      },
    ],
    text: (refuted ? texts.disproved : texts.agrees)(quotes[0]!.quote, label),
    ask: refuted ? askOf(one.attribute.def.ask ?? askTexts.wholeAndPlate, auditCase) : null,
  };
}
