import { readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { type Benchmark, time } from './benchmark';

// `npm run bench [-- WORD]`: times every benchmark whose name holds the word. Figures are of this machine, today; they
// are for comparing one change with another, so nothing fails on them.

const word = process.argv[2]?.toLowerCase() ?? '';
const BUDGET = 2000;

const folder = new URL('.', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.bench.ts'));
const all: Benchmark[] = [];
for (const file of files.sort()) {
  const { benchmarks } = (await import(new URL(file, folder).href)) as { benchmarks: Benchmark[] };
  all.push(...benchmarks);
}
const chosen = all.filter(({ name }) => name.toLowerCase().includes(word));

console.log(`Node ${process.version}, ${cpus()[0]?.model.trim() ?? 'unknown processor'}, ${cpus().length} cores\n`);
console.log(`${'median ms'.padStart(12)}${'95 % ms'.padStart(12)}${'runs'.padStart(8)}  what`);
for (const benchmark of chosen) {
  const { median, p95, runs } = await time(benchmark, BUDGET);
  console.log(
    `${median.toFixed(3).padStart(12)}${p95.toFixed(3).padStart(12)}${String(runs).padStart(8)}  ${benchmark.name}`,
  );
}
if (chosen.length === 0) process.exitCode = 1;
