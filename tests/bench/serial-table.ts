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
  /** Serials to ask for, within the numbers that were allotted. */
  asked: string[];
}

/**
 * As tables are: blocks one after another with gaps between, in every tenth a smaller block for another market, and one
 * block in a thousand that spans many others (a year's allotment, stated once more as a whole).
 */
export function tableOf(count: number): Table {
  const random = chance(count);
  const spans: Table['spans'] = [];
  let next = 1;
  while (spans.length < count) {
    const width = 20 + Math.floor(random() * 200);
    const add = (low: number, high: number) => spans.push({ low, high, row: spans.length });
    add(next, next + width);
    if (spans.length % 10 === 0) add(next + Math.floor(width / 4), next + Math.floor(width / 2));
    if (spans.length % 1000 === 0) add(Math.max(1, next - 50_000), next + 50_000);
    next += width + 1 + Math.floor(random() * 20);
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
  /** The rows whose run holds the serial, the narrowest first. */
  find(serial: string): { low: number; high: number }[];
}

export function ours({ serials }: Table): Searchable {
  const index = new SerialIndex([
    { pack: 'p', table: tabulate(serials), modelRef: (ref) => `p/${ref}`, citation: () => null },
  ]);
  return { find: (serial) => index.find(serial).map((run) => ({ low: run.firstNumber, high: run.lastNumber })) };
}

/** A general-purpose interval tree of the npm registry (node-interval-tree 2.1.2), asked for the same answer. */
export function general({ spans }: Table): Searchable {
  const tree = new IntervalTree<Table['spans'][number]>();
  for (const span of spans) tree.insert(span);
  return {
    find: (serial) => {
      const number = numberIn(SCHEME, serial);
      const found = number === null ? [] : tree.search(number, number);
      return found.sort((a, b) => a.high - a.low - (b.high - b.low) || a.low - b.low);
    },
  };
}
