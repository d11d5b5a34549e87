import type { Reading } from '../claims/reading';
import type { Stanced } from '../claims/types';
import { allowedBy } from '../pack/compile/facts';
import type { AttributeKnown, Knowledge } from '../pack/knowledge';
import { LOOSE_WORTH, TRUST } from './assumptions';
import { heard, loosened } from './hearing';
import type { Leaves } from './leaves';

/** A feature that the advert asserts or denies of the thing, once however often it says so. */
export interface Said {
  attribute: AttributeKnown;
  value: string | boolean;
  denied: boolean;
  /** A guess, or a word used loosely. */
  loose: boolean;
}

/** Likenesses, quotations and what is said of something else tell nothing. In an order of their own, not the advert's. */
export function saidIn(reading: Reading, knowledge: Knowledge): Said[] {
  const out = new Map<string, Said>();
  const add = (claim: Stanced, attribute: AttributeKnown, value: string | boolean, isLoose: boolean): void => {
    if (claim.subject !== 'this' || claim.stance === 'likens' || claim.stance === 'quotes') return;
    const denied = claim.stance === 'denies';
    const loose = isLoose || claim.stance === 'guesses';
    const key = `${attribute.ref} ${value} ${denied}`;
    const there = out.get(key);
    if (there) there.loose &&= loose;
    else out.set(key, { attribute, value, denied, loose });
  };
  for (const claim of reading.values) add(claim, claim.attribute, claim.value, false);
  for (const claim of reading.wordings) {
    const means = claim.entry.means;
    if (!means || !('is' in means)) continue;
    const attribute = attributeMeant(means.attribute, claim.pack, knowledge);
    const allowed = attribute && allowedBy(means.is, attribute);
    if (!attribute || !allowed || allowed.kind === 'range') continue;
    const values = allowed.kind === 'yes-no' ? [allowed.value] : [...allowed.values];
    if (values.length === 1) add(claim, attribute, values[0]!, claim.entry.use === 'loose');
  }
  return [...out].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, said]) => said);
}

/**
 * How likely these words are under each leaf: independent of each other once it is known which leaf it is.
 * @param byHand said by somebody who looks at the thing and sells nothing: right as often as the eye
 */
export function saidLikelihood(said: readonly Said[], leaves: Leaves, byHand = false): Float64Array | null {
  const { attribute, values } = leaves;
  const { seller = TRUST.seller, eye = TRUST.eye } = attribute.def.trust ?? {};
  const trust = byHand ? Math.max(seller, eye) : seller;
  let out: Float64Array | null = null;
  for (const one of said) {
    const reliable = one.loose ? loosened(trust, LOOSE_WORTH, values.length) : trust;
    const likelihood = heard(one.value, one.denied, reliable, leaves);
    if (likelihood) out = out ? out.map((each, i) => each * likelihood[i]!) : likelihood;
  }
  return out;
}

/** A wording's attribute: of its own pack, or of the one that it extends. */
export function attributeMeant(ref: string, pack: string, knowledge: Knowledge): AttributeKnown | undefined {
  if (ref.includes('/')) return knowledge.attributes.get(ref);
  const base = knowledge.packs.find((one) => one.id === pack)?.about.extends;
  return knowledge.attributes.get(`${pack}/${ref}`) ?? knowledge.attributes.get(`${base}/${ref}`);
}
