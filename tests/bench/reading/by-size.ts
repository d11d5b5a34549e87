import type { Measured } from './in-page';

/** Nodes from which on a page belongs to the next class. Real pages have some 4,000 in the median. */
const CLASSES: [name: string, below: number][] = [
  ['below 1,000 nodes', 1000],
  ['1,000 to 3,000', 3000],
  ['3,000 to 10,000', 10_000],
  ['10,000 and more', Number.POSITIVE_INFINITY],
];

const sum = (all: readonly number[]): number => all.reduce((whole, one) => whole + one, 0);
const middle = (all: readonly number[]): number => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)]!;

/**
 * Our time as a share of readability's, in each class of size and over all: by the sums of both times, where large pages
 * count for most, and by the median of the pages' own shares, where each page counts alike. Once for the median round
 * of each page and once for its first, in which nothing is compiled yet.
 */
export function ratiosBySize(read: readonly Measured[]): string[] {
  const lines = CLASSES.map(([name, below], index) => {
    const from = CLASSES[index - 1]?.[1] ?? 0;
    return lineOf(
      name,
      read.filter(({ nodes }) => nodes >= from && nodes < below),
    );
  });
  return [...lines, lineOf('all pages', read)].filter((line) => line !== null);
}

function lineOf(name: string, pages: readonly Measured[]): string | null {
  if (pages.length === 0) return null;
  const shares = (ours: (one: Measured) => number, its: (one: Measured) => number): string => {
    const bySum = sum(pages.map(ours)) / sum(pages.map(its));
    const byMedian = middle(pages.map((one) => ours(one) / its(one)));
    return `by sum ${bySum.toFixed(2)}, by median ${byMedian.toFixed(2)}`;
  };
  const median = shares(
    ({ collect, settle }) => collect + settle,
    ({ readability }) => readability,
  );
  const first = shares(
    ({ first }) => first.ours,
    ({ first }) => first.readability,
  );
  const count = `${pages.length} ${pages.length === 1 ? 'page' : 'pages'}`;
  return `  ours / readability, ${name.padEnd(18)} ${count.padStart(9)}: ${median}; the first time ${first}`;
}
