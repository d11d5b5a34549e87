import type { FactsByAttribute, FamilyKnown, Knowledge, ModelKnown } from '../knowledge';
import type { Family, Model } from '../schema/models';
import type { FactReader } from './facts';
import type { Scope } from './scope';

/** A model of which nothing is read before it is asked for. */
export class LazyModel implements ModelKnown {
  readonly ref: string;
  readonly pack: string;
  readonly id: string;
  readonly isType: boolean;
  readonly #scope: Scope;
  readonly #place: number;
  readonly #reader: FactReader;
  #def: Model | null = null;
  #family: FamilyKnown | null | undefined;
  #facts: FactsByAttribute | null = null;

  constructor(scope: Scope, place: number, reader: FactReader) {
    const { models, brands } = scope.parts;
    this.id = models.ids.at(place);
    this.pack = scope.id;
    this.ref = `${scope.id}/${this.id}`;
    this.isType = place >= brands;
    this.#scope = scope;
    this.#place = place;
    this.#reader = reader;
  }

  get def(): Model {
    this.#def ??= this.#scope.parts.models.at(this.#place);
    return this.#def;
  }

  get label(): string {
    return this.def.label;
  }

  get family(): FamilyKnown | null {
    if (this.#family === undefined) {
      const { families } = this.#scope.knowledge;
      this.#family = (this.def.family && families.get(this.#scope.ref(this.def.family, families))) || null;
    }
    return this.#family;
  }

  get facts(): FactsByAttribute {
    this.#facts ??= this.#reader.ofModel(this);
    return this.#facts;
  }
}

/** A family of which nothing is read before it is asked for. */
export class LazyFamily implements FamilyKnown {
  readonly ref: string;
  readonly pack: string;
  readonly #scope: Scope;
  readonly #place: number;
  readonly #reader: FactReader;
  #def: Family | null = null;
  #models: readonly ModelKnown[] | null = null;
  #facts: FactsByAttribute | null = null;

  constructor(scope: Scope, place: number, reader: FactReader) {
    this.pack = scope.id;
    this.ref = `${scope.id}/${scope.parts.families.ids.at(place)}`;
    this.#scope = scope;
    this.#place = place;
    this.#reader = reader;
  }

  get def(): Family {
    this.#def ??= this.#scope.parts.families.at(this.#place);
    return this.#def;
  }

  get models(): readonly ModelKnown[] {
    this.#models ??= members(this, this.#scope.knowledge);
    return this.#models;
  }

  get facts(): FactsByAttribute {
    this.#facts ??= this.#reader.ofFamily(this);
    return this.#facts;
  }
}

function members(family: FamilyKnown, knowledge: Knowledge): ModelKnown[] {
  return [...knowledge.models.values()].filter((model) => model.family === family);
}
