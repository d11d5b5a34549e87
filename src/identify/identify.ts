import type { Knowledge, ModelKnown } from '../pack/knowledge';
import { type Asked, type Evidence, evidenceOf } from './evidence';
import { orderOf } from './order';
import { type Posterior, posterior } from './posterior';

/** What a thing is likely to be, and all that is needed to say why and what to ask next. */
export interface Identified {
  evidence: Evidence;
  posterior: Posterior;
  /** The likeliest first; of equals the one that the packs name first (see orderOf). */
  order: readonly number[];
}

export interface Candidate {
  model: ModelKnown;
  probability: number;
}

/** @param asked what the advert says, its serial, and what the viewer answered. Pure; the packs' tables are kept. */
export function identify(asked: Asked, knowledge: Knowledge): Identified {
  const evidence = evidenceOf(asked, knowledge);
  const result = posterior(evidence);
  return { evidence, posterior: result, order: orderOf(result.shares) };
}

/** Models and types with their probabilities, the likeliest first; what is missing to 1 is "none of these". */
export function candidatesOf({ evidence, posterior: { shares }, order }: Identified): Candidate[] {
  return order.flatMap((h) => {
    const { model } = evidence.field.hypotheses[h]!;
    return model ? [{ model, probability: shares[h]! }] : [];
  });
}
