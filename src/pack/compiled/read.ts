import type { PackedTree } from '../../text/packed-phrases';
import type { Entries, NameTable, PackParts, PhraseTable, Texts } from '../parts';
import type { Model } from '../schema/models';
import type { ModelSets, RunTable, SchemeRuns } from '../serials/run-table';
import { LAYOUT } from './layout';
import { once } from './once';
import { DamagedError, type Stored } from './pages';
import { SectionReader } from './section-reader';
import { readValue } from './values';
import type { PlacedSet } from './write';

/**
 * A pack from the bytes that `bytesOf` made of it. What is not asked for is not even parsed.
 * @returns null where the bytes are damaged or of another layout: they have to be made anew from the pack's text
 */
export function partsIn(bytes: ArrayBuffer): PackParts | null {
  return partsStored({ length: bytes.byteLength, first: bytes, read: () => new ArrayBuffer(0) }, true);
}

/**
 * The same from bytes that lie elsewhere, of which those alone are fetched and looked at that are asked for.
 * @param whole all are looked at, as `partsIn` does; otherwise whatever is asked may throw a DamagedError
 */
export function partsStored(stored: Stored, whole: boolean): PackParts | null {
  try {
    const from = SectionReader.open(stored, LAYOUT, whole);
    return from && new Reader(from).parts();
  } catch (error) {
    if (error instanceof DamagedError) return null;
    throw error;
  }
}

class Reader {
  readonly #from: SectionReader;
  readonly #texts: Texts;
  readonly #shapes: () => string[][];

  constructor(from: SectionReader) {
    this.#from = from;
    this.#texts = from.texts('texts');
    this.#shapes = once(() => from.json('shapes'));
  }

  parts(): PackParts {
    const from = this.#from;
    const { brands, runs: count } = from.json<{ brands: number; runs: number }>('counts');
    const models = this.#entries<Model>('models');
    const rest = once(() => from.json<PackParts['rest']>('rest'));
    const phrases = once(() => this.#phrases());
    const names = once(() => this.#names());
    return {
      ...{ about: from.json('about'), brands, families: this.#entries('families'), models },
      get rest() {
        return rest();
      },
      get phrases() {
        return phrases();
      },
      get names() {
        return names();
      },
      runs: from.has('runs.schemes') ? this.#runs(models, count) : null,
    };
  }

  #values<T>(name: string): { length: number; at(place: number): T } {
    const { length, at } = this.#from.pieces(name);
    return { length, at: (place) => readValue(at(place), this.#texts, this.#shapes) as T };
  }

  #entries<T>(name: string): Entries<T> {
    return { ids: this.#from.list(`${name}.ids`), at: this.#values<T>(name).at };
  }

  #tree(name: string): PackedTree {
    const column = <N extends PackedTree[keyof PackedTree]>(of: keyof PackedTree) =>
      this.#from.numbers<N>(`${name}.tree.${of}`);
    return {
      ...{ children: column('children'), keys: column('keys'), hashes: column<Uint32Array>('hashes') },
      ...{ lettersFrom: column('lettersFrom'), letters: column('letters') },
      ...{ valuesFrom: column('valuesFrom'), values: column('values'), openings: column<Uint32Array>('openings') },
    };
  }

  #phrases(): PhraseTable {
    const column = (name: string) => this.#from.column(`phrases.${name}`);
    return {
      ...this.#from.json<Pick<PhraseTable, 'languageNames' | 'places'>>('phrases.words'),
      ...{ languages: column('languages'), meanings: column('meanings'), kinds: column('kinds') },
      ...{ entries: column('entries'), within: column('within'), tree: this.#tree('phrases') },
    };
  }

  #names(): NameTable {
    this.#from.need('names.tree.children', 'names.words');
    const column = (name: string) => this.#from.column(`names.${name}`);
    const texts = column('texts');
    return {
      ...this.#from.json<Pick<NameTable, 'makers'>>('names.words'),
      ...{ tree: this.#tree('names'), texts: { length: texts.length, at: (i) => this.#texts.at(texts.at(i)) } },
      ...{ kinds: column('kinds'), owners: column('owners'), stands: column('stands') },
    };
  }

  #runs(models: Entries<Model>, count: number): RunTable {
    const tables = this.#from.stretches('runs.tables');
    const words = once(() => ({
      ...this.#from.json<Omit<RunTable['words'], 'models'>>('runs.words'),
      models: this.#sets(models),
    }));
    return {
      ...{ schemes: this.#from.json<RunTable['schemes']>('runs.schemes'), count },
      of: (scheme) => this.#table(tables.at(scheme)),
      get words() {
        return words();
      },
    };
  }

  #table(from: SectionReader): SchemeRuns {
    const column = (name: string) => from.column(name);
    const odd = once(() => from.json<SchemeRuns['odd']>('odd'));
    return {
      ...{ firsts: column('firsts'), widths: column('widths'), printed: column('printed'), years: column('years') },
      ...{ models: column('models'), places: column('places'), sources: column('sources') },
      ...{ index: { starts: column('starts'), reaches: column('reaches') } },
      get odd() {
        return odd();
      },
    };
  }

  #sets({ ids }: Entries<Model>): ModelSets {
    const { length, at } = this.#values<PlacedSet>('runs.sets');
    const ref = (placed: number | string) => (typeof placed === 'string' ? placed : ids.at(placed));
    return { length, at: (place) => [at(place)].flat().map(ref) };
  }
}
