import { countsMachines, countsThings, isTimes } from './counting';
import { type Hit, ofKind } from './hits';
import type { CueMatch } from './kind-cues';
import { type Noun, nounsIn } from './nouns';
import { clauseAt, firstWordOf, type TextPart } from './part-text';
import type { NameClaim } from './reading';

/** The head noun of a title, or of a text that has none: is it the thing, a part of it, or several things? */
export function headOf(
  part: TextPart,
  hits: readonly Hit[],
  names: readonly NameClaim[],
  allCues: readonly CueMatch[],
): 'item' | 'part' | 'lot' | null {
  // "Name de Luxe": of the name, and no French word.
  const cues = allCues.filter(({ start, end }) =>
    names.every((name) => name.field !== part.field || name.start >= start || name.end <= end),
  );
  const until = swappedUntil(part, cues);
  const all = nounsIn(part, hits, names, cues).filter(({ firstToken }) => firstToken < until);
  // "Name 1951 grey, no case": what isn't there is no head.
  const nouns = all.every(({ what, firstToken }) => what === 'part' && isLeftOut(part, firstToken)) ? [] : all;
  const first = nouns[0];
  if (isFeaturedPart(part, hits, nouns, cues)) return 'part';
  const counted = countsMachines(part, cues);
  if (!first)
    return counted || cues.some((cue) => cue.value === 'lot' && cue.lastToken > cue.firstToken) ? 'lot' : null;
  if (first.what !== 'part' && endsInTimes(part)) return 'lot';
  // "Three heads, no tables".
  const phrase = clauseAt(part, first.firstToken);
  const isOther = ({ what, firstToken }: Noun) => what !== 'part' || (phrase !== null && firstToken > phrase.last);
  if (counted && nouns.every(isOther)) return 'lot';
  if (first.isName && isFittedTo(part, first, cues)) return 'part';
  if (isPluralName(part, nouns, first)) return 'lot';
  if (isPairOfNames(part, names, cues) || isCountOfNames(part, names) || isLot(part, nouns, first, cues)) return 'lot';
  return headOfPhrase(part, nouns, first, cues);
}

/** "Swap my Name for a Number": what stands behind "for" isn't here. */
function swappedUntil({ tokens }: TextPart, cues: readonly CueMatch[]): number {
  if (!SWAPS.test(tokens[firstWordOf(tokens)]?.folded ?? '')) return tokens.length;
  return cues.find(({ value }) => value === 'fitting')?.firstToken ?? tokens.length;
}

const SWAPS = /^(?:swap|swapping|trade|exchange|tausch|tausche|echange)$/;

function isLeftOut({ tokens }: TextPart, noun: number): boolean {
  return /^(?:no|without|ohne|sans|minus)$/.test(tokens[noun - 1]?.folded ?? '');
}

/** "Name and Name, the pair". */
function isPairOfNames({ field }: TextPart, names: readonly NameClaim[], cues: readonly CueMatch[]): boolean {
  return cues.some(({ value }) => value === 'counted' || value === 'together') && areSeveral(field, names);
}

function areSeveral(field: TextPart['field'], names: readonly NameClaim[]): boolean {
  const models = names.flatMap((name) => (name.field === field && 'model' in name.of ? [name.of.model] : []));
  return new Set(models).size > 1;
}

/** "Two Name 6Ks", "pair of Name 71s", and no part of them. */
function isPluralName({ tokens }: TextPart, nouns: readonly Noun[], first: Noun): boolean {
  const opens = firstWordOf(tokens);
  const at = tokens[opens + 1]?.folded === 'of' ? opens + 2 : opens + 1;
  const ends = Math.max(...nouns.map(({ lastToken }) => lastToken));
  return (
    first.isName &&
    first.firstToken === at &&
    /^(?:[2-9]|two|three|four|five|six|pair|zwei|drei|vier|deux|trois|quatre)$/.test(tokens[opens]!.folded) &&
    nouns.every(({ what, isName }) => isName || what !== 'part') &&
    (/s$/.test(tokens[ends]!.folded) || (tokens[ends + 1]?.folded === 's' && tokens[ends + 1]!.glued))
  );
}

/** "3 for spares: Name, Other", "Lot: Name + Other". */
function isCountOfNames({ field, tokens }: TextPart, names: readonly NameClaim[]): boolean {
  const opening = tokens[firstWordOf(tokens)]?.folded ?? '';
  return (
    /^(?:[2-9]|two|three|four|zwei|drei|vier|deux|trois|quatre|lot|konvolut|paket|bundle)$/.test(opening) &&
    areSeveral(field, names)
  );
}

/** "Old heads, x7", "Name (x 3)". */
function endsInTimes({ tokens, field }: TextPart): boolean {
  const [before, times, count] = tokens.filter(({ kind }) => kind !== 'mark').slice(-3);
  // "10x7" are inches.
  if (before?.kind === 'number' && times?.glued) return false;
  return field === 'title' && /^[x×]$/.test(times?.folded ?? '') && /^(?:[2-9]|[1-9]\d)$/.test(count?.folded ?? '');
}

/** "Three sewing machines", "2x Name", "job lot of sewing machines". */
function isLot(part: TextPart, nouns: readonly Noun[], first: Noun, cues: readonly CueMatch[]): boolean {
  if (countsThings(part, nouns, cues) || (first.isName && isTimes(part, first.firstToken))) return true;
  return (
    first.what !== 'part' &&
    cues.some(
      ({ value, firstToken }) =>
        value === 'lot' &&
        part.tokens[firstToken]!.folded !== 'machines' &&
        firstToken <= Math.max(first.firstToken, first.plural ? first.lastToken : 0) + 1,
    )
  );
}

