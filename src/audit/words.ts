import type { Listing } from '../listing/types';
import type { Allowed, AttributeKnown, FactKnown, Knowledge, ModelKnown } from '../pack/knowledge';
import { localText } from '../pack/local-text';
import type { LocalText } from '../pack/schema/parts';
import { findingTexts as texts } from '../text/catalogue/findings';
import { sourceOf } from './source-of';
import type { Known, Said } from './types';

/** The interface's language; questions to a seller are in the advert's. */
const INTERFACE = 'en';

/** A question to the seller, in the advert's language where there are words in it. */
export function askOf(text: LocalText, { listing }: { listing: Pick<Listing, 'language'> }): string {
  return localText(text, listing.language);
}

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

export function modelsText(refs: readonly string[], knowledge: Knowledge): string {
  return texts.claimFact.or(refs.map((ref) => knowledge.models.get(ref)?.label ?? ref));
}

/**
 * A fact as the second half of a finding, said of whom its entry says it: a kind's is told of the kind, a family's of
 * the family, and that the model is one of that kind is the model's own entry, with its own source.
 */
export function knownFact(model: ModelKnown, fact: FactKnown, knowledge: Knowledge): Known[] {
  const stated = statedOf(model, fact, knowledge);
  const make = fact.always ? texts.claimFact.known : texts.claimFact.knownSometimes;
  const known: Known = {
    pack: fact.pack,
    entry: fact.entry,
    text: make(stated.label, say(fact.attribute.def.label), allowedText(fact.attribute, fact.allowed)),
    source: fact.source,
  };
  if (stated.kind === null) return [known];
  const source = sourceOf(knowledge, model.pack, model.def.source);
  const text = texts.claimFact.ofKind(model.label, stated.kind.label);
  return [known, { pack: model.pack, entry: model.id, text, source }];
}

/** Facts of several models, each entry once, at most so many facts. */
export function knownFacts(
  facts: readonly { model: ModelKnown; fact: FactKnown }[],
  knowledge: Knowledge,
  most = 3,
): Known[] {
  const all = facts.slice(0, most).flatMap(({ model, fact }) => knownFact(model, fact, knowledge));
  return [...new Map(all.map((one) => [`${one.pack}/${one.entry} ${one.text}`, one])).values()];
}

/** Whose entry states the fact: the model's own, its family's, or that of its brand-free kind. */
function statedOf(
  model: ModelKnown,
  fact: FactKnown,
  knowledge: Knowledge,
): { label: string; kind: ModelKnown | null } {
  if (fact.pack === model.pack && fact.entry === model.id)
    return { label: model.isType ? texts.claimFact.kind(model.label) : model.label, kind: null };
  if (fact.pack === model.family?.pack && fact.entry === model.family.def.id)
    return { label: (fact.necessary ? texts.family.every : texts.family.usual)(model.family.def.label), kind: null };
  const kind = knowledge.models.get(`${fact.pack}/${fact.entry}`);
  if (!kind || kind === model) return { label: model.label, kind: null };
  return { label: texts.claimFact.kind(kind.label), kind };
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
