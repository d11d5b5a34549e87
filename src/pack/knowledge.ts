import type { PhraseIndex } from '../text/phrases';
import type { About } from './schema/about';
import type { Attribute } from './schema/attributes';
import type { Family, Model, When } from './schema/models';
import type { Photograph, Term } from './schema/photographs';
import type { Band, Grade, Rate } from './schema/prices';
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
  ref: string;
  pack: string;
  def: Family;
  models: ModelKnown[];
  /** Its necessary conditions, then its other facts. */
  facts: FactsByAttribute;
}

export interface ModelKnown {
  ref: string;
  pack: string;
  id: string;
  label: string;
  def: Model;
  /** A brand-free kind of the thing, not one maker's model. */
  isType: boolean;
  family: FamilyKnown | null;
  /** The model's own facts, else its family's, else its type's; variants' beside them. */
  facts: FactsByAttribute;
}

export interface BandKnown {
  pack: string;
  entry: string;
  def: Band;
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
  sealedBy: string | null;
}

/** Packs made ready to be asked: every reference resolved, every phrase indexed, every run searchable. */
export interface Knowledge {
  packs: PackKnown[];
  attributes: Map<string, AttributeKnown>;
  models: Map<string, ModelKnown>;
  families: Map<string, FamilyKnown>;
  phrases: PhraseIndex<PhraseKnown>;
  names: PhraseIndex<NameKnown>;
  /** Every name once, for the fuzzy reading of misspelt ones. */
  nameList: NameKnown[];
  serials: SerialIndex;
  bands: Map<string, BandKnown[]>;
}
