import type { Kind, Quote, Stance, TextField } from '../claims/types';
import type { FieldName, FieldNote, Price } from '../listing/types';

export type CheckId =
  | 'serial-model'
  | 'serial-year'
  | 'serial-form'
  | 'claim-fact'
  | 'claim-claim'
  | 'name-name'
  | 'family'
  | 'fits'
  | 'made-where'
  | 'weight'
  | 'rarity'
  | 'age-words'
  | 'price'
  | 'look-alike'
  | 'missing'
  | 'wording'
  | 'caution'
  | 'source-conflict';

export type Standing = 'disproved' | 'unproved' | 'caution' | 'agrees';

/** What the advert says: its exact words and where they stand. */
export type Said = Quote;

/** What is known: the pack's entry in words, and that entry's source. */
export interface Known {
  pack: string;
  entry: string;
  text: string;
  source: string | null;
}

/** Laws: "disproved" has one said and one known, or two said. */
export interface Finding {
  /** Stable for the same advert and packs: check, attribute or entry, and where it stands. */
  id: string;
  check: CheckId;
  standing: Standing;
  attribute: string | null;
  said: Said[];
  known: Known[];
  /** One plain sentence. */
  text: string;
  /** A question to the seller, or null. */
  ask: string | null;
}

export type SerialVerdict = 'fits' | 'another-model' | 'another-year' | 'unknown' | 'misread' | 'bad-form' | 'none';

export interface RunReport {
  pack: string;
  entry: string;
  models: string[];
  year: number | null;
  first: string;
  last: string;
  source: string | null;
}

export interface SerialReport {
  asWritten: string | null;
  normal: string | null;
  verdict: SerialVerdict;
  runs: RunReport[];
  suggestions: { normal: string; models: string[]; year: number | null }[];
}

export interface ClaimedName {
  model?: string;
  family?: string;
  field: TextField;
  quote: string;
  start: number;
  end: number;
  stance: Stance;
}

/** Something that speaks for or against a candidate, in words; bits are log-odds (base 2) against the next one. */
export interface Ground {
  text: string;
  bits: number;
}

/** What is so of a thing of that kind: what follows once it is known which it is. */
export interface Follows {
  attribute: string;
  /** The attribute's name: "bobbin". */
  name: string;
  /** The value in words: "long and thin, in a shuttle". */
  text: string;
  /** The rule has exceptions. */
  usually: boolean;
  source: string | null;
}

export interface Likely {
  /** null: none of those that the packs know. */
  model: string | null;
  label: string;
  /** model: one maker's; type: a brand-free kind; none: nothing that the packs know. */
  kind: 'model' | 'type' | 'none';
  probability: number;
  for: Ground[];
  against: Ground[];
  follows: Follows[];
}

export interface AnswerOption {
  /** What `answers` takes for it. */
  value: string | boolean;
  text: string;
  explain: string | null;
}

/** What would settle which one it is, the most telling per effort first. */
export interface NextEvidence {
  attribute: string;
  /** The attribute's name: "bobbin". */
  name: string;
  /** Expected information, in bits. */
  bits: number;
  effort: 'read' | 'photo' | 'visit';
  /** The question to the seller. */
  ask: string;
  where: string;
  /** What to look for, or null. */
  see: string | null;
  /** A named place on the outline drawing of the thing, or null. */
  place: string | null;
  options: AnswerOption[];
}

export type PriceStanding = 'below' | 'low-side' | 'within' | 'high-side' | 'above' | 'not-comparable' | 'no-band';

export interface PriceReport {
  standing: PriceStanding;
  /** Asked / mid, or null. */
  ratio: number | null;
  /** The probability that such a thing costs no more than this one, by the band; null without one. */
  probability: number | null;
  band: {
    low: number;
    mid: number;
    high: number;
    currency: string;
    observations: number;
    effective: number;
  } | null;
}

/** The audit as JSON: a contract, see DEVELOPERS.md. */
export interface Audit {
  schema: 1;
  kind: Kind;
  listing: {
    title: string;
    description: string;
    details: string;
    price: Price | null;
    serials: string[];
    condition: string | null;
    place: string | null;
    photos: string[];
    fields: Partial<Record<FieldName, FieldNote>>;
  };
  claimedModel: string | null;
  claimed: ClaimedName[];
  serial: SerialReport;
  serials: SerialReport[];
  likely: Likely[];
  findings: Finding[];
  nextEvidence: NextEvidence[];
  price: PriceReport;
  packs: { id: string; edition: number; sealedBy: string | null }[];
}
