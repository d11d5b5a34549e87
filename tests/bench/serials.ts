import { setTimeout } from 'node:timers/promises';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { general, ours, type Searchable, type Table, tableOf } from './serial-table';

// `tsx tests/bench/serials.ts`: the serial index beside a general-purpose interval tree, on the same tables, asked the
// same questions in turns: which runs hold this number, the narrowest first? Some are held by several, some by none. Then
// once more with all that the table says of them read. Figures are of this machine, today. Their answers are compared
// first. Memory is what is kept once the first question has been answered: the heap's growth after its garbage was
// collected, and the bytes of typed arrays. Of the tree that is the nodes alone: the spans that it finds, and the table
// itself, were there before.

const ROUNDS = 15;

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

/** Bytes of typed arrays are given back by a thread of their own, some time after they were collected. */
async function memory(): Promise<number> {
  for (let i = 0; i < 3; i++) {
    collectGarbage();
    await setTimeout(100);
  }
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

interface Built {
  index: Searchable;
  milliseconds: number;
  bytes: number;
}

async function built(make: () => Searchable, { asked }: Table): Promise<Built> {
  const before = await memory();
  const begun = performance.now();
  const index = make();
  // What is made when it is first needed is made now.
  index.told(asked[0]!);
  const milliseconds = performance.now() - begun;
  return { index, milliseconds, bytes: (await memory()) - before };
}

/** Microseconds for one question, over all that are asked. */
function askedOnce(question: (serial: string) => unknown, { asked }: Table): number {
  const begun = performance.now();
  for (const serial of asked) question(serial);
  return ((performance.now() - begun) * 1000) / asked.length;
}

function median(list: number[]): number {
  return [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN;
}

/** @returns how many answers a question has on average, and how many have none of a hundred */
function compare(one: Searchable, other: Searchable, { asked }: Table): { each: number; none: number } {
  let [answers, none] = [0, 0];
  for (const serial of asked) {
    const all = ({ find, told }: Searchable) =>
      JSON.stringify([find(serial).map(({ low, high }) => [low, high]), told(serial)]);
    if (all(one) !== all(other)) throw new Error(`${serial}: ${all(one)} beside ${all(other)}`);
    const found = one.find(serial).length;
    answers += found;
    if (found === 0) none += 1;
  }
  return { each: answers / asked.length, none: (100 * none) / asked.length };
}

const column = (text: string) => text.padStart(16);
console.log(`Node ${process.version}; median of ${ROUNDS} rounds in turns\n`);
console.log([column('runs'), column('ours'), column('general tree'), column('general / ours')].join(''));
for (const count of [100_000, 1_000_000]) {
  const table = tableOf(count);
  const mine = await built(() => ours(table), table);
  const theirs = await built(() => general(table), table);
  const { each, none } = compare(mine.index, theirs.index, table);
  const line = (what: string, a: number, b: number, unit: string, digits: number) =>
    console.log(
      `${column(count.toLocaleString('en'))}${column(`${a.toFixed(digits)} ${unit}`)}${column(`${b.toFixed(digits)} ${unit}`)}${column((b / a).toFixed(2))}  ${what}`,
    );
  for (const [how, what] of [
    ['find', `one question (${each.toFixed(2)} answers each, none to ${none.toFixed(0)} of 100)`],
    ['told', 'one question, and all that is said of the runs'],
  ] as const) {
    const times = { mine: [] as number[], theirs: [] as number[] };
    for (let round = 0; round < ROUNDS; round++) {
      times.mine.push(askedOnce(mine.index[how], table));
      times.theirs.push(askedOnce(theirs.index[how], table));
    }
    line(what, median(times.mine), median(times.theirs), 'µs', 2);
  }
  line('to build', mine.milliseconds, theirs.milliseconds, 'ms', 0);
  line('memory for each run', mine.bytes / count, theirs.bytes / count, 'B', 1);
}
