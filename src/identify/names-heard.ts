import type { Reading } from '../claims/reading';
import type { ModelKnown } from '../pack/knowledge';
import { MAKER_ASTRAY, NAME_ASTRAY, NAME_GUESSED_ASTRAY } from './assumptions';
import { makerOf } from './serial-likelihood';

/** How likely the advert's names are from a seller who takes the thing for a model, or for none in particular. */
export interface NamesHeard {
  /** Something was named. */
  any: boolean;
  /** The seller takes it for this model. */
  takenFor: (model: ModelKnown) => number;
  /** He knows no model: of the maker, if he names one, it is what it truly is. */
  vague: (truth: ModelKnown | null) => number;
}

/** An advert that names nothing tells nothing: many sellers don't look. */
export function namesHeard(reading: Reading): NamesHeard {
  const models = reading.claimedModels.filter((model) => !model.isType);
  const denied = new Set(
    reading.names.flatMap((name) => (name.stance === 'denies' && 'model' in name.of ? [name.of.model] : [])),
  );
  const unless = (model: ModelKnown | null): number => (model && denied.has(model) ? NAME_GUESSED_ASTRAY : 1);
  if (models.length > 0) {
    const first = reading.names.find((name) => 'model' in name.of && models.includes(name.of.model));
    const astray = first?.stance === 'guesses' ? NAME_GUESSED_ASTRAY : NAME_ASTRAY;
    const named = new Set(models);
    return { any: true, takenFor: (model) => (named.has(model) ? 1 - astray : astray), vague: () => astray };
  }
  const isMeant = kinMeant(reading);
  if (!isMeant) return { any: denied.size > 0, takenFor: unless, vague: unless };
  const fits = (model: ModelKnown | null): number =>
    (model && isMeant(model) ? 1 - MAKER_ASTRAY : MAKER_ASTRAY) * unless(model);
  return { any: true, takenFor: fits, vague: fits };
}

/** The family, else the maker, that the advert names. */
function kinMeant(reading: Reading): ((model: ModelKnown) => boolean) | null {
  const family = reading.claimedFamily;
  if (family) return (model) => model.family === family;
  const makers = new Set(
    reading.names.flatMap((name) =>
      'maker' in name.of && name.subject === 'this' && name.stance === 'says' ? [name.of.maker.toLowerCase()] : [],
    ),
  );
  return makers.size > 0 ? (model) => !model.isType && makers.has((makerOf(model) ?? '').toLowerCase()) : null;
}
