import type { ModelKnown } from '../pack/knowledge';
import { SHARES, UNSTATED } from './assumptions';

/**
 * How likely each is before anything is known: models and types by how many are left (number made times survival),
 * "none" last. A type stands for one of its kind by a maker that no pack knows: of the number that its pack states, which
 * counts all makers, those of the known models of that type are taken off. Where no number of types is stated, they have
 * a stated share together, and each alike.
 * @param typeOf the type that a model is of, by its place in the list, or undefined
 * @returns natural logarithms of shares of one whole: one for each model, then "none"
 */
export function logPriors(
  models: readonly ModelKnown[],
  typeOf: (model: ModelKnown) => number | undefined,
): Float64Array {
  const left = new Float64Array(models.length);
  fillLeft(left, models, (model) => !model.isType);
  fillLeft(left, models, (model) => model.isType);
  const sumOf = (isType: boolean): number =>
    models.reduce((sum, model, i) => (model.isType === isType ? sum + left[i]! : sum), 0);
  if (models.some((model) => model.isType && model.def.number !== undefined)) {
    const all = Float64Array.from(left);
    models.forEach((model, i) => {
      const type = model.isType ? undefined : typeOf(model);
      if (type !== undefined && models[type]!.isType) left[type]! -= left[i]!;
    });
    for (let i = 0; i < all.length; i++) left[i] = Math.max(left[i]!, all[i]! * UNSTATED.otherMakers);
  } else {
    scaleTo(left, models, false, SHARES.known / sumOf(false));
    scaleTo(left, models, true, SHARES.type / sumOf(true));
  }
  const whole = sumOf(false) + sumOf(true);
  // Where a pack has no types, a machine of an unknown maker is none of those known.
  const none = models.some((model) => model.isType) ? SHARES.none : SHARES.none + SHARES.type;
  const share = (each: number): number => Math.log((each / whole) * (1 - none));
  return Float64Array.from([...Array.from(left, share), Math.log(models.length === 0 ? 1 : none)]);
}

function scaleTo(left: Float64Array, models: readonly ModelKnown[], isType: boolean, scale: number): void {
  models.forEach((model, i) => {
    if (model.isType === isType) left[i]! *= scale;
  });
}

/** How many are left; what a pack doesn't state is as with its typical other ones. */
function fillLeft(left: Float64Array, all: readonly ModelKnown[], wanted: (model: ModelKnown) => boolean): void {
  const models = all.filter(wanted);
  const number = typical(models.map((model) => model.def.number)) ?? UNSTATED.number;
  const survival = typical(models.map((model) => model.def.survival)) ?? UNSTATED.survival;
  all.forEach((model, i) => {
    // Survival 0 is one that nobody has found yet, not one that can't be.
    if (wanted(model)) left[i] = Math.max(1, (model.def.number ?? number) * (model.def.survival ?? survival));
  });
}

/** The geometric mean of those stated: numbers made lie orders of magnitude apart. */
function typical(stated: readonly (number | undefined)[]): number | null {
  const logs = stated.flatMap((value) => (value === undefined || value <= 0 ? [] : [Math.log(value)]));
  return logs.length > 0 ? Math.exp(logs.reduce((a, b) => a + b, 0) / logs.length) : null;
}
