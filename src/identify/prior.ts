import type { ModelKnown } from '../pack/knowledge';
import { SHARES, UNSTATED } from './assumptions';

/**
 * How likely each is before anything is known: models by how many are left (number made times survival), types alike
 * but for the numbers that their pack states, "none" last. A type stands for one of its kind by a maker that no pack
 * knows, so models take nothing of its share: what is of a known maker is its model, not the type.
 * @returns natural logarithms of shares of one whole: one for each model, then "none"
 */
export function logPriors(models: readonly ModelKnown[]): Float64Array {
  const made = models.filter((model) => !model.isType);
  const types = models.filter((model) => model.isType);
  // Where a pack has no types, a machine of an unknown maker is none of those known; where it has types alone, they
  // stand for all makers.
  const knownShare = made.length > 0 ? SHARES.known : 0;
  const typeShare = types.length > 0 ? SHARES.type + SHARES.known - knownShare : 0;
  const weights = new Map([...shared(made, knownShare), ...shared(types, typeShare)]);
  return Float64Array.from([...models.map((model) => weights.get(model) ?? 0), 1 - knownShare - typeShare], Math.log);
}

function shared(models: readonly ModelKnown[], share: number): [ModelKnown, number][] {
  const number = typical(models.map((model) => model.def.number)) ?? UNSTATED.number;
  const survival = typical(models.map((model) => model.def.survival)) ?? UNSTATED.survival;
  const left = models.map((model) => (model.def.number ?? number) * (model.def.survival ?? survival));
  const sum = left.reduce((a, b) => a + b, 0);
  return models.map((model, i) => [model, sum > 0 ? (share * left[i]!) / sum : share / models.length]);
}

/** The geometric mean of those stated: numbers made lie orders of magnitude apart. */
function typical(stated: readonly (number | undefined)[]): number | null {
  const logs = stated.flatMap((value) => (value === undefined || value <= 0 ? [] : [Math.log(value)]));
  return logs.length > 0 ? Math.exp(logs.reduce((a, b) => a + b, 0) / logs.length) : null;
}
