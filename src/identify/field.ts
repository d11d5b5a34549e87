import type { AttributeKnown, Knowledge, ModelKnown } from '../pack/knowledge';
import { LeafTables } from './leaf-tables';
import { logPriors } from './prior';

/** What the thing may be: a model, a brand-free type (by a maker that no pack knows), or none of these. */
export interface Hypothesis {
  /** null: none of those that the packs know. */
  model: ModelKnown | null;
}

/** All that a thing can be where these packs cover it, with what holds before anything is seen. The last one is "none". */
export interface Field {
  hypotheses: readonly Hypothesis[];
  /** Where a model stands among the hypotheses, by a reference as a pack writes it; undefined: not here. */
  positionOf: (ref: string | undefined, pack: string) => number | undefined;
  /** Natural logarithms; shares of one whole. */
  logPrior: Float64Array;
  tables: LeafTables;
  /** Every attribute of the covering packs, measures too, in the packs' order. */
  attributes: readonly AttributeKnown[];
}

/** A field takes long to prepare and stays the same while the packs do, so it is kept beside them. */
const kept = new WeakMap<Knowledge, Map<string, Field>>();

/** @param covering ids of the packs that speak of the thing */
export function fieldOf(knowledge: Knowledge, covering: ReadonlySet<string>): Field {
  const key = [...covering].sort().join(' ');
  const fields = kept.get(knowledge) ?? new Map<string, Field>();
  kept.set(knowledge, fields);
  const there = fields.get(key);
  if (there) return there;
  const models = [...knowledge.models.values()].filter((model) => covering.has(model.pack));
  const hypotheses: Hypothesis[] = [...models.map((model) => ({ model })), { model: null }];
  const positions = new Map(models.map((model, position) => [model.ref, position]));
  const base = new Map(knowledge.packs.map((pack) => [pack.id, pack.about.extends]));
  const positionOf: Field['positionOf'] = (ref, pack) => {
    if (ref === undefined || ref.includes('/')) return positions.get(ref ?? '');
    return positions.get(`${pack}/${ref}`) ?? positions.get(`${base.get(pack)}/${ref}`);
  };
  const field: Field = {
    hypotheses,
    positionOf,
    logPrior: logPriors(models, (model) => positionOf(model.def.type, model.pack)),
    tables: new LeafTables(knowledge, covering, models),
    attributes: [...knowledge.attributes.values()].filter((attribute) => covering.has(attribute.pack)),
  };
  fields.set(key, field);
  return field;
}

export function makerOf(model: ModelKnown): string | undefined {
  return model.def.maker ?? model.family?.def.maker;
}
