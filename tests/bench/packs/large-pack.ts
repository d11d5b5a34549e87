import type { Pack } from '../../../src/pack/schema/index';
import type { Model } from '../../../src/pack/schema/models';
import type { Runs } from '../../../src/pack/schema/serials';

/** The same numbers every time (mulberry32), so that two measurements read the same pack. */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const SYLLABLES = 'bro cu del fa gri hol ka lem mo nor pel quin ras sto tib und vel wex yar zan'.split(' ');
const FRAMES = ['cast-iron', 'aluminium', 'steel'];
const SHUTTLES = ['vibrating', 'rotary', 'oscillating'];
const WORKS = ['North works', 'South works', 'Harbour works', 'Mill works', 'New works', 'Old works'];
const SCHEMES = 40;
const FAMILIES = 100;
const SOURCES = 200;

const id = (kind: string, i: number) => `${kind}-${i}`;
/** Invented by lot; three syllables are enough for no two to be alike, and for none to be meant. */
const name = (i: number) =>
  [i % 20, Math.floor(i / 20) % 20, Math.floor(i / 400) % 20].map((at) => SYLLABLES[at]).join('');

/** A well-kept pack of a whole trade: every model with names, facts, sources and an explanation; its tables beside it. */
export function largePack(models: number, runs: number): Pack {
  const random = chance(models + runs);
  const upTo = (most: number) => Math.floor(random() * most);
  return {
    schema: 1,
    about: {
      ...{ id: 'whole-trade', title: 'A whole trade', edition: 1, licence: 'CC0-1.0', language: 'en', demo: true },
      covers: { thing: 'sewing machine', words: ['sewing machine', 'machine'], parts: ['bobbin'] },
      sources: Object.fromEntries(
        Array.from({ length: SOURCES }, (_, i) => [id('ledger', i), `Works ledger, volume ${i}, invented`]),
      ),
    },
    attributes: [
      {
        ...{ id: 'frame', kind: 'choice', label: 'Frame', ask: 'Does a magnet hold on the bed?' },
        values: FRAMES.map((frame) => ({ id: frame, label: frame, words: [frame.replace('-', ' ')] })),
      },
      {
        ...{ id: 'shuttle', kind: 'choice', label: 'Shuttle', ask: 'Where does the bobbin go in?' },
        values: SHUTTLES.map((shuttle) => ({ id: shuttle, label: shuttle, words: [`${shuttle} shuttle`] })),
      },
      { id: 'free-arm', kind: 'yes-no', label: 'Free arm', yes: ['free arm'], no: ['flat bed'] },
      { id: 'weight', kind: 'measure', label: 'Weight', unit: 'kg', words: ['weighs'] },
    ],
    families: Array.from({ length: FAMILIES }, (_, i) => ({
      ...{ id: id('family', i), label: `Family ${name(i)}`, names: [`${name(i)} family`], maker: name(i % SCHEMES) },
      ...{ facts: { 'free-arm': i % 3 === 0 }, source: id('ledger', i) },
    })),
    models: Array.from({ length: models }, (_, i): Model => {
      const from = 1880 + upTo(80);
      return {
        ...{ id: id('model', i), label: `${name(i % SCHEMES)} ${name(i)}`, maker: name(i % SCHEMES) },
        names: [`${name(i % SCHEMES)} ${name(i)}`, { text: String(100 + i), weak: true }, `${name(i)} model ${i}`],
        ...{ family: id('family', i % FAMILIES), made: { from, to: from + 5 }, number: 1000 + upTo(100_000) },
        facts: {
          frame: { is: FRAMES[upTo(3)]!, source: id('ledger', upTo(SOURCES)) },
          shuttle: SHUTTLES[upTo(3)]!,
          weight: { from: 8 + upTo(4), to: 12 + upTo(4) },
        },
        fits: [{ id: 'bobbin', label: 'Bobbin', words: [`${name(i)} bobbin`], kind: 'part' }],
        explain: 'One of the plain ones, with the tension at the side and the light, where it has one, behind.',
        source: id('ledger', upTo(SOURCES)),
      };
    }),
    serials: {
      schemes: Array.from({ length: SCHEMES }, (_, i) => ({
        ...{ id: id('scheme', i), maker: name(i), digits: 9, source: id('ledger', i) },
        prefix: `${String.fromCharCode(65 + (i % 26))}${i >= 26 ? 'X' : ''}`,
      })),
      runs: runsOf(models, runs, random),
    },
  };
}

/** Blocks one after another with gaps between, in every tenth a smaller one, now and then one that spans many. */
function runsOf(models: number, count: number, random: () => number): Required<Omit<Runs, 'date'>> {
  const scheme: string[] = [];
  const [first, last]: [string[], string[]] = [[], []];
  const [list, year, place, source]: [string[][], number[], string[], string[]] = [[], [], [], []];
  const next = new Float64Array(SCHEMES).fill(1);
  const padded = (number: number) => String(number).padStart(9, '0');
  const add = (at: number, from: number, to: number) => {
    scheme.push(id('scheme', at));
    first.push(padded(from));
    last.push(padded(to));
    const model = Math.floor(random() * models);
    list.push(random() < 0.1 ? [id('model', model), id('model', (model + 1) % models)] : [id('model', model)]);
    year.push(1880 + Math.floor((80 * scheme.length) / count));
    place.push(WORKS[Math.floor(random() * WORKS.length)]!);
    source.push(id('ledger', Math.floor((SOURCES * scheme.length) / (count + 1))));
  };
  for (let block = 1; scheme.length < count; block++) {
    const at = Math.floor((SCHEMES * scheme.length) / count);
    const begin = next[at]!;
    const width = 20 + Math.floor(random() * 200);
    add(at, begin, begin + width);
    if (block % 10 === 0) add(at, begin + (width >> 2), begin + (width >> 1));
    if (block % 1000 === 0) add(at, Math.max(1, begin - 50_000), begin + 50_000);
    next[at] = begin + width + 1 + Math.floor(random() * 20);
  }
  for (const column of [scheme, first, last, list, year, place, source]) column.length = count;
  return { scheme, first, last, models: list, year, place, source };
}
