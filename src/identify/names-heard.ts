import type { Reading } from '../claims/reading';
import type { FamilyKnown, ModelKnown } from '../pack/knowledge';
import { fold } from '../text/fold';
import { NAME_ASTRAY, NAME_DENIED, NAME_GUESSED_ASTRAY, NAMED } from './assumptions';
import { type Field, makerOf } from './field';

/** How likely the advert's names are for each hypothesis. */
export interface NamesHeard {
  /** The names, or their absence, tell something. */
  any: boolean;
  /** From a seller who takes the thing for this one. */
  takenFor: Float64Array;
  /** From one who knows no model, where it is truly this one: of a maker's name he is mostly right. */
  vague: Float64Array;
}

/**
 * A name that went astray (it is of something else in the text, a dealer's badge, a bad reading) falls on models as
 * often as they turn up. Most sellers write what stands on the machine, so that an advert without a known name is rather
 * for a machine of an unknown maker; of a thing described by hand, silence tells nothing.
 */
export function namesHeard(reading: Reading, field: Field, byHand = false): NamesHeard {
  const denied = new Set(
    reading.names.flatMap((name) => (name.stance === 'denies' && 'model' in name.of ? [name.of.model] : [])),
  );
  const meant = modelsMeant(reading);
  const heard = meant ? named(meant, field) : byHand ? nothingTold(field) : unnamed(field);
  for (const model of denied) {
    const i = field.positionOf(model.ref, model.pack);
    if (i === undefined) continue;
    heard.takenFor[i]! *= NAME_DENIED;
    heard.vague[i]! *= NAME_DENIED;
  }
  return { any: meant !== null || denied.size > 0 || !byHand, ...heard };
}

type Heard = Pick<NamesHeard, 'takenFor' | 'vague'>;

function named({ includes, exact, astray }: Meant, { hypotheses, logPrior }: Field): Heard {
  const size = hypotheses.length;
  const vague = new Float64Array(size);
  let common = 0;
  hypotheses.forEach(({ model }, i) => {
    if (!model || !includes(model)) return;
    vague[i] = 1 - astray;
    common += Math.exp(logPrior[i]!);
  });
  const stray = astray * common;
  for (let i = 0; i < size; i++) if (vague[i] === 0) vague[i] = stray;
  // Who knows which model it is, and names the maker alone, has left the model out.
  const takenFor = exact ? vague : vague.map((chance) => chance * (1 - NAMED.model));
  return { takenFor, vague: exact ? new Float64Array(size).fill(stray) : vague };
}

function unnamed({ hypotheses }: Field): Heard {
  const takenFor = new Float64Array(hypotheses.length).fill((1 - NAMED.model) * (1 - NAMED.maker));
  const vague = new Float64Array(hypotheses.length).fill(1);
  hypotheses.forEach(({ model }, i) => {
    if (model && !model.isType) vague[i] = 1 - NAMED.maker;
  });
  return { takenFor, vague };
}

function nothingTold({ hypotheses }: Field): Heard {
  return { takenFor: new Float64Array(hypotheses.length).fill(1), vague: new Float64Array(hypotheses.length).fill(1) };
}

/** A family's models, and others of its maker's that are called by the same name: "Name", where "Name 12" is of another. */
function isCalled(family: FamilyKnown, { names }: Reading): Meant['includes'] {
  const said = names.flatMap(({ of, name }) =>
    'family' in of && of.family === family ? [` ${fold(name).text} `] : [],
  );
  const maker = family.def.maker?.toLowerCase();
  return (model) =>
    model.family === family ||
    (maker !== undefined &&
      makerOf(model)?.toLowerCase() === maker &&
      said.some((name) => ` ${fold(model.label).text} `.includes(name)));
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
  if (family) return { includes: isCalled(family, reading), exact: false, astray: NAME_ASTRAY };
  const makers = new Set(
    reading.names.flatMap((name) =>
      'maker' in name.of && name.subject === 'this' && name.stance === 'says' ? [name.of.maker.toLowerCase()] : [],
    ),
  );
  if (makers.size === 0) return null;
  const isTheirs = (model: ModelKnown): boolean => !model.isType && makers.has((makerOf(model) ?? '').toLowerCase());
  return { includes: isTheirs, exact: false, astray: NAME_ASTRAY };
}
