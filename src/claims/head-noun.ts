import { contains, type Hit, ofKind } from './hits';
import type { CueMatch } from './kind-cues';
import { clauseAt, type TextPart } from './part-text';
import type { NameClaim } from './reading';

/** Phrases of these kinds say what a part's noun inside them is part of. */
const NAMING_KINDS: ReadonlySet<string> = new Set(['value', 'thing', 'not-thing', 'part', 'wording']);

interface Noun {
  what: 'thing' | 'part' | 'name';
  firstToken: number;
  lastToken: number;
  plural: boolean;
}

/**
 * The head noun of a title. In English the last noun before "for", "with", a comma or a dash is what is on sale
 * ("Name sewing machine bobbin case"); several different parts after the thing are what comes with it.
 */
export function headOf(
  part: TextPart,
  hits: readonly Hit[],
  names: readonly NameClaim[],
  cues: readonly CueMatch[],
): 'item' | 'part' | 'lot' | null {
  const nouns: Noun[] = [
    ...ofKind(hits, 'thing').map((hit) => noun('thing', hit, part)),
    ...ofKind(hits, 'part')
      .filter((hit) => !hits.some((other) => NAMING_KINDS.has(other.value.kind) && contains(other, hit)))
      .filter((hit) => !cues.some((cue) => cue.value === 'as-donor' && contains(cue, hit)))
      .map((hit) => noun('part', hit, part)),
    ...names
      .filter((name) => name.field === part.field)
      .map((name) => ({ what: 'name' as const, ...tokensOf(part, name), plural: false })),
  ].sort((a, b) => a.firstToken - b.firstToken);
  const first = nouns[0];
  // A maker's name may be a word for the thing too.
  const isName = (one: Noun): boolean =>
    one.what === 'name' ||
    nouns.some(
      (other) => other.what === 'name' && other.firstToken <= one.firstToken && other.lastToken >= one.lastToken,
    );
  if (isFeaturedPart(part, hits, first, cues)) return 'part';
  const counted = isCounted(part, cues);
  if (!first)
    return counted || cues.some((cue) => cue.value === 'lot' && cue.lastToken > cue.firstToken) ? 'lot' : null;
  if (counted && nouns.every((one) => one.what !== 'part')) return 'lot';
  if (isName(first) && isFittedTo(part, first, cues)) return 'part';

  const things = nouns.filter((one) => one.what === 'thing');
  const countedThings = things.some(
    (thing) => thing.plural && (cues.some((cue) => isCount(cue, thing, part)) || digitBefore(part, thing.firstToken)),
  );
  const several =
    new Set(names.flatMap((name) => (name.field === part.field && 'model' in name.of ? [name.of.model] : []))).size > 1;
  const pluralThing = cues.some((cue) => cue.value === 'counted');
  if (several && (pluralThing || cues.some((cue) => cue.value === 'together'))) return 'lot';
  const lotWord = cues.some(
    (cue) =>
      cue.value === 'lot' &&
      part.tokens[cue.firstToken]!.folded !== 'machines' &&
      cue.firstToken <= first.firstToken + 1,
  );
  const timesName = isName(first) && isTimes(part, first.firstToken);
  if (countedThings || timesName || (lotWord && first.what !== 'part')) return 'lot';

  // "Pédale Name", "Ersatzteile Name": a part, then only what it is of.
  const behind = nouns.filter((one) => one.firstToken > first.lastToken);
  const opens = nouns.some((one) => one.what === 'part' && one.firstToken === first.firstToken);
  if (opens && behind.length > 0 && behind.every(isName)) return 'part';
  const end = phraseEnd(part, first, cues);
  const inPhrase = nouns.filter((one) => one.firstToken < end);
  const head = inPhrase.at(-1)!;
  if (head.what !== 'part') return 'item';
  const after = nouns.filter((one) => one.firstToken > first.lastToken && one.what === 'part');
  const startsWithThing = first.what !== 'part';
  const distinct = new Set(after.map((one) => part.tokens[one.lastToken]!.folded)).size;
  if (startsWithThing && things.some((thing) => !isName(thing)) && distinct >= 2) return 'item';
  return 'part';
}

