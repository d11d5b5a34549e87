import type { Scheme } from './schema/serials';
import { numberIn } from './serial-form';
import { ODD, printedAs } from './serials/printed';
import { RunSearch } from './serials/run-search';
import type { RunTable } from './serials/run-table';

/** One allotted run, put together from its columns. */
export interface Run {
  pack: string;
  /** Entry id: the scheme's id and the first number. */
  entry: string;
  scheme: Scheme;
  /** As printed in the table. */
  first: string;
  last: string;
  firstNumber: number;
  lastNumber: number;
  /** packId/modelId, several where the block was shared. */
  models: string[];
  year: number | null;
  place: string | null;
  source: string | null;
}

/** One pack's runs, and how its references and sources are read. */
export interface RunColumns {
  pack: string;
  table: RunTable;
  modelRef: (ref: string) => string;
  citation: (id: string | null | undefined) => string | null;
}

/** A serial may lie in this many runs of one pack at the most; a pack that says more is hostile. */
const MOST_RUNS = 64;

/** So many are looked at for the narrowest; where more hold a number, those that begin last. */
const MOST_SEEN = MOST_RUNS * 4;

/** Which allotted runs hold a number? Only numbers are kept per run; a Run is put together when it is asked for. */
export class SerialIndex {
  readonly #packs: PackRuns[];

  constructor(columns: readonly RunColumns[]) {
    this.#packs = columns.map((column) => new PackRuns(column));
  }

  /** Schemes of whose form the number is, whether or not a run holds it. */
  schemesOf(normal: string): { pack: string; scheme: Scheme; number: number }[] {
    const out: { pack: string; scheme: Scheme; number: number }[] = [];
    for (const { pack, scheme } of this.schemes()) {
      const number = numberIn(scheme, normal);
      if (number !== null) out.push({ pack, scheme, number });
    }
    return out;
  }

  schemes(): { pack: string; scheme: Scheme }[] {
    return this.#packs.flatMap(({ pack, schemes }) => schemes.map((scheme) => ({ scheme, pack })));
  }

  /**
   * The runs that hold the number (normalised: capitals and digits), the narrowest first; 64 of each pack at most, so
   * that no pack can push out what another says.
   */
  find(normal: string): Run[] {
    if (this.#packs.length === 1) return this.#packs[0]!.find(normal);
    return this.#packs.flatMap((pack) => pack.find(normal)).sort(narrowestFirst);
  }

  /** The runs of one scheme that begin next to a number, in order: so many at or before it, so many after it. */
  around(pack: string, scheme: string, number: number, each: number): Run[] {
    return this.#packs.find((one) => one.pack === pack)?.around(scheme, number, each) ?? [];
  }

  /** The runs that name a model, in order of their numbers. Walks all runs: for showing, not for searching. */
  runsOf(model: string): Run[] {
    return this.#packs.flatMap((pack) => pack.runsOf(model));
  }
}

function narrowestFirst(a: Run, b: Run): number {
  return a.lastNumber - a.firstNumber - (b.lastNumber - b.firstNumber) || a.firstNumber - b.firstNumber;
}

class PackRuns {
  readonly pack: string;
  readonly schemes: readonly Scheme[];
  readonly #columns: RunColumns;
  readonly #table: RunTable;
  readonly #searches: readonly RunSearch[];
  /** Sets of models with their references in full, as far as they were asked for. */
  readonly #models: string[][] = [];

  constructor(columns: RunColumns) {
    const { firsts, widths, from, schemes } = columns.table;
    this.pack = columns.pack;
    this.schemes = schemes;
    this.#columns = columns;
    this.#table = columns.table;
    this.#searches = schemes.map((_, i) => new RunSearch(firsts, widths, from[i]!, from[i + 1]!));
  }

  find(normal: string): Run[] {
    const found: Place[] = [];
    for (let scheme = 0; scheme < this.schemes.length && found.length < MOST_SEEN; scheme++) {
      const number = numberIn(this.schemes[scheme]!, normal);
      if (number === null) continue;
      for (const at of this.#searches[scheme]!.holding(number, MOST_SEEN - found.length)) found.push({ scheme, at });
    }
    const { firsts, widths } = this.#table;
    if (found.length > 1) found.sort((a, b) => widths.at(a.at) - widths.at(b.at) || firsts.at(a.at) - firsts.at(b.at));
    return found.slice(0, MOST_RUNS).map((place) => this.#run(place));
  }

  around(scheme: string, number: number, each: number): Run[] {
    const place = this.schemes.findIndex(({ id }) => id === scheme);
    if (place < 0) return [];
    const after = this.#searches[place]!.after(number);
    const from = Math.max(this.#table.from[place]!, after - each);
    const to = Math.min(this.#table.from[place + 1]!, after + each);
    return Array.from({ length: to - from }, (_, i) => this.#run({ scheme: place, at: from + i }));
  }

  runsOf(model: string): Run[] {
    const { from, models } = this.#table;
    const out: Run[] = [];
    this.schemes.forEach((_, scheme) => {
      for (let at = from[scheme]!; at < from[scheme + 1]!; at++)
        if (this.#modelsIn(models.at(at)).includes(model)) out.push(this.#run({ scheme, at }));
    });
    return out;
  }

  #run({ scheme, at }: Place): Run {
    const { firsts, widths, printed, years, places, sources, models, words } = this.#table;
    const own = this.schemes[scheme]!;
    const firstNumber = firsts.at(at);
    const lastNumber = firstNumber + widths.at(at);
    const forms = printed.at(at);
    const first = this.#printed(forms & 15, own, firstNumber, 2 * at);
    return {
      pack: this.pack,
      entry: `${own.id}-${first.toLowerCase().replace(/[^a-z0-9]/g, '')}`,
      scheme: own,
      first,
      last: this.#printed(forms >> 4, own, lastNumber, 2 * at + 1),
      firstNumber,
      lastNumber,
      models: this.#modelsIn(models.at(at)),
      year: years.at(at) || null,
      place: words.places[places.at(at)] ?? null,
      source: this.#columns.citation(words.sources[sources.at(at)]),
    };
  }

  #printed(form: number, scheme: Scheme, number: number, at: number): string {
    return form === ODD ? this.#table.words.odd[at]! : printedAs(form, scheme, number);
  }

  #modelsIn(list: number): string[] {
    const there = this.#models[list];
    if (there) return there;
    const made = this.#table.words.models.at(list).map(this.#columns.modelRef);
    this.#models[list] = made;
    return made;
  }
}

/** One run of a pack: the place of its scheme, and its own in the columns. */
interface Place {
  scheme: number;
  at: number;
}
