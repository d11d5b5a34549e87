import type { DBSchema } from 'idb';
import type { Draft, Listing } from '../listing/types';

/** A pack on the shelf; its text lies beside it, so that listing packs doesn't read a hundred million bytes. */
export interface KeptPack {
  id: string;
  edition: number;
  /** ISO 8601 instant. */
  installedAt: string;
  /** Fingerprint of the key whose seal was found sound at installation; null or left out: unsealed. */
  sealedBy?: string | null;
  /** SHA-256 of the text, see content-hash.ts; left out until it has been computed. */
  hash?: string;
  /** The last day of this edition, YYYY-MM-DD; null or left out: none is given. */
  expires?: string | null;
}

/**
 * What is remembered of a sealed pack apart from the pack itself, and also when the pack is taken off the shelf: whose it
 * is, and how far it has come. Whoever goes back to an earlier edition does so on purpose.
 */
export interface KeptKnown {
  id: string;
  /** The pinned key: raw, base64url. */
  key: string;
  /** The highest edition that was seen, and the SHA-256 of its text. */
  edition: number;
  hash: string;
  /** The hash of the only key to which the pinned one may be changed, or null. */
  next: string | null;
  /** Keys that were pinned before, oldest first. */
  earlier: string[];
}

/** What the last check of a subscription came to. Names are those of src/sharing/subscribe. */
export type KeptFinding =
  | { state: 'never' }
  | { state: 'same' | 'overdue' }
  | { state: 'newer' | 'older' | 'other-text'; edition: number }
  | { state: 'failed'; problem: string };

/** A pack that is followed at an address, because the user said so. */
export interface KeptSubscription {
  /** The pack's id. */
  id: string;
  /** Of its notice. */
  address: string;
  /** ISO 8601 instant of the user's yes. */
  since: string;
  /** ISO 8601 instants: of the last check that was begun, and of the last one that came to an answer. */
  triedAt: string | null;
  checkedAt: string | null;
  /** Milliseconds since 1970: not before then is it checked by itself. */
  due: number;
  /** How many checks in a row came to nothing. */
  failures: number;
  finding: KeptFinding;
  /** The published file of the highest edition that was taken from there, by its SHA-256. */
  file: { edition: number; sha256: string };
  /** The edition that the user has looked at and left, or null. */
  left: number | null;
}

/** An edition that was fetched and proved, and waits for the user's yes. */
export interface KeptOffer {
  id: string;
  pack: KeptPack;
  text: string;
  /** What was known when it was judged, and what is to be remembered once it is taken; null: nothing, unsealed. */
  judgedAgainst: KeptKnown | null;
  remember: KeptKnown | null;
  /** SHA-256 of the text whose place it takes, or null. */
  replaces: string | null;
  subscription: { address: string; sha256: string };
}

/** The text of a pack as its file holds it, byte for byte: the truth from which all else can be made anew. */
export interface KeptText {
  id: string;
  text: string;
}

/** A pack made ready to be asked, by one version of the engine from one text. Can be thrown away at any time. */
export interface KeptCompiled {
  engine: string;
  hash: string;
  /** The first bytes, which come with the record. */
  first: ArrayBuffer;
  /**
   * Those behind them, null where there are none. As a file beside the database, which can be read here and there, and
   * comes twice as fast from Chromium as bytes that lie in a record. What most questions ask for is one by itself.
   */
  often: Blob | null;
  rest: Blob | null;
}

/** Packs that the user has switched off, by id, shipped ones too. A pack without an entry is on. */
export interface KeptSwitch {
  id: string;
  on: boolean;
}

export interface KeptDraft {
  id: string;
  draft: Draft;
  changedAt: string;
  /** How often it has been kept. Left out: kept before that was counted. */
  revision?: number;
  /** The draft from which it parted because two windows wrote at once; left out for all others. */
  partedFrom?: string;
}

/** An audit that the user chose to keep, as JSON text of the audit contract. */
export interface KeptAudit {
  id: string;
  url: string | null;
  title: string;
  asOf: string;
  audit: string;
}

