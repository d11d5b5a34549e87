import { IntervalTree } from 'node-interval-tree';
import type { Scheme, Serials } from '../../src/pack/schema/serials';
import { numberIn, writtenIn } from '../../src/pack/serial-form';
import { SerialIndex } from '../../src/pack/serial-index';
import { tabulate } from '../../src/pack/serials/run-table';

const SCHEME: Scheme = { id: 'x', prefix: 'X', digits: 9 };

/** The same numbers every time (mulberry32), so that two measurements ask the same questions. */
function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export interface Table {
  serials: Serials;
  spans: { low: number; high: number; row: number }[];
  /** Serials to ask for, within the numbers that were allotted or were left out between. */
  asked: string[];
}

/**
 * As tables are: blocks one after another with gaps between, in every tenth a smaller block for another market, at one in
 * a thousand another one that spans many (a year's allotment, stated once more as a whole), and now and then a stretch
 * of numbers that were never allotted.
 */
export function tableOf(count: number): Table {
  const random = chance(count);
  const spans: Table['spans'] = [];
  let next = 1;
  for (let block = 1; spans.length < count; block++) {
    const width = 20 + Math.floor(random() * 200);
    const add = (low: number, high: number) => spans.push({ low, high, row: spans.length });
    add(next, next + width);
    if (block % 10 === 0) add(next + Math.floor(width / 4), next + Math.floor(width / 2));
    if (block % 1000 === 0) add(Math.max(1, next - 50_000), next + 50_000);
    next += width + 1 + Math.floor(random() * 20) + (block % 2000 === 0 ? 200_000 : 0);
  }
  spans.length = count;
  const asked = Array.from({ length: 10_000 }, () => writtenIn(SCHEME, 1 + Math.floor(random() * next)));
  const runs = {
    scheme: spans.map(() => SCHEME.id),
    first: spans.map(({ low }) => String(low)),
    last: spans.map(({ high }) => String(high)),
    models: spans.map(({ row }) => [`m${row % 200}`]),
    year: spans.map(({ row }) => 1900 + (row % 60)),
  };
  return { serials: { schemes: [SCHEME], runs }, spans, asked };
}

export interface Searchable {
  /** The ends of the runs that hold the serial, the narrowest first. */
  find(serial: string): Span[];
  /** The same, with all that the table says of each. */
  told(serial: string): (readonly unknown[])[];
}

type Span = Pick<Table['spans'][number], 'low' | 'high'>;

export function ours({ serials }: Table): Searchable {
  const index = new SerialIndex([
    { pack: 'p', table: tabulate(serials), modelRef: (ref) => ref, citation: () => null },
  ]);
  return {
    find: (serial) => index.find(serial).map((run) => ({ low: run.firstNumber, high: run.lastNumber })),
    told: (serial) => index.find(serial).map((run) => [run.first, run.last, run.models, run.year]),
  };
}

/**
 * A general-purpose interval tree of the npm registry (node-interval-tree 2.1.2), asked for the same answers. What it
 * doesn't hold itself, it has for nothing: the table with the texts, and a span for each row.
 */
export function general({ spans, serials: { runs } }: Table): Searchable {
  const tree = new IntervalTree<Table['spans'][number]>();
  for (const span of spans) tree.insert(span);
  const search = (serial: string) => {
    const number = numberIn(SCHEME, serial);
    const found = number === null ? [] : tree.search(number, number);
    return found.sort((a, b) => a.high - a.low - (b.high - b.low) || a.low - b.low);
  };
  return {
    find: search,
    told: (serial) =>
      search(serial).map(({ row }) => [runs.first[row], runs.last[row], runs.models[row], runs.year![row]]),
  };
}
