import { conditionShare } from '../identify/condition-share';
import type { Evidence } from '../identify/evidence';
import type { FactKnown, ModelKnown } from '../pack/knowledge';
import { findingTexts } from '../text/catalogue/findings';
import { identifyTexts as texts } from '../text/catalogue/identify';
import type { Follows } from './types';
import { allowedText, say } from './words';

/**
 * What is so of a thing once it is known which it is: every fact that can hold of it, in the order of the packs'
 * attributes. Where the serial's block decides a condition, what doesn't hold is left out.
 */
export function followsOf(model: ModelKnown | null, { field, numbered }: Evidence): Follows[] {
  if (!model) return [];
  const out: Follows[] = [];
  for (const attribute of field.attributes) {
    const facts = model.facts.get(attribute.ref) ?? [];
    const shares = facts.map((fact) => conditionShare(fact, model, numbered.get(model.ref) ?? null));
    // A condition that surely holds speaks alone.
    const isDecided = facts.some((fact, i) => fact.when !== null && shares[i] === 1);
    facts.forEach((fact, i) => {
      if (shares[i] === 0 || (isDecided && shares[i] !== 1) || (isDecided && fact.when === null)) return;
      out.push({
        attribute: attribute.ref,
        name: say(attribute.def.label),
        text: shares[i] === 1 ? allowedText(attribute, fact.allowed) : conditionalText(fact),
        usually: !fact.always,
        source: fact.source,
      });
    });
  }
  return out;
}

function conditionalText({ attribute, allowed, when }: FactKnown): string {
  const value = allowedText(attribute, allowed);
  if (when?.made) return texts.made(value, findingTexts.ageWords.years(when.made.from ?? null, when.made.to ?? null));
  if (when?.places) return texts.madeAt(value, findingTexts.claimFact.or(when.places));
  return when?.serials ? texts.someNumbers(value) : value;
}
