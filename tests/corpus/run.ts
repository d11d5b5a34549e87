import { compile } from '../../src/engine';
import { knowledgeFor, labelled, type SetName, setsOf } from './labelled';
import { marketPages } from './market';
import { marketTotals } from './market-totals';
import { allPacks } from './packs';
import { accused, foundOut, languagesFor, MACHINES, sentences } from './sentences';
import { type Count, type Totals, totalsOf } from './totals';
import { wilson } from './wilson';

// `npm run corpus`: how well the audit does on labelled adverts. The tuned half shows its misses; of the measured ones,
// on the demo's packs and on others, only totals are shown, so that nobody tunes on them. All adverts are
// invented, so this measures the reading of words and not the trade.

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

const DEMO = 'grindlewade-circle';

function titleOf(set: SetName): string {
  const [half, pack] = set.split('/');
  const held = half === 'tuned' ? 'Tuned' : 'Measured';
  return pack === DEMO ? `${held} half` : `${held}, on the pack ${pack}`;
}

for (const half of ['tuned', 'measured'] as const)
  for (const set of setsOf(half)) {
    const totals = totalsOf(labelled(set), knowledgeFor(set));
    print(titleOf(set), totals);
    if (half === 'tuned' && process.argv.includes('--misses')) console.log(totals.misses.join('\n'));
  }

for (const machine of MACHINES)
  for (const language of languagesFor(machine)) {
    const all = (of: 'innocent' | 'untrue'): number => sentences(language, of, machine).length;
    const innocent = all('innocent') - accused(language, machine).length;
    console.log(`Sentences (${language}) for a ${machine}, tuned`);
    console.log(line('innocent, and none accused', { hits: innocent, of: all('innocent') }));
    console.log(line('untrue, and found out', { hits: foundOut(language, machine).length, of: all('untrue') }));
  }
console.log('');

// The pages of the invented market hold the demonstration together; they are no evidence of accuracy elsewhere.
const market = marketTotals(marketPages(compile(allPacks())));
console.log(`Pages of the invented market: ${market.pages}`);
for (const { name, hits, of } of market.counts) console.log(`  ${name.padEnd(46)} ${`${hits}/${of}`.padStart(9)}`);
console.log(`  ${'found though not expected'.padEnd(46)} ${String(market.unexpected.length).padStart(9)}`);
for (const one of market.unexpected) console.log(`    ${one}`);
