import type { AttributeKnown, FactKnown, Knowledge, ModelKnown } from '../pack/knowledge';
import { type PriceBand, type PriceQuestion, priceBand } from '../price/price-band';
import { allowedText, say } from './words';

/** A feature in which two models differ: what each of them has, in words. */
export interface Difference {
  attribute: string;
  name: string;
  here: string;
  there: string;
  /** Something that the other one has and this one hasn't, or the other way round; else one thing in another's place. */
  change: 'gained' | 'lost' | 'other';
}

/** Another model that does the same. */
export interface Alternative {
  model: ModelKnown;
  /** Features in common, in words: "stitch: straight only". */
  common: string[];
  differs: Difference[];
  band: PriceBand;
}

const MOST = 5;
/** So much of what is known of both has to be in common. */
const ALIKE = 0.5;

/**
 * Other models that do the same as this one: those that have most features in common with it and whose price is known,
 * the most alike first. Only facts that hold of every such machine count.
 */
export function alternativesTo(model: ModelKnown, question: PriceQuestion, knowledge: Knowledge): Alternative[] {
  const own = firmFacts(model, knowledge);
  const alike = [...knowledge.bands.keys()].flatMap((ref) => {
    const other = knowledge.models.get(ref);
    // What is of another kind has none of the features that are asked of this one.
    if (!other || other.ref === model.ref || other.label === model.label) return [];
    const compared = compare(own, firmFacts(other, knowledge));
    const share = compared.common.length / (compared.common.length + compared.differs.length);
    return compared.common.length > 0 && share >= ALIKE ? [{ model: other, share, ...compared }] : [];
  });
  alike.sort((a, b) => b.share - a.share || b.common.length - a.common.length || (a.model.ref < b.model.ref ? -1 : 1));
  return alike.slice(0, MOST).flatMap(({ model: other, common, differs }) => {
    const grade = other.pack === model.pack ? question.grade : null;
    const band = priceBand({ ...question, models: [other], grade, times: 1 }, knowledge);
    return band ? [{ model: other, common, differs, band }] : [];
  });
}

/** By attribute what holds of every machine of that model. */
function firmFacts(model: ModelKnown, knowledge: Knowledge): Map<AttributeKnown, FactKnown> {
  const facts = new Map<AttributeKnown, FactKnown>();
  for (const ref of model.facts.keys()) {
    const attribute = knowledge.attributes.get(ref);
    const fact = model.facts.get(ref)?.find(({ when, always }) => when === null && always);
    // Weights and lengths are hardly ever the same and tell little of what a machine does.
    if (attribute && fact && fact.allowed.kind !== 'range') facts.set(attribute, fact);
  }
  return facts;
}

function compare(
  own: ReadonlyMap<AttributeKnown, FactKnown>,
  others: ReadonlyMap<AttributeKnown, FactKnown>,
): { common: string[]; differs: Difference[] } {
  const [common, differs]: [string[], Difference[]] = [[], []];
  for (const [attribute, fact] of own) {
    const other = others.get(attribute);
    if (!other) continue;
    const [here, there] = [allowedText(attribute, fact.allowed), allowedText(attribute, other.allowed)];
    const name = say(attribute.def.label);
    if (here === there) common.push(`${name}: ${here}`);
    else differs.push({ attribute: attribute.ref, name, here, there, change: changeOf(other) });
  }
  return { common, differs };
}

function changeOf({ allowed }: FactKnown): Difference['change'] {
  if (allowed.kind !== 'yes-no') return 'other';
  return allowed.value ? 'gained' : 'lost';
}
