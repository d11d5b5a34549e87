import type { PackedTree } from '../../text/packed-phrases';
import type { Entries, NameTable, PackParts, PhraseTable, Texts } from '../parts';
import type { Model } from '../schema/models';
import type { ModelSets, RunTable, RunWords } from '../serials/run-table';
import { LAYOUT } from './layout';
import { SectionReader } from './sections';
import { readValue } from './values';
import type { PlacedSet } from './write';

/**
 * A pack from the bytes that `bytesOf` made of it. What is not asked for is not even parsed.
 * @returns null where the bytes are damaged or of another layout: they have to be made anew from the pack's text
 */
export function partsIn(bytes: ArrayBuffer): PackParts | null {
  const from = SectionReader.open(bytes, LAYOUT);
  return from && new Reader(from).parts();
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
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
    const rest = once(() => this.#from.json<PackParts['rest']>('rest'));
    const models = this.#entries<Model>('models');
    return {
      about: this.#from.json('about'),
      get rest() {
        return rest();
      },
      ...{ families: this.#entries('families'), models },
      brands: this.#from.json<{ brands: number }>('counts').brands,
      ...{ phrases: this.#phrases(), names: this.#names() },
      runs: this.#from.has('runs.schemes') ? this.#runs(models) : null,
    };
  }

  #value<T>(name: string): () => T {
    return once(() => this.#values<T>(name).at(0));
  }

  #values<T>(name: string): { length: number; at(place: number): T } {
    const { length, at } = this.#from.pieces(name);
    return { length, at: (place) => readValue(at(place), this.#texts, this.#shapes) as T };
  }

  #entries<T>(name: string): Entries<T> {
    const ids = once(() => this.#from.json<string[]>(`${name}.ids`));
    return {
      get ids() {
        return ids();
      },
      at: this.#values<T>(name).at,
    };
  }

  #tree(name: string): PackedTree {
    const column = <N extends PackedTree[keyof PackedTree]>(of: keyof PackedTree) =>
      this.#from.numbers<N>(`${name}.tree.${of}`);
    return {
      ...{ children: column('children'), keys: column('keys'), hashes: column<Uint32Array>('hashes') },
      ...{ lettersFrom: column('lettersFrom'), letters: column('letters') },
      ...{ valuesFrom: column('valuesFrom'), values: column('values') },
    };
  }

  #phrases(): PhraseTable {
    const words = this.#value<Pick<PhraseTable, 'languageNames' | 'places'>>('phrases.words');
    const column = (name: string) => this.#from.column(`phrases.${name}`);
    return {
      tree: this.#tree('phrases'),
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

  #names(): NameTable {
    const words = this.#value<Pick<NameTable, 'makers'>>('names.words');
    const column = (name: string) => this.#from.column(`names.${name}`);
    const texts = column('texts');
    return {
      ...{ tree: this.#tree('names'), texts: { length: texts.length, at: (i) => this.#texts.at(texts.at(i)) } },
      ...{ kinds: column('kinds'), owners: column('owners'), stands: column('stands') },
      get makers() {
        return words().makers;
      },
    };
  }

  #sets(models: Entries<Model>): ModelSets {
    const { length, at } = this.#values<PlacedSet>('runs.models.sets');
    const ref = (placed: number | string) => (typeof placed === 'string' ? placed : models.ids[placed]!);
    return { length, at: (place) => [at(place)].flat().map(ref) };
  }

  #runs(models: Entries<Model>): RunTable {
    const others = this.#value<Omit<RunWords, 'models'>>('runs.words');
    const words = once((): RunWords => ({ ...others(), models: this.#sets(models) }));
    const column = (name: string) => this.#from.column(`runs.${name}`);
    return {
      ...{ schemes: this.#from.json<RunTable['schemes']>('runs.schemes'), from: this.#from.numbers('runs.from') },
      ...{ firsts: column('firsts'), widths: column('widths'), printed: column('printed'), years: column('years') },
      ...{ models: column('models'), places: column('places'), sources: column('sources') },
      get words() {
        return words();
      },
    };
  }
}
