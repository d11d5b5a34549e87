import type { Kind, Quote, Stance, TextField } from '../claims/types';
import type { FieldName, FieldNote, Price } from '../listing/types';
import type { LeftOut } from '../price/comparable';

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
  /** What all of it hangs on: without its number it would not even be likely. Of the likeliest one only, else null. */
  restsOn: 'serial' | null;
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

/** Why a price is not held against a band. */
export type NotComparable =
  /** no single thing of that kind is on sale: a part, a lot, a wish */
  | 'kind'
  | 'no-price'
  /** the start or the state of an auction */
  | 'bid'
  /** which currency is meant can't be settled */
  | 'currency'
  | 'no-rate'
  /** nothing that is a price: nought, or beyond all measure */
  | 'amount'
  /** refinished ones and the like have prices of their own */
  | 'priced-apart';

/** A price on record, and what it counted for. */
export interface PriceSeen {
  /** The pack and entry that has it; null: the user's own. */
  pack: string | null;
  entry: string | null;
  source: string | null;
  model: string;
  label: string;
  kind: 'asked' | 'paid';
  amount: number;
  currency: string;
  date: string;
  /** In words. */
  grade: string | null;
  /** Where it was seen: a place, and an address of the web; and what else was noted of it. */
  place: string | null;
  link: string | null;
  note: string | null;
  /** In today's money and the band's currency, made like the thing in question; null where it was left out. */
  price: number | null;
  /** 0 to 1. */
  counted: number;
  /** By what it multiplies the band's middle. */
  pull: number;
  leftOut: LeftOut | null;
}

export interface PriceReport {
  standing: PriceStanding;
  /** Why it is not comparable, or null. */
  why: NotComparable | null;
  /** Asked / mid, or null. */
  ratio: number | null;
  /** The probability that such a thing costs no more than this one, by the band; null without one. */
  probability: number | null;
  /** The price in the band's currency, where it is asked in another: by what one unit cost there, on which date, and the
   * pack that says so (null: the user). */
  converted: { from: string; to: string; amount: number; times: number; date: string; pack: string | null } | null;
  /** The band's currency, where the advert's sign may mean it and others (“$”), and was taken for it. */
  taken: string | null;
  band: {
    low: number;
    mid: number;
    high: number;
    /** The middle half. */
    half: { low: number; high: number };
    currency: string;
    /** Whether it is of prices asked or paid, and how many times what is paid is asked. */
    kind: 'asked' | 'paid';
    askedToPaid: number;
    /** The grade's id that it is for, or null. */
    grade: string | null;
    /** How many prices were counted; how many all that stands behind it is worth, and how many of those the pack's word. */
    observations: number;
    effective: number;
    stated: number;
  } | null;
  /** What the price depends on by the packs, as far as the advert says so; the band has been multiplied by it. */
  factors: {
    pack: string;
    entry: string;
    kind: 'completeness' | 'finish' | 'place';
    text: string;
    times: number;
    source: string | null;
  }[];
  /** Prices that were looked at, those that count for most first; 60 at most. */
  seen: PriceSeen[];
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
