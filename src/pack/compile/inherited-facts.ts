import type { FactKnown, FactsByAttribute } from '../knowledge';

type Layer = ReadonlyMap<string, FactKnown[]>;

/**
 * A model's facts with what it inherits: for each attribute the nearest layer speaks alone, and a variant's facts stand
 * beside it, for they hold only on their condition. The layers are shared, not copied: a family's thousand facts stand
 * there once, however many models are of that family.
 */
export class InheritedFacts implements FactsByAttribute {
  readonly #layers: readonly Layer[];
  readonly #variants: Layer;

  /** @param layers the model's own facts first, then what it inherits, from near to far. */
  constructor(layers: readonly Layer[], variants: Layer) {
    this.#layers = layers;
    this.#variants = variants;
  }

  get(ref: string): FactKnown[] | undefined {
    const nearest = this.#layers.find((layer) => layer.has(ref))?.get(ref);
    const beside = this.#variants.get(ref);
    return nearest && beside ? [...nearest, ...beside] : (nearest ?? beside);
  }

  keys(): IterableIterator<string> {
    return new Set([...this.#layers, this.#variants].flatMap((layer) => [...layer.keys()])).values();
  }
}
