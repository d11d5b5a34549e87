import type { PackedTree } from '../../text/packed-phrases';
import type { Entries, NameTable, PackParts, PhraseTable } from '../parts';
import type { RunTable, RunWords } from '../serials/run-table';
import { LAYOUT } from './layout';
import { SectionReader } from './sections';

/**
 * A pack from the bytes that `bytesOf` made of it. What is not asked for is not even parsed.
 * @returns null where the bytes are damaged or of another layout: they have to be made anew from the pack's text
 */
export function partsIn(bytes: ArrayBuffer): PackParts | null {
  const from = SectionReader.open(bytes, LAYOUT);
  if (!from) return null;
  const rest = once(() => from.json<PackParts['rest']>('rest'));
  return {
    about: from.json('about'),
    get rest() {
      return rest();
    },
    ...{ families: entries(from, 'families'), models: entries(from, 'models') },
    brands: from.json<{ brands: number }>('counts').brands,
    ...{ phrases: phrases(from), names: names(from), runs: from.has('runs.schemes') ? runs(from) : null },
  };
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function entries<T>(from: SectionReader, name: string): Entries<T> {
  const ids = once(() => from.json<string[]>(`${name}.ids`));
  const texts = from.texts(name);
  return {
    get ids() {
      return ids();
    },
    at: (place) => JSON.parse(texts.at(place)) as T,
  };
}

function tree(from: SectionReader, name: string): PackedTree {
  const u32 = (column: string) => from.u32(`${name}.tree.${column}`);
  const u16 = (column: string) => from.u16(`${name}.tree.${column}`);
  return {
    ...{ children: u32('children'), hashes: u32('hashes'), keyFrom: u32('keyFrom'), keyLength: u16('keyLength') },
    ...{ letters: u16('letters'), valuesFrom: u32('valuesFrom'), values: u32('values') },
  };
}

function phrases(from: SectionReader): PhraseTable {
  const words = once(() => from.json<Pick<PhraseTable, 'languageNames' | 'places'>>('phrases.words'));
  const column = (name: string) => from.column(`phrases.${name}`);
  return {
    tree: tree(from, 'phrases'),
    ...{ languages: column('languages'), meanings: column('meanings'), kinds: column('kinds') },
    ...{ entries: column('entries'), within: column('within') },
    get languageNames() {
      return words().languageNames;
    },
    get places() {
      return words().places;
    },
  };
}

function names(from: SectionReader): NameTable {
  const words = once(() => from.json<Pick<NameTable, 'makers'>>('names.words'));
  const column = (name: string) => from.column(`names.${name}`);
  return {
    ...{ tree: tree(from, 'names'), texts: from.texts('names.texts') },
    ...{ kinds: column('kinds'), owners: column('owners'), stands: column('stands') },
    get makers() {
      return words().makers;
    },
  };
}

function runs(from: SectionReader): RunTable {
  const words = once(() => from.json<RunWords>('runs.words'));
  const column = (name: string) => from.column(`runs.${name}`);
  return {
    ...{ schemes: from.json<RunTable['schemes']>('runs.schemes'), from: from.u32('runs.from') },
    ...{ firsts: column('firsts'), widths: column('widths'), printed: column('printed'), years: column('years') },
    ...{ models: column('models'), places: column('places'), sources: column('sources') },
    get words() {
      return words();
    },
  };
}
