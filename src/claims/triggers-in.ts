import { isMeasure } from '../text/boundaries';
import { PhraseIndex, type PhraseMatch } from '../text/phrases';
import { type ClauseRange, clauseAt, type TextPart } from './part-text';
import { german } from './triggers/de';
import { english } from './triggers/en';
import { french } from './triggers/fr';
import type { Trigger, TriggerRow } from './triggers/types';
import { widest } from './widest';

export interface Found extends PhraseMatch<Trigger> {
  clause: ClauseRange | null;
}

const BY_LANGUAGE: Record<string, readonly TriggerRow[]> = { en: english, de: german, fr: french };

function indexFor(languages: ReadonlySet<string>): PhraseIndex<Trigger> {
  const known = Object.keys(BY_LANGUAGE).filter((language) => languages.has(language));
  const index = new PhraseIndex<Trigger>();
  for (const language of known.length > 0 ? known : Object.keys(BY_LANGUAGE))
    for (const [phrases, trigger] of BY_LANGUAGE[language]!)
      for (const phrase of phrases.split('|'))
        for (const written of waysToWrite(phrase, language)) index.add(written, trigger);
  return index;
}

/** "C'est", "cest", "c est"; "isn't", "isnt": sellers leave the apostrophe out. */
function waysToWrite(phrase: string, language: string): ReadonlySet<string> {
  if (language === 'fr') return new Set([phrase, phrase.replaceAll("'", ''), phrase.replaceAll("'", ' ')]);
  return new Set([phrase, phrase.replaceAll("n't", 'nt')]);
}

const cache = new Map<string, PhraseIndex<Trigger>>();

function triggerIndex(languages: ReadonlySet<string>): PhraseIndex<Trigger> {
  const key = [...languages].sort().join();
  const there = cache.get(key);
  if (there) return there;
  const made = indexFor(languages);
  if (cache.size < 20) cache.set(key, made);
  return made;
}

function endsClause(part: TextPart, lastToken: number): boolean {
  const clause = clauseAt(part, lastToken);
  return clause !== null && part.tokens.slice(lastToken + 1, clause.last + 1).every((token) => token.kind === 'mark');
}

const NUMBERED = /^(\s*[.:°#]?\s*)[A-Z]{0,3}[ -]?\d/;

/** "No. 20417": a number's sign, no denial. */
function isNumberSign(part: TextPart, { firstToken, lastToken, start, end }: PhraseMatch<Trigger>): boolean {
  if (firstToken !== lastToken || !/^nos?$/.test(part.tokens[firstToken]!.folded)) return false;
  if (!/^nos?$/i.test(part.text.slice(start, end))) return false;
  const sign = NUMBERED.exec(part.text.slice(end, end + 12));
  // "Drop feed no. 6.5 kg": a measure.
  return sign !== null && !(sign[1]!.includes('.') && isMeasure(part.text, end + sign[1]!.length));
}

/** "It is not only …": what looks like a trigger and is none takes one with it that it overlaps ("is not"). */
function withoutTaken(found: readonly PhraseMatch<Trigger>[]): PhraseMatch<Trigger>[] {
  let takenFrom = Number.POSITIVE_INFINITY;
  // From the end: of two that overlap, the one that begins later is the one that is meant.
  return found
    .toReversed()
    .filter((one) => {
      if (one.value.effect === 'none') takenFrom = one.firstToken;
      return one.value.effect === 'none' || one.lastToken < takenFrom || one.firstToken >= takenFrom;
    })
    .reverse();
}

/** The triggers of one text, in order; the longest at a place speaks: "not only" is no "not". */
export function triggersIn(part: TextPart, languages: ReadonlySet<string>): Found[] {
  const all = triggerIndex(languages)
    .search(part.tokens)
    .filter((one) => !(one.value.ends && !endsClause(part, one.lastToken)) && !isNumberSign(part, one));
  return withoutTaken(widest(all)).map(({ start, end, firstToken, lastToken, value }) => {
    return { start, end, firstToken, lastToken, value, clause: clauseAt(part, firstToken) };
  });
}
