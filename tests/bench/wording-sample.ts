import { readFileSync } from 'node:fs';
import { compile, parsePack } from '../../src/engine';
import { readDraft } from '../../src/listing/draft';
import type { Listing } from '../../src/listing/types';
import type { Knowledge } from '../../src/pack/knowledge';
import type { Pack } from '../../src/pack/schema/index';
import { ROOT } from '../steps/root';

/** The same numbers every time (mulberry32), so that two measurements search for the same. */
export function chance(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const ADVERT = `This Grindlewade Cressiter sewing machine belonged to my aunt, who bought it in 1962 and used it for curtains and school clothes.
It is cast iron and heavy, about 14.5 kg without the case, so please bring somebody to lift it. The bed has been cleaned and oiled, and the
decals are good apart from some wear where the cloth runs. It sews a straight stitch and takes class 15 bobbins; it is not a zigzag machine
and it has no drop feed. The motor runs, but the wire is old and I would have it looked at before use. Not for leather or canvas, whatever
others say. I was told that it was made in 1955; the serial number is KD372118, on the right of the bed. My neighbour has a Wendelow with a
vibrating shuttle, which is lighter than mine. The lamp works, the foot control hums a little, the belt is new.
• 5 bobbins, screwdriver, oil bottle
• instruction book, some pages loose
• wooden case, one catch missing
Looks like the aluminium ones but isn't. Perhaps 60 or 70 years old. Collection only, cash on collection, no time wasters, from a smoke
free home. Often called industrial, which it is not: an honest domestic machine in good working order. `;

/** More than any reader remembers, so that none answers from memory. */
const SELLERS = 40;

/** Sellers' texts of so many kilobytes, no two the same. */
export function adverts(kilobytes: number): string[] {
  return Array.from({ length: SELLERS }, (_, seller) => {
    const own = ADVERT.replace('60 or 70', `${seller + 40} or ${seller + 50}`);
    return own.repeat(Math.ceil((kilobytes * 1000) / own.length)).slice(0, kilobytes * 1000);
  });
}

export function listings(kilobytes: number): Listing[] {
  return adverts(kilobytes).map((description) =>
    readDraft({ title: 'Grindlewade Cressiter sewing machine', description, language: 'en' }),
  );
}

const SYLLABLES = 'bar bel cor dan fen gor hal kel lin mor nar pel quar ros sel tam ul ven wick yar zel'.split(' ');

/**
 * So many different phrases of one to five words, as a pack has them: every third begins with words that the advert has,
 * so that the search has to follow them some way; each has one word that it hasn't.
 */
export function phrases(count: number): string[] {
  const random = chance(7);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
  const common = [...new Set(ADVERT.toLowerCase().match(/\p{L}+/gu))];
  const made = (): string => Array.from({ length: 2 + Math.floor(random() * 2) }, () => pick(SYLLABLES)).join('');
  const found = new Set<string>();
  while (found.size < count) {
    const words = [made(), ...Array.from({ length: Math.floor(random() * 3) }, () => pick(common))];
    found.add((found.size % 3 === 0 ? [pick(common), pick(common), ...words] : words).join(' '));
  }
  return [...found];
}

function packOf(path: string): Pack {
  const { pack, issues } = parsePack(readFileSync(`${ROOT}/${path}`, 'utf8'));
  if (!pack) throw new Error(issues[0]?.what);
  return pack;
}

/** The trade pack and the club's with so many phrases more, twenty to an entry, and so many invented names. */
export function knowledge(phraseCount: number, nameCount = 0): Knowledge {
  const club = packOf('fixtures/packs/grindlewade-circle.json');
  const words = phrases(phraseCount);
  const wording = Array.from({ length: Math.ceil(words.length / 20) }, (_, i) => ({
    id: `w${i}`,
    words: words.slice(i * 20, i * 20 + 20),
    mind: 'Mind this.',
  }));
  const models = names(nameCount).map((name, i) => ({ id: `n${i}`, label: name, names: [name] }));
  return compile([
    packOf('src/pack/shipped/trade.json'),
    { ...club, wording: [...(club.wording ?? []), ...wording], models: [...(club.models ?? []), ...models] } as Pack,
  ]);
}

function names(count: number): string[] {
  const random = chance(11);
  const found = new Set<string>();
  while (found.size < count) {
    const letters = Array.from({ length: 3 }, () => SYLLABLES[Math.floor(random() * SYLLABLES.length)]!).join('');
    found.add(letters[0]!.toUpperCase() + letters.slice(1) + (random() < 0.3 ? 'ton' : 'e'));
  }
  return [...found];
}
