import type { Reading } from '../claims/reading';
import type { ModelKnown } from '../pack/knowledge';
import { NAME_ASTRAY, NAME_DENIED, NAME_GUESSED_ASTRAY } from './assumptions';
import { type Field, makerOf } from './field';

/** How likely the advert's names are for each hypothesis. */
export interface NamesHeard {
  /** Something was named. */
  any: boolean;
  /** From a seller who takes the thing for this one. */
  takenFor: Float64Array;
  /** From one who knows no model, where it is truly this one: of a maker's name he is mostly right. */
  vague: Float64Array;
}

/**
 * A name that went astray (it is of something else in the text, a dealer's badge, a bad reading) falls on models as
 * often as they turn up. An advert that names nothing tells nothing: many sellers don't look.
 */
export function namesHeard(reading: Reading, { hypotheses, logPrior, positionOf }: Field): NamesHeard {
  const denied = new Set(
    reading.names.flatMap((name) => (name.stance === 'denies' && 'model' in name.of ? [name.of.model] : [])),
  );
  const meant = modelsMeant(reading);
  const size = hypotheses.length;
  const takenFor = new Float64Array(size);
  if (!meant) takenFor.fill(1);
  let common = 0;
  hypotheses.forEach(({ model }, i) => {
    if (!model || !meant?.includes(model)) return;
    takenFor[i] = 1 - meant.astray;
    common += Math.exp(logPrior[i]!);
  });
  const stray = meant ? meant.astray * common : 1;
  for (let i = 0; i < size; i++) if (takenFor[i] === 0) takenFor[i] = stray;
  for (const model of denied) {
    const i = positionOf(model.ref, model.pack);
    if (i !== undefined) takenFor[i]! *= NAME_DENIED;
  }
  const vague = meant?.exact ? new Float64Array(size).fill(stray) : takenFor;
  return { any: meant !== null || denied.size > 0, takenFor, vague };
}

export interface Meant {
  includes: (model: ModelKnown) => boolean;
  /** Models are named, not their maker or family alone. */
  exact: boolean;
  astray: number;
}

/** What the advert's names can be of: the models named; else those of the family, else of the maker. null: no name. */
export function modelsMeant(reading: Reading): Meant | null {
  const models = new Set(reading.claimedModels.filter((model) => !model.isType));
  if (models.size > 0) {
    const first = reading.names.find((name) => 'model' in name.of && models.has(name.of.model));
    const astray = first?.stance === 'guesses' ? NAME_GUESSED_ASTRAY : NAME_ASTRAY;
    return { includes: (model) => models.has(model), exact: true, astray };
  }
  const family = reading.claimedFamily;
  if (family) return { includes: (model) => model.family === family, exact: false, astray: NAME_ASTRAY };
  const makers = new Set(
    reading.names.flatMap((name) =>
      'maker' in name.of && name.subject === 'this' && name.stance === 'says' ? [name.of.maker.toLowerCase()] : [],
    ),
  );
  if (makers.size === 0) return null;
  const isTheirs = (model: ModelKnown): boolean => !model.isType && makers.has((makerOf(model) ?? '').toLowerCase());
  return { includes: isTheirs, exact: false, astray: NAME_ASTRAY };
}
