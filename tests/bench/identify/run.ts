import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { Reading } from '../../../src/claims/reading';
import { compile, parsePack } from '../../../src/engine';
import { type Field, fieldOf } from '../../../src/identify/field';
import { identify } from '../../../src/identify/identify';
import type { Knowledge } from '../../../src/pack/knowledge';
import type { Pack } from '../../../src/pack/schema/index';
import { ROOT } from '../../steps/root';
import { askedOf, blankReading, makerNamed, type Simulated } from './advert';
import { Chance } from './chance';
import { atRandom, byInformation, effortsOf, inOrder, type Policy, type Taken } from './effort';
import { drawn, market } from './market';
import { trueShares } from './market-truth';
import { ownModel } from './own-model';
import { reliabilityPlot } from './reliability-plot';
import { type Score, scoreOf } from './score';

// `npm run bench:identify [-- COUNT]`: how good identification is on two simulators, one that makes adverts as it
// supposes them, one that doesn't. All makers are invented: this measures the method, not what packs know of the trade.

const COUNT = Number(process.argv[2] ?? 4000);
const PLOTS = `${ROOT}/.test/identify`;

interface Scene {
  knowledge: Knowledge;
  field: Field;
  blank: Reading;
}

/** @param wrong by what every error of a seller's word and a viewer's eye is multiplied */
function scene(files: readonly string[], wrong = 1): Scene {
  const packs = files.map((file) => parsePack(readFileSync(`${ROOT}/${file}`, 'utf8')).pack as Pack);
  const worse = (right: number | undefined): number => 1 - Math.min(0.5, (1 - (right ?? 0.75)) * wrong);
  for (const { attributes } of packs)
    for (const attribute of attributes ?? [])
      if (wrong !== 1) attribute.trust = { seller: worse(attribute.trust?.seller), eye: worse(attribute.trust?.eye) };
  const knowledge = compile(packs);
  const covering = new Set(packs.map(({ about }) => about.id));
  return { knowledge, field: fieldOf(knowledge, covering), blank: blankReading(knowledge, covering) };
}

const TRADE = ['src/pack/shipped/trade.json'];
const CLUB = [...TRADE, 'fixtures/packs/grindlewade-circle.json'];
const club = scene(CLUB);

function told({ knowledge, blank }: Scene, adverts: readonly Simulated[]) {
  return adverts.map((advert) => ({
    truth: advert.truth,
    shares: identify(askedOf(advert, blank), knowledge).posterior.shares,
  }));
}

const percent = (share: number): string => `${(share * 100).toFixed(1)} %`;

function print(title: string, score: Score, regret: number | null): void {
  console.log(title);
  console.log(`  likeliest is it ${percent(score.top1)}, among the first three ${percent(score.top3)}`);
  const beside = regret === null ? '' : `, ${regret.toFixed(3)} more than by the true model`;
  console.log(`  log loss ${score.logLoss.toFixed(3)} bits${beside}; Brier ${score.brier.toFixed(3)}`);
  console.log(`  calibration error ${score.calibration.toFixed(3)}\n`);
}

function plot(name: string, title: string, score: Score): void {
  mkdirSync(PLOTS, { recursive: true });
  writeFileSync(`${PLOTS}/${name}.svg`, reliabilityPlot(title, score.bins));
}

function several<T>(make: (chance: Chance) => T, count = COUNT): T[] {
  const chance = new Chance(20_240_229);
  return Array.from({ length: count }, () => make(chance));
}

console.log(`${COUNT} adverts of each simulator\n`);
const own = scoreOf(
  told(
    club,
    several((chance) => ownModel(club.field, chance)),
  ),
);
print('Adverts as the model supposes them', own, 0);
plot('own-model', 'Adverts as the model supposes them', own);

