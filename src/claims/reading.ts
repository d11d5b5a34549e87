import type { AttributeKnown, FamilyKnown, ModelKnown } from '../pack/knowledge';
import type { Factor, Grade } from '../pack/schema/prices';
import type { Caution, Wording } from '../pack/schema/wording';
import type { YearKind } from '../quantity/types';
import type { Bound } from './bounds';
import type { TextPart } from './part-text';
import type { Kind, Quote, Stanced } from './types';

/** "alloy": the frame is aluminium. */
export interface ValueClaim extends Stanced {
  pack: string;
  attribute: AttributeKnown;
  value: string | boolean;
}

/** A wording that a pack weighs. */
export interface WordingClaim extends Stanced {
  pack: string;
  entry: Wording;
}

/** A stated weight or length, with the attribute that it speaks of. */
export interface MeasureClaim extends Stanced {
  attribute: AttributeKnown;
  low: number;
  high: number;
  approximate: boolean;
  /** "Over 10 kg", "at most 10 kg". */
  bound: Bound | null;
  /** "with case", "in cabinet": the weight may be of more than the thing itself. */
  withMore: boolean;
  /** "without the case": of the thing itself, the advert says so. */
  alone: boolean;
}

export interface YearClaim extends Stanced {
  from: number;
  to: number;
  kind: YearKind;
  approximate: boolean;
}

export interface NameClaim extends Stanced {
  of: { model: ModelKnown } | { family: FamilyKnown } | { maker: string; pack: string };
  /** The name as the pack writes it. */
  name: string;
  /** Read in spite of a misspelling. */
  misspelt: boolean;
  /** "this is a …", "Model: …": the advert says in so many words that this is its name. */
  identity: boolean;
  /** "…, also known as the …": by which else it is called. Of two names the other one is what is on sale. */
  alias: boolean;
}

/** "made at …": a place that a pack knows. */
export interface PlaceClaim extends Stanced {
  pack: string;
  place: string;
}

/** "Over 100 years old": at least so many years. */
export interface AgeClaim extends Stanced {
  atLeast: number;
}

/** "Only 200 ever made": at most so many. */
export interface CountClaim extends Stanced {
  most: number;
}

/** A part that a pack lists as fitting a model, named in the advert. */
export interface FitClaim extends Stanced {
  model: ModelKnown;
  part: string;
}

export interface SerialClaim extends Quote {
  normal: string;
  /** Words call it a serial, or it stands in a field for it; else only its shape speaks for it. */
  stated: boolean;
  /** The advert's text itself says "serial number", or where it is stamped, and doesn't wonder what it is. */
  named?: boolean;
  /** The advert itself takes it back, or asks. */
  doubted?: boolean;
}

/** All that an advert's wording says, before anything is held against it. */
export interface Reading {
  parts: TextPart[];
  languages: ReadonlySet<string>;
  kind: Kind;
  /** Ids of the packs that speak of such a thing. */
  covering: ReadonlySet<string>;
  names: NameClaim[];
  /** The model on sale by the advert's own words; several where packs or a shared name offer more than one. */
  claimedModels: ModelKnown[];
  claimedFamily: FamilyKnown | null;
  values: ValueClaim[];
  wordings: WordingClaim[];
  measures: MeasureClaim[];
  years: YearClaim[];
  ages: AgeClaim[];
  counts: CountClaim[];
  places: PlaceClaim[];
  fitting: FitClaim[];
  serials: SerialClaim[];
  grades: (Stanced & { pack: string; entry: Grade })[];
  /** What a pack says that the price depends on, such as a missing part. */
  factors: (Stanced & { pack: string; entry: Factor })[];
  cautions: (Stanced & { pack: string; entry: Caution })[];
}
