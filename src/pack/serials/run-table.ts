import type { Scheme, Serials } from '../schema/serials';
import { numberInTable } from '../serial-form';
import { Column } from './column';
import { Dictionary } from './dictionary';
import { formOf, ODD } from './printed';
import { runIndexOf, type SearchedRuns } from './run-search';

/** The runs of one pack, by scheme: who asks for a number of one scheme needs those of that one alone. */
export interface RunTable {
  schemes: readonly Scheme[];
  /** How many there are of all schemes. */
  count: number;
  /** Those of a scheme, by its place. */
  of(scheme: number): SchemeRuns;
  words: RunWords;
}

/** The runs of one scheme as columns of numbers: by first number, of two that begin alike the wider first. */
export interface SchemeRuns extends SearchedRuns {
  /** How the first and the last number are printed, see printed.ts; of the two the first in the lower four bits. */
  printed: Column;
  /** 0 where no year is known. */
  years: Column;
  /** Places in the lists of the table's words. */
  models: Column;
  places: Column;
  sources: Column;
  /** Numbers that are printed in no usual way: twice the run's position, and one more for its last number -> as printed. */
  odd: Readonly<Record<number, string>>;
}

/** What the numbers of a table stand for, whatever the scheme. */
export interface RunWords {
  /** Sets of models, as references that the pack uses. */
  models: ModelSets;
  places: readonly (string | null)[];
  /** Ids of sources. */
  sources: readonly (string | null)[];
}

/** Sets that are read when they are asked for, by their place. */
export interface ModelSets {
  length: number;
  at(place: number): readonly string[];
}

/** Puts a pack's runs into columns. Runs of unknown schemes, and those whose ends are no numbers in order, are left out. */
export function tabulate(serials: Serials): RunTable {
  const { schemes } = serials;
  const words: Words = {
    models: new Dictionary((list) => list.join(' ')),
    places: new Dictionary((name) => name ?? ''),
    sources: new Dictionary((id) => id ?? ''),
  };
  const tables = endsOf(serials).map((ends, i) => tableOf(schemes[i]!, ends, serials.runs, words));
  const sets = words.models.values;
  return {
    schemes,
    count: tables.reduce((sum, { firsts }) => sum + firsts.length, 0),
    of: (scheme) => tables[scheme]!,
    words: {
      models: { length: sets.length, at: (place) => sets[place]! },
      ...{ places: words.places.values, sources: words.sources.values },
    },
  };
}

interface Words {
  models: Dictionary<readonly string[]>;
  places: Dictionary<string | null>;
  sources: Dictionary<string | null>;
}

function tableOf(scheme: Scheme, ends: Ends, runs: Serials['runs'], words: Words): SchemeRuns {
  const { length } = ends.rows;
  const printed = new Uint8Array(length);
  const years = new Uint16Array(length);
  const [models, places, sources] = [new Uint32Array(length), new Uint32Array(length), new Uint32Array(length)];
  const odd: Record<number, string> = {};
  const form = (text: string, number: number, at: number): number => {
    const found = formOf(scheme, text, number);
    if (found === ODD) odd[at] = text;
    return found;
  };
  ends.rows.forEach((row, i) => {
    const first = form(runs.first[row]!, ends.firsts[i]!, 2 * i);
    printed[i] = first + 16 * form(runs.last[row]!, ends.lasts[i]!, 2 * i + 1);
    const date = runs.date?.[row];
    years[i] = runs.year?.[row] ?? (date ? Number(date.slice(0, 4)) : 0);
    models[i] = words.models.place(runs.models[row]!);
    places[i] = words.places.place(runs.place?.[row] ?? null);
    sources[i] = words.sources.place(runs.source?.[row] ?? scheme.source ?? null);
  });
  const firsts = Column.of(ends.firsts);
  const widths = Column.of(ends.lasts.map((last, i) => last - ends.firsts[i]!));
  return {
    ...{ firsts, widths, index: runIndexOf(firsts, widths), odd },
    ...{ printed: Column.of(printed), years: Column.of(years), models: Column.of(models) },
    ...{ places: Column.of(places), sources: Column.of(sources) },
  };
}

/** The runs of one scheme, in order. */
interface Ends {
  /** Which row of the pack's own table each is. */
  rows: readonly number[];
  firsts: Float64Array;
  lasts: Float64Array;
}

function endsOf({ schemes, runs }: Serials): Ends[] {
  const count = runs.scheme.length;
  const places = new Map(schemes.map(({ id }, i) => [id, i]));
  const [firsts, lasts] = [new Float64Array(count), new Float64Array(count)];
  const rows = schemes.map((): number[] => []);
  for (let row = 0; row < count; row++) {
    const place = places.get(runs.scheme[row]!);
    if (place === undefined) continue;
    const first = numberInTable(schemes[place]!, runs.first[row] ?? '');
    const last = numberInTable(schemes[place]!, runs.last[row] ?? '');
    if (first === null || last === null || first > last) continue;
    firsts[row] = first;
    lasts[row] = last;
    rows[place]!.push(row);
  }
  const inOrder = (a: number, b: number): number => firsts[a]! - firsts[b]! || lasts[b]! - lasts[a]!;
  return rows.map((list) => {
    const sorted = isSorted(list, inOrder) ? list : list.sort(inOrder);
    const taken = (values: Float64Array): Float64Array => Float64Array.from(sorted, (row) => values[row]!);
    return { rows: sorted, firsts: taken(firsts), lasts: taken(lasts) };
  });
}

/** Tables mostly come in order, and a million comparisons are less than twenty million. */
function isSorted(list: readonly number[], compare: (a: number, b: number) => number): boolean {
  for (let i = 1; i < list.length; i++) if (compare(list[i - 1]!, list[i]!) > 0) return false;
  return true;
}