/**
 * In English the last noun before "for", "with", a comma or a dash is what is on sale ("Name sewing machine bobbin
 * case"); several different parts after the thing are what comes with it.
 */
function headOfPhrase(part: TextPart, nouns: readonly Noun[], first: Noun, cues: readonly CueMatch[]): 'item' | 'part' {
  const behind = nouns.filter(({ firstToken }) => firstToken > first.lastToken);
  // "Pédale Name", "Ersatzteile Name": a part, then only what it is of.
  const opens = nouns.some(({ what, firstToken }) => what === 'part' && firstToken === first.firstToken);
  if (opens && behind.length > 0 && behind.every(({ isName }) => isName)) return 'part';
  const end = phraseEnd(part, nouns, first, cues);
  if (nouns.findLast(({ firstToken }) => firstToken < end)!.what !== 'part') return 'item';
  const parts = behind.filter(({ what }) => what === 'part');
  const distinct = new Set(parts.map(({ lastToken }) => part.tokens[lastToken]!.folded)).size;
  const saysThing = nouns.some(({ what, isName }) => what === 'thing' && !isName);
  return first.what !== 'part' && saysThing && distinct >= 2 ? 'item' : 'part';
}

/** "Lamp for a Name": whatever it is, it isn't that one. */
function isFittedTo(part: TextPart, name: Noun, cues: readonly CueMatch[]): boolean {
  const opens = firstWordOf(part.tokens);
  const notSmall = lastOtherThanSmall(part, name.firstToken);
  return cues.some(
    ({ value, firstToken, lastToken }) =>
      value === 'fitting' && firstToken > opens && lastToken < name.firstToken && lastToken >= notSmall,
  );
}

/** From a token back over words as small as "a" and "the": the first one that is none. */
function lastOtherThanSmall(part: TextPart, before: number): number {
  let i = before - 1;
  while (i >= 0 && part.tokens[i]!.kind === 'word' && part.tokens[i]!.folded.length <= 3) i--;
  return i;
}

/** "Class 66 bobbins, fit …", "potted motor for …": a part whose feature and noun are one phrase opens the title. */
function isFeaturedPart(
  part: TextPart,
  hits: readonly Hit[],
  nouns: readonly Noun[],
  cues: readonly CueMatch[],
): boolean {
  const first = nouns[0];
  const lastFitting = cues.findLast(({ value }) => value === 'fitting')?.firstToken ?? -1;
  // "Two hand cranks": machines, where nothing says that they fit one.
  if (lastFitting < 0 && countsMachines(part, cues)) return false;
  return ofKind(hits, 'value').some((hit) => {
    const opens =
      !first ||
      hit.lastToken < first.firstToken ||
      (hit.firstToken <= first.firstToken && hit.lastToken >= first.lastToken);
    return (
      opens && (!first || lastFitting > hit.lastToken || isBesideNames(part, nouns, hit)) && endsInPart(part, hit, hits)
    );
  });
}

/** "10 class 66 bobbins - Name / Other". */
function isBesideNames({ tokens }: TextPart, nouns: readonly Noun[], { lastToken }: Hit): boolean {
  return (
    /^[-–—/|]$/.test(tokens[lastToken + 1]?.folded ?? '') &&
    PART_NOUNS.test(tokens[lastToken]!.folded) &&
    nouns.every((one) => one.isName || one.firstToken <= lastToken)
  );
}

const PART_NOUNS = /^(bobbins?|motors?|shuttles?|foot|feet|hooks?|spulen?|canettes?|moteurs?|navettes?|motoren)$/;

function endsInPart(part: TextPart, hit: Hit, hits: readonly Hit[]): boolean {
  if (ofKind(hits, 'part').some(({ lastToken }) => lastToken === hit.lastToken)) return true;
  return PART_NOUNS.test(part.tokens[hit.lastToken]!.folded) || PART_NOUNS.test(part.tokens[hit.firstToken]!.folded);
}

/** Where the first noun phrase ends: at a comma, dash, bracket, or a word that begins what it fits or comes with. */
function phraseEnd(part: TextPart, nouns: readonly Noun[], first: Noun, cues: readonly CueMatch[]): number {
  const clause = clauseAt(part, first.firstToken);
  const end = clause ? clause.last + 1 : part.tokens.length;
  const cut = cues.find(
    ({ value, firstToken, lastToken }) =>
      (value === 'fitting' || value === 'accompanying') &&
      firstToken > first.lastToken &&
      !isNameNext(part, nouns, firstToken, lastToken),
  );
  const mark = part.tokens.findIndex(
    (token, i) => i > first.lastToken && token.kind === 'mark' && /^[-–—/+&|:(]$/.test(token.folded) && !token.glued,
  );
  return Math.min(end, cut?.firstToken ?? end, mark < 0 ? end : mark);
}

/** "Name and Other bobbins": the "and" joins what it is of. */
function isNameNext({ tokens }: TextPart, nouns: readonly Noun[], from: number, to: number): boolean {
  return (
    /^(?:and|und|et|&|\+)$/.test(tokens[from]!.folded) &&
    nouns.some(({ isName, firstToken }) => isName && firstToken === to + 1)
  );
}
