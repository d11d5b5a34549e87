import { Chance } from '../identify/chance';
import { type Interval, ours, quantiles, regression, scoreOf } from './intervals';
import { type Market, market, TRUTHS, type Truth, withOutliers } from './market';

// `npm run bench:price [-- COUNT]`: how often the next price lies in the 80 % band, and how good the band is, beside an
// ordinary regression's and plain quantiles. All markets are simulated: this measures the method, not the trade.

const COUNT = Number(process.argv[2] ?? 10_000);
const SIZES = [3, 10, 30, 100];

interface Tally {
  inside: number;
  score: number;
}

type Method = (seen: readonly number[]) => Interval;

function measured(
  truth: Truth,
  n: number,
  methods: readonly Method[],
  bend?: (m: Market, c: Chance) => Market,
): Tally[] {
  const chance = new Chance(20_261_129 + n);
  const tallies = methods.map(() => ({ inside: 0, score: 0 }));
  for (let i = 0; i < COUNT; i++) {
    const drawn = market(truth, n, chance);
    const { seen, next } = bend ? bend(drawn, chance) : drawn;
    methods.forEach((method, at) => {
      const interval = method(seen);
      tallies[at]!.inside += Number(next >= interval.low && next <= interval.high) / COUNT;
      tallies[at]!.score += scoreOf(interval, next) / COUNT;
    });
  }
  return tallies;
}

function row(name: string, tallies: readonly Tally[]): void {
  const cells = tallies.map(
    ({ inside, score }) => `${(inside * 100).toFixed(1)} %`.padStart(8) + score.toFixed(2).padStart(7),
  );
  console.log(`${name.padEnd(12)}${cells.join('  ')}`);
}

console.log(`${COUNT} markets each: share of next prices in the 80 % band, and interval score (less is better)\n`);
for (const truth of TRUTHS) {
  console.log(`Prices ${truth.name}`);
  console.log(`${''.padEnd(12)}${['ours', 'regression', 'quantiles'].map((name) => name.padStart(15)).join('  ')}`);
  for (const n of SIZES) row(`  n = ${n}`, measured(truth, n, [(seen) => ours(seen), regression, quantiles]));
}

console.log('\nOne in ten ten to a hundred times too high or too low, prices as stated');
const names = ['ours', 'not robust', 'regression', 'quantiles', 'ours, none wild'];
console.log(`${''.padEnd(12)}${names.map((name) => name.padStart(15)).join('  ')}`);
for (const n of SIZES) {
  const bent = measured(
    TRUTHS[0]!,
    n,
    [(seen) => ours(seen), (seen) => ours(seen, false), regression, quantiles],
    withOutliers,
  );
  row(`  n = ${n}`, [...bent, ...measured(TRUTHS[0]!, n, [(seen) => ours(seen)])]);
}

const { seen } = market(TRUTHS[0]!, 1000, new Chance(1));
for (let i = 0; i < 30; i++) ours(seen);
const taken = Array.from({ length: 101 }, () => {
  const begun = performance.now();
  ours(seen);
  return performance.now() - begun;
}).sort((a, b) => a - b);
console.log(`\n1,000 observations: ${taken[50]!.toFixed(2)} ms (median of ${taken.length} runs)`);