/** "Lamp for a Name": whatever it is, it isn't that one. */
function isFittedTo(part: TextPart, name: Noun, cues: readonly CueMatch[]): boolean {
  const opens = part.tokens.findIndex(({ kind }) => kind !== 'mark');
  return cues.some(
    (cue) =>
      cue.value === 'fitting' &&
      cue.firstToken > opens &&
      cue.lastToken < name.firstToken &&
      part.tokens
        .slice(cue.lastToken + 1, name.firstToken)
        .every(({ kind, folded }) => kind === 'word' && folded.length <= 3),
  );
}

/** "Class 66 bobbins, fit …", "potted motor for …": a part whose feature and noun are one phrase opens the title. */
function isFeaturedPart(
  part: TextPart,
  hits: readonly Hit[],
  first: Noun | undefined,
  cues: readonly CueMatch[],
): boolean {
  return ofKind(hits, 'value').some((hit) => {
    const opens = !first || hit.lastToken < first.firstToken;
    const fits = cues.some((cue) => cue.value === 'fitting' && cue.firstToken > hit.lastToken);
    return opens && (fits || !first) && endsInPart(part, hit);
  });
}

const PART_NOUNS = /^(bobbins?|motors?|shuttles?|foot|feet|hooks?|spulen?|canettes?|moteurs?|navettes?|motoren)$/;

function endsInPart(part: TextPart, hit: Hit): boolean {
  return PART_NOUNS.test(part.tokens[hit.lastToken]!.folded) || PART_NOUNS.test(part.tokens[hit.firstToken]!.folded);
}

function noun(what: 'thing' | 'part', hit: Hit, part: TextPart): Noun {
  const last = part.tokens[hit.lastToken]!.folded;
  return { what, firstToken: hit.firstToken, lastToken: hit.lastToken, plural: /[sn]$/.test(last) };
}

function tokensOf(part: TextPart, span: { start: number; end: number }): { firstToken: number; lastToken: number } {
  const firstToken = part.tokens.findIndex((token) => token.end > span.start);
  let lastToken = firstToken;
  while (lastToken + 1 < part.tokens.length && part.tokens[lastToken + 1]!.start < span.end) lastToken++;
  return { firstToken, lastToken };
}

/** Where the first noun phrase ends: at a comma, dash, bracket, or a word that begins what it fits or comes with. */
function phraseEnd(part: TextPart, first: Noun, cues: readonly CueMatch[]): number {
  const clause = clauseAt(part, first.firstToken);
  const end = clause ? clause.last + 1 : part.tokens.length;
  const cut = cues
    .filter((cue) => (cue.value === 'fitting' || cue.value === 'accompanying') && cue.firstToken > first.lastToken)
    .map((cue) => cue.firstToken);
  const marks = part.tokens.findIndex(
    (token, i) => i > first.lastToken && token.kind === 'mark' && /^[-–—/+&|:(]$/.test(token.folded) && !token.glued,
  );
  return Math.min(end, ...cut, marks < 0 ? end : marks);
}

function isCount(cue: { value: CueMatch['value']; lastToken: number }, thing: Noun, part: TextPart): boolean {
  if (cue.value !== 'number' || cue.lastToken >= thing.firstToken) return false;
  let words = 0;
  for (let i = cue.lastToken + 1; i < thing.firstToken; i++) if (part.tokens[i]!.kind === 'word') words++;
  return words <= 3;
}

/** "Three machines", "30 heads". */
function isCounted(part: TextPart, cues: readonly CueMatch[]): boolean {
  return cues.some((cue) => {
    if (cue.value !== 'counted') return false;
    const inWords = cues.some(
      (one) => one.value === 'number' && one.lastToken < cue.firstToken && cue.firstToken - one.lastToken <= 3,
    );
    return inWords || digitBefore(part, cue.firstToken);
  });
}

/** "2x Name", "3 × Name". */
function isTimes(part: TextPart, at: number): boolean {
  const [count, times] = [part.tokens[at - 2], part.tokens[at - 1]];
  return count?.kind === 'number' && /^(?:[2-9]|1\d)$/.test(count.folded) && /^[x×]$/.test(times?.folded ?? '');
}

/** "3 sewing machines", "5x sewing machines". */
function digitBefore(part: TextPart, at: number): boolean {
  for (let i = Math.max(0, at - 4); i < at; i++) {
    const token = part.tokens[i]!;
    if (
      token.kind === 'number' &&
      /^\d{1,2}$/.test(token.folded) &&
      Number(token.folded) > 1 &&
      !part.tokens[i + 1]?.folded.startsWith('%')
    )
      return true;
  }
  return false;
}
