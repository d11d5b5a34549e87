import type { Reading } from '../claims/reading';
import type { Knowledge, ModelKnown } from '../pack/knowledge';
import type { Run } from '../pack/serial-index';
import { judge } from './judge';

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
/** A feature that the model's facts refute. Sellers copy whole lists, so that further ones tell little more. */
const REFUTED = [1, 0.1, 0.05, 0.04];

/**
 * Which models the thing can be, by number made, serial, names and the features that the advert claims: a first, plain
 * posterior. Only models of packs that cover the advert; brand-free types too. Normalised over them.
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
    return weight * REFUTED[Math.min(refutedBy(model, reading), REFUTED.length - 1)]!;
  });
  const sum = weights.reduce((a, b) => a + b, 0);
  return models
    .map((model, i) => ({ model, probability: sum > 0 ? weights[i]! / sum : 0 }))
    .sort((a, b) => b.probability - a.probability);
}

/** How many attributes the advert says something of that the model's firm facts refute. */
function refutedBy(model: ModelKnown, reading: Reading): number {
  const refuted = new Set<string>();
  for (const { attribute, value, stance, subject } of reading.values) {
    if (subject === 'other' || (stance !== 'says' && stance !== 'denies')) continue;
    const facts = (model.facts.get(attribute.ref) ?? []).filter((fact) => fact.always);
    const allowed =
      typeof value === 'boolean'
        ? ({ kind: 'yes-no', value } as const)
        : ({ kind: 'values', values: new Set([value]) } as const);
    if (judge({ allowed, denied: stance === 'denies' }, attribute, facts) === 'refutes') refuted.add(attribute.ref);
  }
  return refuted.size;
}