/** What the user has seen or been told about one thing, by attribute. */
export interface KeptAnswer {
  /** The audit or page that it belongs to. */
  about: string;
  attribute: string;
  answer: string;
  at: string;
}

/** A price that the user has seen. */
export interface KeptObservation {
  id: string;
  model: string;
  kind: 'asked' | 'paid';
  /** A decimal string. */
  amount: string;
  currency: string;
  date: string;
  grade?: string;
  complete?: boolean;
  finish?: 'plain' | 'refinished';
  place?: string;
  seller?: 'private' | 'trade';
  link?: string;
  note?: string;
  /** ISO 8601 instant; left out by those of earlier versions. */
  keptAt?: string;
}

/** An exchange rate that the user has typed in: on that date one unit of `from` cost `rate` units of `to`. */
export interface KeptRate {
  id: string;
  from: string;
  to: string;
  /** A decimal string. */
  rate: string;
  date: string;
  /** ISO 8601 instant. */
  keptAt: string;
}

/** A photo that the user has picked from a file, drawn anew: what a camera writes into a file is not in it. */
export interface KeptPhoto {
  id: string;
  /** What it is of: the enquiry, the address of a page or the id of a draft. */
  about: string;
  /** The file's name, for telling photos apart. */
  name: string;
  /** ISO 8601 instant. */
  addedAt: string;
  /** A JPEG. As bytes rather than a Blob, which private modes of some browsers refuse to keep. */
  bytes: ArrayBuffer;
}

/** An advert that somebody goes to see: what a viewing sheet is made from, anew with the packs of the day. */
export interface KeptSheet {
  /** The address of the page, under which its answers are kept too. */
  about: string;
  /** ISO 8601 instant. */
  madeAt: string;
  listing: Listing;
}

/** A change of one entry or field, as src/sharing/propose/changes.ts has it. */
export interface KeptChange {
  do: string;
  part: string;
  entry: string;
  [more: string]: unknown;
}

/** What the user has changed for themselves of one pack: it lies over the pack, never in it. */
export interface KeptLayer {
  /** The pack's id. */
  id: string;
  /** The edition on which the first of the changes was made, and the SHA-256 of its text. */
  base: { edition: number; hash: string };
  changes: readonly KeptChange[];
}

/** Keys that sign: "member" for proposals, else the id of the pack that they seal. No private half can be had out. */
export interface KeptKeys {
  id: string;
  keys: CryptoKeyPair;
}

/**
 * A keeper's work on the next edition of a pack: proposals as they came, and what was decided, by the row's slot, with the
 * hash of what was seen there, for which alone it holds.
 */
export interface KeptDesk {
  id: string;
  proposals: readonly string[];
  decisions: readonly (readonly [slot: string, decision: unknown, saw: string])[];
  /** The files of the edition that was published last; null: none was from here. */
  published: { edition: number; files: readonly { name: string; text: string }[] } | null;
}

/** What tells this storage from one that is begun anew. */
export interface KeptMark {
  id: 'storage';
  mark: string;
}

export interface Schema extends DBSchema {
  packs: { key: string; value: KeptPack };
  texts: { key: string; value: KeptText };
  known: { key: string; value: KeptKnown };
  subscriptions: { key: string; value: KeptSubscription };
  offers: { key: string; value: KeptOffer };
  compiled: { key: [engine: string, hash: string]; value: KeptCompiled };
  switches: { key: string; value: KeptSwitch };
  drafts: { key: string; value: KeptDraft; indexes: { changedAt: string } };
  audits: { key: string; value: KeptAudit; indexes: { asOf: string } };
  answers: { key: [string, string]; value: KeptAnswer; indexes: { about: string } };
  observations: { key: string; value: KeptObservation };
  rates: { key: string; value: KeptRate };
  photos: { key: string; value: KeptPhoto; indexes: { about: string } };
  sheets: { key: string; value: KeptSheet; indexes: { madeAt: string } };
  layers: { key: string; value: KeptLayer };
  keys: { key: string; value: KeptKeys };
  desks: { key: string; value: KeptDesk };
  marks: { key: string; value: KeptMark };
}
