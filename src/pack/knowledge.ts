import type { PhraseFinder } from '../text/phrases';
import type { About } from './schema/about';
import type { Attribute } from './schema/attributes';
import type { Family, Model, When } from './schema/models';
import type { Photograph, Term } from './schema/photographs';
import type { Band, Factor, Grade, PackObservation, Rate, Series } from './schema/prices';
import type { Caution, Wording } from './schema/wording';
import type { SerialIndex } from './serial-index';

/** What a fact allows: some values, yes or no, or a range (both ends included, an open end is infinite). */
export type Allowed =
  | { kind: 'values'; values: ReadonlySet<string> }
  | { kind: 'yes-no'; value: boolean }
  | { kind: 'range'; from: number; to: number };

export interface AttributeKnown {
  /** packId/attributeId */
  ref: string;
  pack: string;
  id: string;
  def: Attribute;
}

export interface FactKnown {
  attribute: AttributeKnown;
  allowed: Allowed;
  when: When | null;
  /** false: the rule has exceptions, so it disproves nothing. */
  always: boolean;
  /** A family's necessary condition: what isn't so can't be one of the family. */
  necessary: boolean;
  /** The entry that states it, and its source as a citation. */
  pack: string;
  entry: string;
  source: string | null;
}

/** Facts by attribute ref. A Map is one; compiled models share what they inherit. */
export interface FactsByAttribute {
  get(ref: string): FactKnown[] | undefined;
  keys(): IterableIterator<string>;
}

export interface FamilyKnown {
  readonly ref: string;
  readonly pack: string;
  readonly def: Family;
  /** Every model of it; looks at all models of all packs. */
  readonly models: readonly ModelKnown[];
  /** Its necessary conditions, then its other facts. */
  readonly facts: FactsByAttribute;
}

export interface ModelKnown {
  readonly ref: string;
  readonly pack: string;
  readonly id: string;
  readonly label: string;
  readonly def: Model;
  /** A brand-free kind of the thing, not one maker's model. */
  readonly isType: boolean;
  readonly family: FamilyKnown | null;
  /** The model's own facts, else its family's, else its type's; variants' beside them. */
  readonly facts: FactsByAttribute;
}

export interface BandKnown {
  pack: string;
  entry: string;
  def: Band;
  source: string | null;
}

/** A price that a pack has on record. */
export interface PackPrice {
  pack: string;
  entry: string;
  /** packId/modelId */
  model: string;
  def: PackObservation;
  source: string | null;
}

/** What a phrase of some pack stands for. */
export type Meaning =
  | { kind: 'value'; pack: string; attribute: AttributeKnown; value: string | boolean }
  | { kind: 'measured'; pack: string; attribute: AttributeKnown }
  | { kind: 'wording'; pack: string; entry: Wording }
  | { kind: 'unless'; pack: string; entry: Wording }
  | { kind: 'caution'; pack: string; entry: Caution }
  | { kind: 'grade'; pack: string; entry: Grade }
  | { kind: 'factor'; pack: string; entry: Factor }
  | { kind: 'place'; pack: string; place: string }
  | { kind: 'fit'; pack: string; model: ModelKnown; part: string }
  | { kind: 'thing'; pack: string }
  | { kind: 'part'; pack: string }
  | { kind: 'not-thing'; pack: string };

export interface PhraseKnown {
  /** Primary language of the phrase, or "und". */
  lang: string;
  meaning: Meaning;
}

export interface NameKnown {
  text: string;
  /** alone: a name wherever it stands; named: where the maker or family is named in the advert; near: right beside it. */
  stands: 'alone' | 'named' | 'near';
  of: { model: ModelKnown } | { family: FamilyKnown } | { maker: string; pack: string };
}

export interface PackKnown {
  id: string;
  about: About;
  /** Source id -> citation. */
  citations: Map<string, string>;
  cautions: Caution[];
  wording: Wording[];
  /** The most telling first. */
  photographs: Photograph[];
  terms: Term[];
  grades: Grade[];
  rates: Rate[];
  /** What prices depend on. */
  factors: Factor[];
  /** Price indices and weekly wages. */
  index: Series[];
  wages: Series[];
  sealedBy: string | null;
}

/**
 * Packs made ready to be asked together. They stand beside each other: none overrides another; a reference without a
 * pack id means the pack's own entry, else that of the pack it extends.
 */
export interface Knowledge {
  readonly packs: readonly PackKnown[];
  readonly attributes: ReadonlyMap<string, AttributeKnown>;
  readonly models: ReadonlyMap<string, ModelKnown>;
  readonly families: ReadonlyMap<string, FamilyKnown>;
  readonly phrases: PhraseFinder<PhraseKnown>;
  readonly names: PhraseFinder<NameKnown>;
  /** Every name once, for the fuzzy reading of misspelt ones. */
  readonly nameList: readonly NameKnown[];
  readonly serials: SerialIndex;
  readonly bands: ReadonlyMap<string, readonly BandKnown[]>;
  /** Prices on record, by model ref. */
  readonly prices: ReadonlyMap<string, readonly PackPrice[]>;
}
