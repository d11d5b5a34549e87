import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { general, ours, type Searchable, type Table, tableOf } from './serial-table';

// `tsx tests/bench/serials.ts`: the serial index beside a general-purpose interval tree, on the same tables, asked the
// same questions in turns. Figures are of this machine, today. Their answers are compared first.

const ROUNDS = 15;

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

function memory(): number {
  collectGarbage();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

function built(make: () => Searchable): { index: Searchable; milliseconds: number; bytes: number } {
  const before = memory();
  const begun = performance.now();
  const index = make();
  const milliseconds = performance.now() - begun;
  return { index, milliseconds, bytes: memory() - before };
}

/** Microseconds for one question, over all that are asked. */
function askedOnce(index: Searchable, { asked }: Table): number {
  const begun = performance.now();
  for (const serial of asked) index.find(serial);
  return ((performance.now() - begun) * 1000) / asked.length;
}

function median(list: number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;
}

function compare(one: Searchable, other: Searchable, { asked }: Table): number {
  let answers = 0;
  for (const serial of asked) {
    const spans = (index: Searchable) => JSON.stringify(index.find(serial).map(({ low, high }) => [low, high]));
    if (spans(one) !== spans(other)) throw new Error(`${serial}: ${spans(one)} beside ${spans(other)}`);
    answers += one.find(serial).length;
  }
  return answers / asked.length;
}

const column = (text: string) => text.padStart(16);
console.log(`Node ${process.version}; median of ${ROUNDS} rounds in turns\n`);
console.log(
  [column('runs'), column('answers each'), column('ours'), column('general tree'), column('general / ours')].join(''),
);
for (const count of [100_000, 1_000_000]) {
  const table = tableOf(count);
  const mine = built(() => ours(table));
  const theirs = built(() => general(table));
  const answers = compare(mine.index, theirs.index, table);
  const times = { mine: [] as number[], theirs: [] as number[] };
  for (let round = 0; round < ROUNDS; round++) {
    times.mine.push(askedOnce(mine.index, table));
    times.theirs.push(askedOnce(theirs.index, table));
  }
  const line = (what: string, a: number, b: number, unit: string, digits: number) =>
    console.log(
      `${column(count.toLocaleString('en'))}${column(answers.toFixed(2))}${column(`${a.toFixed(digits)} ${unit}`)}${column(`${b.toFixed(digits)} ${unit}`)}${column((b / a).toFixed(2))}  ${what}`,
    );
  line('one question', median(times.mine), median(times.theirs), 'µs', 2);
  line('to build', mine.milliseconds, theirs.milliseconds, 'ms', 0);
  line('memory for each run', mine.bytes / count, theirs.bytes / count, 'B', 0);
}
