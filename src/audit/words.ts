import type { Allowed, AttributeKnown, FactKnown, Knowledge, ModelKnown } from '../pack/knowledge';
import { localText } from '../pack/local-text';
import type { LocalText } from '../pack/schema/parts';
import { findingTexts as texts } from '../text/catalogue/findings';
import type { Known, Said } from './types';

/** The interface's language; questions to a seller are in the advert's. */
export const INTERFACE = 'en';

export function say(text: LocalText): string {
  return localText(text, INTERFACE);
}

export function allowedText(attribute: AttributeKnown, allowed: Allowed): string {
  if (allowed.kind === 'yes-no') return allowed.value ? texts.claimFact.yes : texts.claimFact.no;
  if (allowed.kind === 'range') {
    const unit = attribute.def.kind === 'measure' ? attribute.def.unit : '';
    const end = (value: number): number | null => (Number.isFinite(value) ? value : null);
    return texts.claimFact.range(end(allowed.from), end(allowed.to), unit);
  }
  return texts.claimFact.or([...allowed.values].map((id) => valueLabel(attribute, id)));
}

export function valueLabel(attribute: AttributeKnown, id: string): string {
  if (attribute.def.kind !== 'choice') return id;
  const value = attribute.def.values.find((one) => one.id === id);
  return value ? say(value.label) : id;
}

/** "the Name 12", and for a brand-free type its label as it is. */
export function modelText(model: ModelKnown): string {
  return model.label;
}

export function modelsText(refs: readonly string[], knowledge: Knowledge): string {
  return texts.claimFact.or(refs.map((ref) => knowledge.models.get(ref)?.label ?? ref));
}

/** A fact as the second half of a finding. */
export function knownFact(model: ModelKnown, fact: FactKnown): Known {
  const make = fact.always ? texts.claimFact.known : texts.claimFact.knownSometimes;
  return {
    pack: fact.pack,
    entry: fact.entry,
    text: make(model.label, say(fact.attribute.def.label), allowedText(fact.attribute, fact.allowed)),
    source: fact.source,
  };
}

/** The bare quote of a claim, without what was made of it. */
export function saidOf({ field, quote, start, end }: Said): Said {
  return { field, quote, start, end };
}

/** The same words once, at most so many places: title first. */
export function saidEach(claims: readonly Said[], most = 3): Said[] {
  const seen = new Set<string>();
  return claims
    .filter((claim) => {
      const key = `${claim.field}:${claim.start}:${claim.end}`;
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    })
    .slice(0, most)
    .map(saidOf);
}
