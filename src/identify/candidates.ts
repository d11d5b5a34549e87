import type { Reading } from '../claims/reading';
import type { Knowledge, ModelKnown } from '../pack/knowledge';
import type { Run } from '../pack/serial-index';

export interface Candidate {
  model: ModelKnown;
  probability: number;
}

/** A serial that lies in none of a model's runs, where its pack has runs for it: a misread, or a gap in the table. */
const OUTSIDE_ITS_RUNS = 0.02;
/** The advert names another family. */
const ANOTHER_FAMILY = 0.05;
/** The advert names another model: sellers do mistake models for their sisters. */
const ANOTHER_NAME = 0.05;

/**
 * Which models the thing can be, by number made, serial and the names the advert gives it: a first, plain posterior.
 * Only models of packs that cover the advert; brand-free types too. Normalised over them.
 */
export function candidates(reading: Reading, runs: readonly Run[], knowledge: Knowledge): Candidate[] {
  const models = [...knowledge.models.values()].filter((model) => reading.covering.has(model.pack));
  const inRuns = new Set(runs.flatMap((run) => run.models));
  const claimed = new Set(reading.claimedModels.map((model) => model.ref));
  const weights = models.map((model) => {
    let weight = (model.def.number ?? 10_000) * (model.def.survival ?? 1);
    if (inRuns.size > 0 && !inRuns.has(model.ref)) weight *= OUTSIDE_ITS_RUNS;
    if (reading.claimedFamily && model.family !== reading.claimedFamily) weight *= ANOTHER_FAMILY;
    if (claimed.size > 0 && !claimed.has(model.ref)) weight *= ANOTHER_NAME;
    return weight;
  });
  const sum = weights.reduce((a, b) => a + b, 0);
  return models
    .map((model, i) => ({ model, probability: sum > 0 ? weights[i]! / sum : 0 }))
    .sort((a, b) => b.probability - a.probability);
}
