import { conditionShare } from '../identify/condition-share';
import type { Evidence } from '../identify/evidence';
import type { AttributeKnown, FactKnown, ModelKnown } from '../pack/knowledge';
import { findingTexts } from '../text/catalogue/findings';
import { identifyTexts as texts } from '../text/catalogue/identify';
import type { Follows } from './types';
import { allowedText, say } from './words';

/** What is so of a thing once it is known which it is, in the order of the packs' attributes. */
export function followsOf(model: ModelKnown | null, evidence: Evidence): Follows[] {
  if (!model) return [];
  return evidence.field.attributes.flatMap((attribute) =>
    thatCanHold(model, attribute, evidence).map(
      ({ fact, text }): Follows => ({
        attribute: attribute.ref,
        name: say(attribute.def.label),
        text,
        usually: !fact.always,
        source: fact.source,
      }),
    ),
  );
}

/**
 * Every fact that can hold of the model, with its condition in words where that is open. Where the serial's block
 * decides a condition, what doesn't hold is left out, and a condition that surely holds speaks alone.
 */
export function thatCanHold(
  model: ModelKnown,
  attribute: AttributeKnown,
  { numbered }: Pick<Evidence, 'numbered'>,
): { fact: FactKnown; text: string }[] {
  const facts = model.facts.get(attribute.ref) ?? [];
  const shares = facts.map((fact) => conditionShare(fact, model, numbered.get(model.ref) ?? null));
  const isDecided = facts.some((fact, i) => fact.when !== null && shares[i] === 1);
  return facts.flatMap((fact, i) => {
    if (shares[i] === 0 || (isDecided && (shares[i] !== 1 || fact.when === null))) return [];
    return [{ fact, text: shares[i] === 1 ? allowedText(attribute, fact.allowed) : conditionalText(fact) }];
  });
}

function conditionalText({ attribute, allowed, when }: FactKnown): string {
  const value = allowedText(attribute, allowed);
  if (when?.made) return texts.made(value, findingTexts.ageWords.years(when.made.from ?? null, when.made.to ?? null));
  if (when?.places) return texts.madeAt(value, findingTexts.claimFact.or(when.places));
  return when?.serials ? texts.someNumbers(value) : value;
}
