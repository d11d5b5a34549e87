import type { Scheme, Serials } from '../schema/serials';
import { numberInTable } from '../serial-form';
import { Column } from './column';
import { Dictionary } from './dictionary';
import { formOf, ODD } from './printed';

/** The runs of one pack as columns of numbers: by scheme, then by first number, of two that begin alike the wider first. */
export interface RunTable {
  schemes: readonly Scheme[];
  /** Where each scheme's runs begin, in the order of the schemes; the last one is their end. */
  from: Uint32Array;
  firsts: Column;
  /** Last number less first number. */
  widths: Column;
  /** How the first and the last number are printed, see printed.ts; of the two the first in the lower four bits. */
  printed: Column;
  /** 0 where no year is known. */
  years: Column;
  /** Places in the lists of `words`. */
  models: Column;
  places: Column;
  sources: Column;
  words: RunWords;
}

/** What the numbers of a table stand for. */
export interface RunWords {
  /** Sets of models, as references that the pack uses. */
  models: ModelSets;
  places: readonly (string | null)[];
  /** Ids of sources. */
  sources: readonly (string | null)[];
  /** Numbers that are printed in no usual way: twice the run's position, and one more for its last number -> as printed. */
  odd: Readonly<Record<number, string>>;
}

/** Sets that are read when they are asked for, by their place. */
export interface ModelSets {
  length: number;
  at(place: number): readonly string[];
}

/** Puts a pack's runs into columns. Runs of unknown schemes, and those whose ends are no numbers in order, are left out. */
export function tabulate({ schemes, runs }: Serials): RunTable {
  const ends = endsOf({ schemes, runs });
  const { length } = ends.rows;
  const printed = new Uint8Array(length);
  const years = new Uint16Array(length);
  const [models, places, sources] = [new Uint32Array(length), new Uint32Array(length), new Uint32Array(length)];
  const odd: Record<number, string> = {};
  const modelLists = new Dictionary<readonly string[]>((list) => list.join(' '));
  const placeNames = new Dictionary<string | null>((name) => name ?? '');
  const sourceIds = new Dictionary<string | null>((id) => id ?? '');
  ends.from.slice(0, -1).forEach((from, place) => {
    const scheme = schemes[place]!;
    for (let i = from; i < ends.from[place + 1]!; i++) {
      const row = ends.rows[i]!;
      const form = (text: string, number: number, at: number): number => {
        const found = formOf(scheme, text, number);
        if (found === ODD) odd[at] = text;
        return found;
      };
      printed[i] =
        form(runs.first[row]!, ends.firsts[i]!, 2 * i) + 16 * form(runs.last[row]!, ends.lasts[i]!, 2 * i + 1);
      const date = runs.date?.[row];
      years[i] = runs.year?.[row] ?? (date ? Number(date.slice(0, 4)) : 0);
      models[i] = modelLists.place(runs.models[row]!);
      places[i] = placeNames.place(runs.place?.[row] ?? null);
      sources[i] = sourceIds.place(runs.source?.[row] ?? scheme.source ?? null);
    }
  });
  return {
    ...{ schemes, from: ends.from, firsts: Column.of(ends.firsts) },
    widths: Column.of(ends.lasts.map((last, i) => last - ends.firsts[i]!)),
    ...{ printed: Column.of(printed), years: Column.of(years), models: Column.of(models) },
    ...{ places: Column.of(places), sources: Column.of(sources) },
    words: { models: setsIn(modelLists.values), places: placeNames.values, sources: sourceIds.values, odd },
  };
}

function setsIn(sets: readonly (readonly string[])[]): ModelSets {
  return { length: sets.length, at: (place) => sets[place]! };
}

interface Ends {
  from: Uint32Array;
  /** Which row of the pack's own table each run is. */
  rows: Uint32Array;
  firsts: Float64Array;
  lasts: Float64Array;
}

function endsOf({ schemes, runs }: Serials): Ends {
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
  const sorted = rows.map((list) => (isSorted(list, inOrder) ? list : list.sort(inOrder)));
  const from = new Uint32Array(schemes.length + 1);
  sorted.forEach((list, i) => {
    from[i + 1] = from[i]! + list.length;
  });
  const all = new Uint32Array(from[schemes.length]!);
  sorted.forEach((list, i) => {
    all.set(list, from[i]!);
  });
  const taken = (values: Float64Array): Float64Array => Float64Array.from(all, (row) => values[row]!);
  return { from, rows: all, firsts: taken(firsts), lasts: taken(lasts) };
}

/** Tables mostly come in order, and a million comparisons are less than twenty million. */
function isSorted(list: readonly number[], compare: (a: number, b: number) => number): boolean {
  for (let i = 1; i < list.length; i++) if (compare(list[i - 1]!, list[i]!) > 0) return false;
  return true;
}
