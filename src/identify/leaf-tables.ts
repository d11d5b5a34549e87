import type { Knowledge, ModelKnown } from '../pack/knowledge';
import { conditionShare, type NumberedIn } from './condition-share';
import { factShares } from './fact-shares';
import { type Leaves, leavesOf } from './leaves';

/** How likely each leaf of each attribute is for each hypothesis. */
export interface FactShares {
  /** Attributes with values to choose from. */
  attributes: ReadonlyMap<string, Leaves>;
  /** Shares of hypothesis h at h * leaves + leaf. */
  of(attribute: string): Float64Array;
  /** The same for one model whose number is known: conditions are then decided. */
  numbered(attribute: string, model: ModelKnown, numbered: NumberedIn): Float64Array;
}

/** Filled attribute by attribute, as they are asked for: few adverts speak of all. */
export class LeafTables implements FactShares {
  readonly attributes: ReadonlyMap<string, Leaves>;
  readonly #models: readonly ModelKnown[];
  readonly #tables = new Map<string, Float64Array>();

  constructor(knowledge: Knowledge, covering: ReadonlySet<string>, models: readonly ModelKnown[]) {
    this.#models = models;
    const attributes = new Map<string, Leaves>();
    for (const attribute of knowledge.attributes.values()) {
      const leaves = covering.has(attribute.pack) ? leavesOf(attribute) : null;
      if (leaves) attributes.set(attribute.ref, leaves);
    }
    this.attributes = attributes;
  }

  of(attribute: string): Float64Array {
    const there = this.#tables.get(attribute);
    if (there) return there;
    const leaves = this.attributes.get(attribute)!;
    const count = leaves.values.length;
    // "None" comes last: of it nothing is known, every leaf is alike.
    const table = new Float64Array((this.#models.length + 1) * count).fill(1 / count);
    this.#models.forEach((model, position) => {
      const facts = model.facts.get(attribute);
      if (facts) table.set(sharesOf(model, facts, leaves, null), position * count);
    });
    this.#tables.set(attribute, table);
    return table;
  }

  numbered(attribute: string, model: ModelKnown, numbered: NumberedIn): Float64Array {
    const leaves = this.attributes.get(attribute)!;
    return sharesOf(model, model.facts.get(attribute) ?? [], leaves, numbered);
  }
}

function sharesOf(
  model: ModelKnown,
  facts: NonNullable<ReturnType<ModelKnown['facts']['get']>>,
  leaves: Leaves,
  numbered: NumberedIn | null,
): Float64Array {
  return factShares(
    facts.map((fact) => ({ fact, share: conditionShare(fact, model, numbered) })),
    leaves,
  );
}
