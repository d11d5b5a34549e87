import type { Scheme } from '../schema/serials';
import { numberIn } from '../serial-form';
import { narrowestFirst, Run } from './run';
import { RunSearch } from './run-search';
import type { RunTable, SchemeRuns } from './run-table';

/** One pack's runs, and how its references and sources are read. */
export interface RunColumns {
  pack: string;
  table: RunTable;
  modelRef: (ref: string) => string;
  citation: (id: string | null | undefined) => string | null;
}

/** The runs of one scheme, with what was put together of them. */
export interface RunsOfScheme {
  scheme: Scheme;
  table: SchemeRuns;
  search: RunSearch;
}

/** A serial may lie in this many runs of one pack at the most; a pack that says more is hostile. */
const MOST_RUNS = 64;

/** So many are looked at for the narrowest; where more hold a number, those that begin last. */
const MOST_SEEN = MOST_RUNS * 4;

/** The runs of one pack. */
export class PackRuns {
  readonly pack: string;
  readonly table: RunTable;
  readonly citation: RunColumns['citation'];
  readonly schemes: readonly Scheme[];
  readonly #modelRef: RunColumns['modelRef'];
  /** Sets of models with their references in full, as far as they were asked for. */
  readonly #models: string[][] = [];
  /** By the place of their scheme, as far as they were asked for. */
  readonly #schemes: RunsOfScheme[] = [];

  constructor({ pack, table, modelRef, citation }: RunColumns) {
    this.pack = pack;
    this.table = table;
    this.citation = citation;
    this.schemes = table.schemes;
    this.#modelRef = modelRef;
  }

  /** Those that hold the number, the narrowest first, 64 at most. */
  find(normal: string): Run[] {
    const found: Run[] = [];
    for (let i = 0; i < this.schemes.length && found.length < MOST_SEEN; i++) {
      const number = numberIn(this.schemes[i]!, normal);
      if (number === null) continue;
      const among = this.#of(i);
      for (const at of among.search.holding(number, MOST_SEEN - found.length)) found.push(new Run(this, among, at));
    }
    if (found.length > 1) found.sort(narrowestFirst);
    return found.length > MOST_RUNS ? found.slice(0, MOST_RUNS) : found;
  }

  /** Those of one scheme that begin next to a number, in order: so many at or before it, so many after it. */
  around(scheme: string, number: number, each: number): Run[] {
    const place = this.schemes.findIndex(({ id }) => id === scheme);
    if (place < 0) return [];
    const among = this.#of(place);
    const after = among.search.after(number);
    const from = Math.max(0, after - each);
    const to = Math.min(among.table.firsts.length, after + each);
    return Array.from({ length: to - from }, (_, i) => new Run(this, among, from + i));
  }

  /** The models of one set, packId/modelId. */
  modelsIn(set: number): string[] {
    this.#models[set] ??= this.table.words.models.at(set).map(this.#modelRef);
    return this.#models[set];
  }

  #of(place: number): RunsOfScheme {
    const there = this.#schemes[place];
    if (there) return there;
    const table = this.table.of(place);
    const made = { scheme: this.schemes[place]!, table, search: new RunSearch(table) };
    this.#schemes[place] = made;
    return made;
  }
}
