import type { DBSchema } from 'idb';
import type { Draft } from '../listing/types';

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
  /** As a file beside the database: Chromium gets one from there twice as fast as bytes that lie in a record. */
  bytes: Blob;
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

export interface Schema extends DBSchema {
  packs: { key: string; value: KeptPack };
  texts: { key: string; value: KeptText };
  compiled: { key: [engine: string, hash: string]; value: KeptCompiled };
  switches: { key: string; value: KeptSwitch };
  drafts: { key: string; value: KeptDraft; indexes: { changedAt: string } };
  audits: { key: string; value: KeptAudit; indexes: { asOf: string } };
  answers: { key: [string, string]; value: KeptAnswer; indexes: { about: string } };
  observations: { key: string; value: KeptObservation; indexes: { model: string; date: string } };
  rates: { key: string; value: KeptRate };
}
