import type { Knowledge, Meaning } from '../pack/knowledge';
import { firstNotBefore } from '../text/in-order';
import type { PhraseMatch } from '../text/phrases';
import { speaks } from './language';
import type { TextPart } from './part-text';

export type Hit<K extends Meaning['kind'] = Meaning['kind']> = PhraseMatch<Extract<Meaning, { kind: K }>>;

/**
 * What the packs' phrases find in one text. Within one pack the longest phrase at a place speaks alone ("zigzag
 * attachment" is no "zigzag"); packs don't silence each other.
 */
export function hitsIn(part: TextPart, knowledge: Knowledge, languages: ReadonlySet<string>): Hit[] {
  // "Pre-war" and "pre war" of one entry are the same words in a text. They are found one after the other.
  const latest = new Map<Meaning, Hit>();
  const hits: Hit[] = [];
  for (const { start, end, firstToken, lastToken, value } of knowledge.phrases.search(part.tokens)) {
    if (!speaks(languages, value.lang)) continue;
    const before = latest.get(value.meaning);
    if (before?.firstToken === firstToken && before.lastToken === lastToken) continue;
    const hit: Hit = { start, end, firstToken, lastToken, value: value.meaning };
    latest.set(value.meaning, hit);
    hits.push(hit);
  }
  return hits.filter((hit, at) => !isSilenced(hit, at, hits));
}

/** A phrase has 40 tokens at most, so that only those that begin so near can contain another. */
export const LONGEST_PHRASE = 80;

function isSilenced(hit: Hit, at: number, hits: readonly Hit[]): boolean {
  for (let i = at - 1; i >= 0 && hit.firstToken - hits[i]!.firstToken <= LONGEST_PHRASE; i--)
    if (silences(hits[i]!, hit)) return true;
  for (let i = at + 1; i < hits.length && hits[i]!.firstToken === hit.firstToken; i++)
    if (silences(hits[i]!, hit)) return true;
  return false;
}

/** Phrases of these kinds say nothing about the words inside them, nor those about them. */
const ASIDE: ReadonlySet<Meaning['kind']> = new Set(['caution', 'grade', 'place', 'fit', 'factor']);

export function silences(longer: Hit, hit: Hit): boolean {
  if (longer.value.pack !== hit.value.pack || !contains(longer, hit)) return false;
  if (ASIDE.has(longer.value.kind) || ASIDE.has(hit.value.kind)) return longer.value.kind === hit.value.kind;
  if (longer.value.kind === 'unless') return hit.value.kind === 'wording' && hit.value.entry === longer.value.entry;
  // A feature named with the thing ("treadle sewing machine") still names the thing.
  if (hit.value.kind === 'thing') return longer.value.kind === 'not-thing' || longer.value.kind === 'thing';
  return true;
}

export function contains(outer: PhraseMatch<unknown>, inner: PhraseMatch<unknown>): boolean {
  return (
    outer.firstToken <= inner.firstToken &&
    outer.lastToken >= inner.lastToken &&
    outer.lastToken - outer.firstToken > inner.lastToken - inner.firstToken
  );
}

export function ofKind<K extends Meaning['kind']>(hits: readonly Hit[], kind: K): Hit<K>[] {
  return hits.filter((hit): hit is Hit<K> => hit.value.kind === kind);
}

/** Of matches in order, as `hitsIn` gives them, those that begin at one token, at another or between. */
export function beginningWithin<M extends { firstToken: number }>(
  hits: readonly M[],
  first: number,
  last: number,
): readonly M[] {
  const from = firstNotBefore(hits, ({ firstToken }) => firstToken < first);
  let to = from;
  while (to < hits.length && hits[to]!.firstToken <= last) to++;
  return hits.slice(from, to);
}

/** Of hits in order, those that a token is part of. */
export function hitsOver(hits: readonly Hit[], token: number): readonly Hit[] {
  return beginningWithin(hits, token - LONGEST_PHRASE, token).filter((hit) => hit.lastToken >= token);
}
