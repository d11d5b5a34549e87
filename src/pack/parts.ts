import type { PackedTree } from '../text/packed-phrases';
import type { About } from './schema/about';
import type { Pack } from './schema/index';
import type { Family, Model } from './schema/models';
import type { Column } from './serials/column';
import type { RunTable } from './serials/run-table';

/**
 * One pack made ready to be asked, by itself: no reference into another pack is resolved yet. It lies here as objects
 * (parts-of.ts) or as bytes (compiled/read.ts); whoever asks can't tell which.
 */
export interface PackParts {
  about: About;
  rest: RestOfPack;
  families: Entries<Family>;
  /** Models, then brand-free types. */
  models: Entries<Model>;
  /** How many of those are models. */
  brands: number;
  phrases: PhraseTable;
  names: NameTable;
  /** null where the pack has no serials. */
  runs: RunTable | null;
}

/** What of a pack is small, as it stands in its file. */
export type RestOfPack = Omit<Pack, '$schema' | 'about' | 'families' | 'models' | 'types' | 'serials'>;

/** Entries that are read when they are asked for, by their place. */
export interface Entries<T> {
  ids: Ids;
  at(place: number): T;
}

/** Ids that are read one by one, or all together where they are looked through. */
export interface Ids extends Texts {
  all(): readonly string[];
}

/** Texts that are read when they are asked for, by their place. */
export interface Texts {
  length: number;
  at(place: number): string;
}

/** Every phrase of a pack, with what it stands for. */
export interface PhraseTable {
  /** Phrases, each with its number. */
  tree: PackedTree;
  /** For each phrase the place of its language and the number of its meaning. */
  languages: Column;
  meanings: Column;
  languageNames: readonly string[];
  /** For each meaning: which kind it is, the place of its entry in the pack, and a place within that entry. */
  kinds: Column;
  entries: Column;
  within: Column;
  /** Every place made that the pack names, once. */
  places: readonly string[];
}

/** Every name of a model, family or maker. */
export interface NameTable {
  tree: PackedTree;
  texts: Texts;
  /** For each name: whose it is, the place of that model, family or maker, and how it stands. */
  kinds: Column;
  owners: Column;
  stands: Column;
  makers: readonly string[];
}
