import type { Knowledge } from './knowledge';
import type { Run } from './serials/run';

/** Characters that are taken for each other on a worn plate or in a photograph. */
const LOOKS_LIKE: Record<string, string> = { O: '0', '0': 'O', I: '1', '1': 'I', S: '5', '5': 'S', B: '8', '8': 'B' };
/** Round letters that are taken for a third beside their likes: each is tried at one place of a number only. */
const ROUND: Record<string, string> = { O: 'D', '0': 'D', D: 'O' };
const MOST_CONFUSABLE = 8;
const MOST_SUGGESTIONS = 6;

export interface Misreading {
  normal: string;
  runs: Run[];
}

/**
 * What a serial that fits nothing may be a slip for: first characters that look alike, then one digit too many or too
 * few. Only numbers that lie in an allotted run of the given packs.
 */
export function misreadings(normal: string, knowledge: Knowledge, packs: ReadonlySet<string>): Misreading[] {
  const alike = found(alikeVariants(normal), knowledge, packs);
  return alike.length > 0 ? alike : found(oneDigitOff(normal), knowledge, packs);
}

/** The allotted numbers of the given packs that look like this one on a worn plate. */
export function lookAlikes(normal: string, knowledge: Knowledge, packs: ReadonlySet<string>): Misreading[] {
  return found(alikeVariants(normal), knowledge, packs);
}

/** A number with the letters beside its digits read as the digits that they look like: "29731O" -> "297310". */
export function readAsDigits(normal: string): string {
  return normal.replace(/(?<=\d)[OISB]|[OISB](?=\d)/g, (letter) => LOOKS_LIKE[letter]!);
}

function found(variants: Iterable<string>, knowledge: Knowledge, packs: ReadonlySet<string>): Misreading[] {
  const out = new Map<string, Run[]>();
  for (const variant of variants) {
    if (out.has(variant)) continue;
    const runs = knowledge.serials.find(variant).filter((run) => packs.has(run.pack));
    if (runs.length > 0) out.set(variant, runs);
    if (out.size >= MOST_SUGGESTIONS) break;
  }
  return [...out].map(([variant, runs]) => ({ normal: variant, runs }));
}

/** Fewest changes first. */
function* alikeVariants(normal: string): Generator<string> {
  const rounded = [...roundVariants(normal)];
  yield* onePairChanged(normal);
  yield* rounded;
  yield* severalPairsChanged(normal);
  for (const round of rounded) yield* onePairChanged(round);
}

function placesIn(normal: string, confused: Record<string, string>): number[] {
  return [...normal].flatMap((character, i) => (confused[character] ? [i] : [])).slice(0, MOST_CONFUSABLE);
}

function* roundVariants(normal: string): Generator<string> {
  const places = placesIn(normal, ROUND);
  for (const place of places) yield changed(normal, [place], ROUND);
  for (const place of places) if (normal[place] === 'D') yield changed(normal, [place], { D: '0' });
}

function* onePairChanged(normal: string): Generator<string> {
  for (const place of placesIn(normal, LOOKS_LIKE)) yield changed(normal, [place], LOOKS_LIKE);
}

function* severalPairsChanged(normal: string): Generator<string> {
  const places = placesIn(normal, LOOKS_LIKE);
  const masks = Array.from({ length: 2 ** places.length }, (_, mask) => mask).filter((mask) => bits(mask) > 1);
  masks.sort((a, b) => bits(a) - bits(b));
  for (const mask of masks)
    yield changed(
      normal,
      places.filter((_, bit) => mask & (1 << bit)),
      LOOKS_LIKE,
    );
}

function changed(normal: string, places: readonly number[], into: Record<string, string>): string {
  const characters = [...normal];
  for (const place of places) characters[place] = into[characters[place]!]!;
  return characters.join('');
}

function* oneDigitOff(normal: string): Generator<string> {
  if (normal.length > 20) return;
  for (let i = 0; i < normal.length; i++) if (/\d/.test(normal[i]!)) yield normal.slice(0, i) + normal.slice(i + 1);
  for (let i = 1; i <= normal.length; i++)
    for (let digit = 0; digit <= 9; digit++) yield normal.slice(0, i) + digit + normal.slice(i);
}

function bits(mask: number): number {
  let count = 0;
  for (let rest = mask; rest > 0; rest &= rest - 1) count++;
  return count;
}
