import { Readability } from '@mozilla/readability';
import { collect, collectInSlices } from '../../../src/listing/collect';
import { settle } from '../../../src/listing/settle';
import type { Listing } from '../../../src/listing/types';

export interface Measured {
  listing: Listing;
  nodes: number;
  /** Median milliseconds over the rounds. */
  collect: number;
  settle: number;
  walk: number;
  readability: number;
  /** The first round, before the browser's compiler has seen the code: what one press of the button takes. */
  first: { ours: number; readability: number };
  /** The quickest round of each: whatever else the machine does makes a round slower and never quicker. */
  quickest: { ours: number; readability: number };
  /**
   * Longest time for which the page waits while it is read in slices, in milliseconds, and how many slices there are: of
   * the reading that was disturbed least.
   */
  slices: { longest: number; count: number };
}

const median = (all: number[]): number => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)] ?? Number.NaN;

function timed<T>(run: () => T): { value: T; milliseconds: number } {
  const begun = performance.now();
  const value = run();
  return { value, milliseconds: performance.now() - begun };
}

/** Every node once: what any reader needs at least. */
function walkAll(document: Document): number {
  let count = 0;
  const walker = document.createTreeWalker(document);
  while (walker.nextNode()) count++;
  return count;
}

/**
 * Reads one document with ours and with readability, in turns. Readability changes what it reads, so that it gets a
 * fresh clone each time; cloning is not counted. Ours reads the page itself, where it asks the layout what is hidden.
 */
export async function measure(document: Document, url: string, rounds: number): Promise<Measured> {
  const times = { collect: [] as number[], settle: [] as number[], walk: [] as number[], readability: [] as number[] };
  let listing: Listing | null = null;
  let nodes = 0;
  for (let round = 0; round < rounds; round++) {
    const clone = document.cloneNode(true) as Document;
    const harvest = timed(() => collect(document, { url }));
    const settled = timed(() => settle(harvest.value, url));
    const walked = timed(() => walkAll(document));
    times.readability.push(timed(() => new Readability(clone).parse()).milliseconds);
    times.collect.push(harvest.milliseconds);
    times.settle.push(settled.milliseconds);
    times.walk.push(walked.milliseconds);
    listing = settled.value;
    nodes = walked.value;
  }
  return {
    listing: listing!,
    nodes,
    collect: median(times.collect),
    settle: median(times.settle),
    walk: median(times.walk),
    readability: median(times.readability),
    slices: await leastDisturbed(document, url),
    quickest: {
      ours: Math.min(...times.collect.map((time, round) => time + times.settle[round]!)),
      readability: Math.min(...times.readability),
    },
    first: { ours: times.collect[0]! + times.settle[0]!, readability: times.readability[0]! },
  };
}

const SLICED = 5;

async function leastDisturbed(document: Document, url: string): Promise<Measured['slices']> {
  let least = await slicesOf(document, url);
  for (let round = 1; round < SLICED; round++) {
    const slices = await slicesOf(document, url);
    if (slices.longest < least.longest) least = slices;
  }
  return least;
}

/** As the reader in a page does it. */
async function slicesOf(document: Document, url: string): Promise<Measured['slices']> {
  let longest = 0;
  let count = 1;
  let begun = performance.now();
  const end = () => {
    longest = Math.max(longest, performance.now() - begun);
  };
  const pause = async () => {
    end();
    count++;
    await new Promise((resolve) => setTimeout(resolve));
    begun = performance.now();
  };
  await collectInSlices(document, { url, pause });
  end();
  return { longest, count };
}

/** Reads again and again, for as long as a profile is taken. */
export function repeat(document: Document, url: string, milliseconds: number): number {
  let readings = 0;
  for (const begun = performance.now(); performance.now() - begun < milliseconds; readings++)
    settle(collect(document, { url }), url);
  return readings;
}