const onMarket = several((chance) => market(club.field, club.knowledge, chance, 3));
const ofMarket = scoreOf(told(club, onMarket));
// The true model is worked out for adverts without a number.
const numberless = onMarket.filter(({ serial }) => serial === null);
const best = scoreOf(numberless.map((one) => ({ truth: one.truth, shares: trueShares(one, club.field) })));
const regret = scoreOf(told(club, numberless)).logLoss - best.logLoss;
print('Adverts of a market that it does not suppose: whole lists copied, errors in runs', ofMarket, regret);
console.log(`  (the true model itself: calibration error ${best.calibration.toFixed(3)})\n`);
plot('market', 'Adverts of another market', ofMarket);

for (const wrong of [2, 0.5]) {
  const true_ = scene(CLUB, wrong);
  const adverts = several((chance) => ownModel(true_.field, chance));
  const best = scoreOf(told(true_, adverts));
  const score = scoreOf(told(club, adverts));
  print(`Sellers and eyes err ${wrong} times as often as the packs say`, score, score.logLoss - best.logLoss);
}

console.log('Effort until it is so sure (a reading counts 1, a photo 3, a visit 12)');
const trade = scene(TRADE);
const policies: [string, (chance: Chance) => Policy][] = [
  ['most information per effort', () => byInformation],
  ["in the pack's order", () => inOrder],
  ['at random', atRandom],
];
const FEW = Math.ceil(COUNT / 8);
const isKnown = (h: number): boolean => club.field.hypotheses[h]!.model?.isType === false;
const ofKnown = (chance: Chance): number => {
  for (;;) {
    const truth = drawn(club.field, chance);
    if (isKnown(truth)) return truth;
  }
};
const bare = { claims: [], serial: null, answers: {}, model: null };
const tables = several((chance) => ({ ...market(trade.field, trade.knowledge, chance, 0), ...bare, maker: null }), FEW);
const named = several((chance) => {
  const one = market(club.field, club.knowledge, chance, 0, ofKnown(chance));
  return { ...one, ...bare, maker: makerNamed(club.field.hypotheses[one.truth]!.model) };
}, FEW);
const mean = (all: readonly Taken[]): string =>
  (all.reduce((sum, { effort }) => sum + effort, 0) / Math.max(1, all.length)).toFixed(2).padStart(6);
for (const [title, of, adverts, sure] of [
  ['which kind it is, the trade pack alone', trade, tables, 0.95],
  ['the same', trade, tables, 0.8],
  ['which one it is, where its maker is named', club, named, 0.95],
  ['the same', club, named, 0.8],
] as const) {
  const taken = policies.map(([name, policy]) => [name, effortsOf(adverts, policy(new Chance(7)), sure, of)] as const);
  const isSureForAll = (i: number): boolean => taken.every(([, all]) => all[i]!.right !== null);
  console.log(`  ${title}, ${percent(sure)} sure`);
  for (const [name, all] of taken) {
    const ended = all.filter(({ right }) => right !== null);
    const right = ended.filter((one) => one.right).length / ended.length;
    console.log(
      `    ${name.padEnd(28)} effort ${mean(all)}, sure in ${percent(ended.length / all.length)}, then right ${percent(right)}; ` +
        `where all three became sure ${mean(all.filter((_, i) => isSureForAll(i)))}`,
    );
  }
}

const full = several((chance) => {
  let truth = drawn(club.field, chance);
  // Half and half, and those that are known show a name or a number: without either nobody can tell.
  const wanted = chance.happens(0.5);
  while (isKnown(truth) !== wanted) truth = drawn(club.field, chance);
  for (;;) {
    const advert = market(club.field, club.knowledge, chance, 10, truth);
    if (!wanted || advert.maker !== null || advert.serial !== null) return advert;
  }
});
const called = full.map((advert) => {
  const { order } = identify(askedOf(advert, club.blank), club.knowledge);
  return { known: isKnown(advert.truth), outside: !isKnown(order[0]!) };
});
const share = (known: boolean): number => {
  const some = called.filter((one) => one.known === known);
  return some.filter(({ outside }) => outside).length / some.length;
};
console.log(
  `\nOf no maker that the pack knows: called so ${percent(share(false))}; of one that it knows: ${percent(share(true))}`,
);
console.log(`Reliability plots: ${PLOTS}`);
