import { demoKnowledge, labelled } from './labelled';
import { type Count, type Totals, totalsOf } from './totals';
import { wilson } from './wilson';

// `npm run corpus`: how well the audit does on labelled adverts. The tuned half shows its misses; of the measured half
// only totals are shown, so that nobody tunes on it. All adverts are invented, so this measures the reading of words
// and not the trade.

const knowledge = demoKnowledge();

function line(name: string, { hits, of }: Count): string {
  const { share, low, high } = wilson(hits, of);
  const percent = (value: number): string => (Number.isNaN(value) ? '-' : (value * 100).toFixed(1));
  return `  ${name.padEnd(34)} ${`${hits}/${of}`.padStart(9)}  ${percent(share).padStart(5)} %  (95 % interval ${percent(low)} to ${percent(high)})`;
}

function print(title: string, totals: Totals): void {
  console.log(`${title}: ${totals.adverts} adverts, ${totals.honest} honest`);
  console.log(line('"doesn\'t hold": precision', totals.precision));
  console.log(line('"doesn\'t hold": recall', totals.recall));
  console.log(line('honest adverts with none', totals.honestClean));
  for (const name of ['kind', 'claimedModel', 'serial', 'price'] as const) console.log(line(name, totals[name]));
  for (const [check, { found, wanted }] of [...totals.checks].sort()) {
    console.log(line(`${check}: precision`, found));
    console.log(line(`${check}: recall`, wanted));
  }
  console.log('');
}

for (const half of ['tuned', 'measured'] as const) {
  const adverts = labelled(half);
  const totals = totalsOf(adverts, knowledge);
  print(half === 'tuned' ? 'Tuned half' : 'Measured half', totals);
  if (half === 'tuned' && process.argv.includes('--misses')) console.log(totals.misses.join('\n'));
}
