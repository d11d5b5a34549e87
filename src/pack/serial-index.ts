import type { Scheme, Serials } from './schema/serials';
import { numberIn, numberInTable } from './serial-form';

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

export interface RunColumns {
  pack: string;
  serials: Serials;
  modelRef: (ref: string) => string;
  citation: (id: string | null | undefined) => string | null;
}

/** A serial may lie in this many runs of one pack at the most; a pack that says more is hostile. */
const MOST_RUNS = 64;

/** So many are looked at for the narrowest; where more hold a number, those that begin last. */
const MOST_SEEN = MOST_RUNS * 4;

/**
 * Which allotted runs hold a number?
 *
 * Problem: 100,000 runs are usual, they nest and overlap, and one wide run must not make every question slow.
 * Example: runs 1-100, 40-60, 50-50, 70-80; which hold 50? Sorted by first number: 1, 40, 50, 70.
 * Method: sorted by first number in typed arrays, seen as a balanced binary tree whose node i keeps the largest last
 * number below it (an implicit augmented interval tree). A question walks only into subtrees whose largest last number
 * reaches it: log n + the answers. Only numbers are kept per run; a Run is put together when it is asked for.
 */
export class SerialIndex {
  /** The tables of each pack. */
  readonly #packs: SchemeTable[][];

  constructor(columns: readonly RunColumns[]) {
    this.#packs = columns.map((column) => {
      const rows = new Map<string, number[]>();
      column.serials.runs.scheme.forEach((id, i) => {
        const list = rows.get(id);
        if (list) list.push(i);
        else rows.set(id, [i]);
      });
      return column.serials.schemes.map((scheme) => new SchemeTable(scheme, column, rows.get(scheme.id) ?? []));
    });
  }

  /** Schemes of whose form the number is, whether or not a run holds it. */
  schemesOf(normal: string): { pack: string; scheme: Scheme; number: number }[] {
    const out: { pack: string; scheme: Scheme; number: number }[] = [];
    for (const { scheme, pack } of this.#packs.flat()) {
      const number = numberIn(scheme, normal);
      if (number !== null) out.push({ pack, scheme, number });
    }
    return out;
  }

  schemes(): { pack: string; scheme: Scheme }[] {
    return this.#packs.flat().map(({ scheme, pack }) => ({ scheme, pack }));
  }

  /**
   * The runs that hold the number (normalised: capitals and digits), the narrowest first; 64 of each pack at most, so
   * that no pack can push out what another says.
   */
  find(normal: string): Run[] {
    const runs = this.#packs.flatMap((tables) => {
      const own: Run[] = [];
      for (const table of tables) {
        const number = numberIn(table.scheme, normal);
        if (number !== null) table.collect(number, own);
      }
      return own.sort(narrowestFirst).slice(0, MOST_RUNS);
    });
    return runs.sort(narrowestFirst);
  }

  /** The runs of one scheme that begin next to a number, in order: so many at or before it, so many after it. */
  around(pack: string, scheme: string, number: number, each: number): Run[] {
    const table = this.#packs.flat().find((one) => one.pack === pack && one.scheme.id === scheme);
    return table?.around(number, each) ?? [];
  }

  /** The runs that name a model, in order of their numbers. Walks all runs: for showing, not for searching. */
  runsOf(model: string): Run[] {
    return this.#packs.flat().flatMap((table) => table.runsOf(model));
  }
}

function narrowestFirst(a: Run, b: Run): number {
  return a.lastNumber - a.firstNumber - (b.lastNumber - b.firstNumber) || a.firstNumber - b.firstNumber;
}

class SchemeTable {
  readonly scheme: Scheme;
  readonly pack: string;
  readonly #columns: RunColumns;
  readonly #firsts: Float64Array;
  readonly #lasts: Float64Array;
  /** The largest last number in the subtree of each position. */
  readonly #reach: Float64Array;
  readonly #rows: Uint32Array;

  constructor(scheme: Scheme, columns: RunColumns, rows: readonly number[]) {
    this.scheme = scheme;
    this.pack = columns.pack;
    this.#columns = columns;
    const { first, last } = columns.serials.runs;
    const ends = rows
      .map((row) => ({
        row,
        first: numberInTable(scheme, first[row] ?? '') ?? Number.NaN,
        last: numberInTable(scheme, last[row] ?? '') ?? Number.NaN,
      }))
      .filter((run) => run.first <= run.last)
      .sort((a, b) => a.first - b.first || b.last - a.last);
    this.#firsts = Float64Array.from(ends, (run) => run.first);
    this.#lasts = Float64Array.from(ends, (run) => run.last);
    this.#rows = Uint32Array.from(ends, (run) => run.row);
    this.#reach = new Float64Array(ends.length);
    this.#fillReach(0, ends.length);
  }

  /** The tree over [from, to) has its root in the middle; the depth is log2 n, so recursion is safe. */
  #fillReach(from: number, to: number): number {
    if (from >= to) return Number.NEGATIVE_INFINITY;
    const middle = (from + to) >>> 1;
    const reach = Math.max(this.#lasts[middle]!, this.#fillReach(from, middle), this.#fillReach(middle + 1, to));
    this.#reach[middle] = reach;
    return reach;
  }

  /** Adds the runs that hold the number, until there are enough. */
  collect(number: number, out: Run[]): void {
    const walk = (from: number, to: number): void => {
      if (from >= to || out.length >= MOST_SEEN) return;
      const middle = (from + to) >>> 1;
      if (this.#reach[middle]! < number) return;
      // Later runs are the narrower ones more often: they are taken first, so that the cap keeps them.
      if (this.#firsts[middle]! <= number) {
        walk(middle + 1, to);
        if (this.#lasts[middle]! >= number && out.length < MOST_SEEN) out.push(this.#run(middle));
      }
      walk(from, middle);
    };
    walk(0, this.#firsts.length);
  }

  around(number: number, each: number): Run[] {
    let after = 0;
    for (let high = this.#firsts.length; after < high; ) {
      const middle = (after + high) >>> 1;
      if (this.#firsts[middle]! <= number) after = middle + 1;
      else high = middle;
    }
    const from = Math.max(0, after - each);
    const to = Math.min(this.#firsts.length, after + each);
    return Array.from({ length: to - from }, (_, i) => this.#run(from + i));
  }

  runsOf(model: string): Run[] {
    const out: Run[] = [];
    for (let i = 0; i < this.#rows.length; i++) {
      const run = this.#run(i);
      if (run.models.includes(model)) out.push(run);
    }
    return out;
  }

  #run(position: number): Run {
    const { runs } = this.#columns.serials;
    const row = this.#rows[position]!;
    const first = runs.first[row]!;
    const date = runs.date?.[row];
    return {
      pack: this.pack,
      entry: `${this.scheme.id}-${first.toLowerCase().replace(/[^a-z0-9]/g, '')}`,
      scheme: this.scheme,
      first,
      last: runs.last[row]!,
      firstNumber: this.#firsts[position]!,
      lastNumber: this.#lasts[position]!,
      models: runs.models[row]!.map(this.#columns.modelRef),
      year: runs.year?.[row] ?? (date ? Number(date.slice(0, 4)) : null),
      place: runs.place?.[row] ?? null,
      source: this.#columns.citation(runs.source?.[row] ?? this.scheme.source),
    };
  }
}
