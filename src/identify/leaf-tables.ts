import type { FactKnown, Knowledge, ModelKnown } from '../pack/knowledge';
import { conditionShare, type NumberedIn } from './condition-share';
import { factShares } from './fact-shares';
import { type Leaves, leavesOf } from './leaves';

/**
 * How likely each leaf of an attribute is for each hypothesis. Thousands of models have few different rows between
 * them, so that each is kept, and worked with, once.
 */
export interface Rows {
  /** The row of each hypothesis. */
  of: Int32Array;
  /** Shares of row r at r * leaves + leaf. */
  shares: Float64Array;
}

/** Filled attribute by attribute, as they are asked for: few adverts speak of all. */
export class LeafTables {
  /** Attributes with values to choose from, by their refs. */
  readonly attributes: ReadonlyMap<string, Leaves>;
  readonly #models: readonly ModelKnown[];
  readonly #rows = new Map<string, Rows>();

  constructor(knowledge: Knowledge, covering: ReadonlySet<string>, models: readonly ModelKnown[]) {
    this.#models = models;
    const attributes = new Map<string, Leaves>();
    for (const attribute of knowledge.attributes.values()) {
      const leaves = covering.has(attribute.pack) ? leavesOf(attribute) : null;
      if (leaves) attributes.set(attribute.ref, leaves);
    }
    this.attributes = attributes;
  }

  of(attribute: string): Rows {
    const there = this.#rows.get(attribute);
    if (there) return there;
    const made = this.#fill(attribute);
    this.#rows.set(attribute, made);
    return made;
  }

  /** The same where the numbers of some models are known, which decides conditions: they get rows of their own. */
  numbered(attribute: string, numbered: readonly { position: number; at: NumberedIn }[]): Rows {
    const rows = this.of(attribute);
    const leaves = this.attributes.get(attribute)!;
    const conditional = numbered.filter(({ position }) =>
      this.#models[position]!.facts.get(attribute)?.some((fact) => fact.when !== null),
    );
    if (conditional.length === 0) return rows;
    const count = leaves.values.length;
    const of = Int32Array.from(rows.of);
    const shares = new Float64Array(rows.shares.length + conditional.length * count);
    shares.set(rows.shares);
    conditional.forEach(({ position, at }, i) => {
      const model = this.#models[position]!;
      of[position] = rows.shares.length / count + i;
      shares.set(sharesOf(model, model.facts.get(attribute)!, leaves, at), rows.shares.length + i * count);
    });
    return { of, shares };
  }

  #fill(attribute: string): Rows {
    const leaves = this.attributes.get(attribute)!;
    const count = leaves.values.length;
    // Of "none", which comes last, nothing is known, as of models without a fact: every leaf is alike.
    const rows: Float64Array[] = [new Float64Array(count).fill(1 / count)];
    const of = new Int32Array(this.#models.length + 1);
    const byShares = new Map<string, number>();
    // Facts that are inherited and unconditional are one list for many models.
    const byFacts = new Map<readonly FactKnown[], number>();
    this.#models.forEach((model, position) => {
      const facts = model.facts.get(attribute);
      if (!facts) return;
      let row = byFacts.get(facts);
      if (row === undefined) {
        const shares = sharesOf(model, facts, leaves, null);
        const key = shares.join();
        row = byShares.get(key) ?? rows.push(shares) - 1;
        byShares.set(key, row);
        if (facts.every((fact) => fact.when === null)) byFacts.set(facts, row);
      }
      of[position] = row;
    });
    const shares = new Float64Array(rows.length * count);
    rows.forEach((row, i) => {
      shares.set(row, i * count);
    });
    return { of, shares };
  }
}

function sharesOf(
  model: ModelKnown,
  facts: readonly FactKnown[],
  leaves: Leaves,
  numbered: NumberedIn | null,
): Float64Array {
  const weighed = facts.map((fact) => ({ fact, share: conditionShare(fact, model, numbered) }));
  return factShares(weighed, leaves);
}
