import type { Knowledge } from './knowledge';
import type { Run } from './serial-index';

/** Characters that are taken for each other on a worn plate or in a photograph. */
const LOOKS_LIKE: Record<string, string> = { O: '0', '0': 'O', I: '1', '1': 'I', S: '5', '5': 'S', B: '8', '8': 'B' };
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

function* alikeVariants(normal: string): Generator<string> {
  const places = [...normal].flatMap((character, i) => (LOOKS_LIKE[character] ? [i] : [])).slice(0, MOST_CONFUSABLE);
  const masks = Array.from({ length: 2 ** places.length - 1 }, (_, i) => i + 1);
  // Fewest changes first.
  masks.sort((a, b) => bits(a) - bits(b));
  for (const mask of masks) {
    const characters = [...normal];
    places.forEach((place, bit) => {
      if (mask & (1 << bit)) characters[place] = LOOKS_LIKE[characters[place]!]!;
    });
    yield characters.join('');
  }
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
