import { gzipSync } from 'node:zlib';
import type { Pack } from '../../../src/pack/schema/index';
import { founded, sealPack } from '../../../src/sharing/seal/seal';
import { publication } from '../../../src/sharing/subscribe/publication';
import { isDue, nextCheck } from '../../../src/sharing/subscribe/schedule';
import { chance, largePack } from './large-pack';

// What 100,000 who follow one pack ask of one host of files in a day, simulated: our own timetable (schedule.ts) and the
// real sizes of what is published, and a supposed habit of people: a browser is open on seven days of ten, from some
// hour on for six hours; of those who learn of an edition every second looks at it at once, the others on one day of four
// after that. An edition comes every two weeks and changes one model in a hundred and one run in two hundred. Each answer
// costs 400 bytes of headers besides.

const SUBSCRIBERS = 100_000;
const [DAYS, EVERY, WARM_UP] = [56, 14, 14];
const [HOUR, DAY] = [3_600_000, 86_400_000];
const HEADERS = 400;

interface Sizes {
  notice: number;
  update: number;
  whole: number;
}

/** What each file has on the way, compressed as hosts do. */
async function sizesOf(models: number, runs: number): Promise<Sizes> {
  const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  const before = await founded(largePack(models, runs), keys);
  const after = nextEdition(before);
  const files = await publication(await sealPack(after, keys), [before]);
  const sent = (end: string) => gzipSync(files.find(({ name }) => name.endsWith(end))?.text ?? '').length + HEADERS;
  return { notice: sent('.notice.json'), update: sent('.changes'), whole: sent('.pack') };
}

function nextEdition(pack: Pack): Pack {
  const runs = pack.serials!.runs;
  return {
    ...pack,
    about: { ...pack.about, edition: pack.about.edition + 1 },
    models: pack.models!.map((model, i) =>
      i % 100 === 0 ? { ...model, explain: `${model.explain} Corrected.` } : model,
    ),
    serials: { ...pack.serials!, runs: { ...runs, year: runs.year!.map((year, i) => (i % 200 === 0 ? 1901 : year)) } },
  };
}

interface Load {
  notices: number;
  updates: number;
  wholes: number;
  /** Requests in the busiest hour of all. */
  busiest: number;
}

/** @returns what was asked for in a day, on average after the first two weeks */
function simulate(): Load {
  const random = chance(SUBSCRIBERS);
  const due = new Float64Array(SUBSCRIBERS).map(() => random() * DAY);
  const has = new Uint16Array(SUBSCRIBERS);
  const told = new Uint16Array(SUBSCRIBERS);
  const total = { notices: 0, updates: 0, wholes: 0 };
  const hours = new Uint32Array(24 * DAYS);
  for (let day = 0; day < DAYS; day += 1) {
    const newest = Math.floor(day / EVERY);
    const counts = day >= WARM_UP;
    for (let one = 0; one < SUBSCRIBERS; one += 1) {
      if (random() >= 0.7) continue;
      const opened = day * DAY + random() * 18 * HOUR;
      const ask = (what: keyof typeof total, at: number) => {
        if (!counts) return;
        total[what] += 1;
        const hour = Math.floor(at / HOUR);
        if (hour < hours.length) hours[hour]! += 1;
      };
      for (let at = opened; at < opened + 6 * HOUR; at += 3 * HOUR) {
        if (!isDue(at, due[one]!)) continue;
        due[one] = nextCheck(at, 0, random());
        ask('notices', at);
        const isNews = told[one] !== newest;
        told[one] = newest;
        if (has[one] === newest || random() >= (isNews ? 0.5 : 0.25)) continue;
        // Who looks fetches the notice once more, with what it names.
        ask('notices', at);
        ask(has[one]! + 1 === newest ? 'updates' : 'wholes', at);
        has[one] = newest;
      }
    }
  }
  const days = DAYS - WARM_UP;
  return {
    notices: total.notices / days,
    updates: total.updates / days,
    wholes: total.wholes / days,
    busiest: hours.reduce((most, count) => Math.max(most, count), 0),
  };
}

export async function printHostLoad(): Promise<void> {
  const { notices, updates, wholes, busiest } = simulate();
  const requests = notices + updates + wholes;
  const count = (value: number) => Math.round(value).toLocaleString('en').padStart(9);
  console.log(`\n${SUBSCRIBERS.toLocaleString('en')} who follow one pack, an edition every ${EVERY} days (simulated)`);
  console.log(`  requests a day                       ${count(requests)}`);
  console.log(`    for the notice                     ${count(notices)}`);
  console.log(`    for a small update                 ${count(updates)}`);
  console.log(`    for the whole pack                 ${count(wholes)}`);
  console.log(`  requests a second, busiest hour      ${(busiest / 3600).toFixed(1).padStart(9)}`);
  for (const [models, runs] of [
    [50, 2_000],
    [5_000, 100_000],
  ] as const) {
    const { notice, update, whole } = await sizesOf(models, runs);
    const mb = (bytes: number) => `${(bytes / 1e6).toFixed(0).padStart(9)} MB`;
    const kb = (bytes: number) => `${(bytes / 1e3).toFixed(1)} kB`;
    console.log(
      `  ${models.toLocaleString('en')} models, ${runs.toLocaleString('en')} runs: notice ${kb(notice)}, update ${kb(update)}, whole ${kb(whole)}`,
    );
    console.log(`    bytes a day                        ${mb(notices * notice + updates * update + wholes * whole)}`);
    console.log(`    without small updates              ${mb(notices * notice + (updates + wholes) * whole)}`);
    console.log(`    the whole pack with each check     ${mb(notices * whole)}`);
  }
}
