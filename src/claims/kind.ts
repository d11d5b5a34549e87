import type { Listing } from '../listing/types';
import { PhraseIndex } from '../text/phrases';
import { contains, type Hit, ofKind } from './hits';
import {
  ACCOMPANYING,
  FITTING,
  LOT,
  NUMBER_WORDS,
  SERVICE,
  SERVICE_FIRST_PERSON,
  TOGETHER,
  WANTED,
  WANTED_FIRST_PERSON,
} from './kind-words';
import { clauseAt, type TextPart } from './part-text';
import type { NameClaim } from './reading';
import type { Kind } from './types';

type Cue = 'wanted' | 'asks' | 'lot' | 'number' | 'service' | 'works' | 'together' | 'fitting' | 'accompanying';

const CUES = new PhraseIndex<Cue>();
for (const [words, cue] of [
  [WANTED, 'wanted'],
  [WANTED_FIRST_PERSON, 'asks'],
  [LOT, 'lot'],
  [NUMBER_WORDS, 'number'],
  [SERVICE, 'service'],
  [SERVICE_FIRST_PERSON, 'works'],
  [TOGETHER, 'together'],
  [FITTING, 'fitting'],
  [ACCOMPANYING, 'accompanying'],
] as const)
  for (const phrase of words.split('|')) CUES.add(phrase, cue);

/** Phrases of these kinds say what a part's noun inside them is part of. */
const NAMING_KINDS: ReadonlySet<string> = new Set(['value', 'thing', 'not-thing', 'part', 'wording']);

/** A page with at least so many separate offers and no seller's text of its own is a list of adverts. */
const OFFERS_OF_A_LIST = 4;

export interface KindInput {
  listing: Listing;
  title: TextPart | null;
  description: TextPart | null;
  /** Phrases of packs in title and description. */
  hits: ReadonlyMap<TextPart, readonly Hit[]>;
  names: readonly NameClaim[];
}

/** What is on offer: the thing itself, a part, a wish, several things, a service; or a page of many adverts, or none. */
export function kindOf({ listing, title, description, hits, names }: KindInput): Kind {
  if (!listing.title && !listing.description && !listing.price) return 'none';
  if (listing.offers >= OFFERS_OF_A_LIST && !listing.description) return 'list';
  if (title) {
    const found = CUES.search(title.tokens);
    const first = title.tokens.findIndex((token) => token.kind !== 'mark');
    const opens = found.some((cue) => cue.value === 'wanted' && cue.firstToken <= first + 1);
    const closes = found.some(
      (cue) =>
        cue.value === 'wanted' &&
        cue.lastToken >= title.tokens.length - 2 &&
        /^(wanted|gesucht|suche)/.test(title.tokens[cue.firstToken]!.folded),
    );
    if (opens || closes) return 'wanted';
    if (found.some((cue) => cue.value === 'service') || offersWork(description, listing)) return 'service';
    const head = headOf(title, hits.get(title) ?? [], names, found);
    if (head === 'lot') return 'lot';
    if (head === 'part') return 'part';
    if (head === 'item') return asksFirst(description) ? 'wanted' : 'item';
  }
  if (asksFirst(description)) return 'wanted';
  if (description && !title) {
    const found = CUES.search(description.tokens);
    const head = headOf(description, hits.get(description) ?? [], names, found);
    if (head) return head;
  }
  return 'item';
}

/** "I repair …" in the first sentence, and no price of a thing. */
function offersWork(description: TextPart | null, { price, priceText }: Listing): boolean {
  const first = description?.clauses[0];
  if (
    !description ||
    !first ||
    (price !== null && price.how !== 'from' && !/call|flat|per |hour|visit|stunde|heure/i.test(priceText))
  )
    return false;
  return CUES.search(description.tokens).some(
    (cue) => cue.value === 'works' && clauseAt(description, cue.firstToken)?.sentence === first.sentence,
  );
}

/** The first sentence says "I am looking for". */
function asksFirst(description: TextPart | null): boolean {
  const first = description?.clauses[0];
  if (!description || !first) return false;
  return CUES.search(description.tokens).some(
    (cue) =>
      (cue.value === 'asks' && clauseAt(description, cue.firstToken)?.sentence === first.sentence) ||
      (cue.value === 'wanted' &&
        cue.firstToken <= first.first + 1 &&
        description.tokens[cue.firstToken]!.folded === 'wanted'),
  );
}

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
function headOf(
  part: TextPart,
  hits: readonly Hit[],
  names: readonly NameClaim[],
  cues: readonly { value: Cue; firstToken: number; lastToken: number }[],
): 'item' | 'part' | 'lot' | null {
  const nouns: Noun[] = [
    ...ofKind(hits, 'thing').map((hit) => noun('thing', hit, part)),
    ...ofKind(hits, 'part')
      .filter((hit) => !hits.some((other) => NAMING_KINDS.has(other.value.kind) && contains(other, hit)))
      .map((hit) => noun('part', hit, part)),
    ...names
      .filter((name) => name.field === part.field)
      .map((name) => ({ what: 'name' as const, ...tokensOf(part, name), plural: false })),
  ].sort((a, b) => a.firstToken - b.firstToken);
  const first = nouns[0];
  if (isFeaturedPart(part, hits, first, cues)) return 'part';
  if (!first) return cues.some((cue) => cue.value === 'lot' && cue.lastToken > cue.firstToken) ? 'lot' : null;

  const things = nouns.filter((one) => one.what === 'thing');
  const counted = things.some(
    (thing) => thing.plural && (cues.some((cue) => isCount(cue, thing, part)) || digitBefore(part, thing.firstToken)),
  );
  const several =
    new Set(names.flatMap((name) => (name.field === part.field && 'model' in name.of ? [name.of.model] : []))).size > 1;
  if (several && cues.some((cue) => cue.value === 'together')) return 'lot';
  const lotWord = cues.some(
    (cue) =>
      cue.value === 'lot' &&
      part.tokens[cue.firstToken]!.folded !== 'machines' &&
      cue.firstToken <= first.firstToken + 1,
  );
  if (counted || (lotWord && nouns.some((one) => one.what !== 'part'))) return 'lot';

  const end = phraseEnd(part, first, cues);
  const inPhrase = nouns.filter((one) => one.firstToken < end);
  const head = inPhrase.at(-1)!;
  if (head.what !== 'part') return 'item';
  const after = nouns.filter((one) => one.firstToken > first.lastToken && one.what === 'part');
  const startsWithThing = first.what !== 'part';
  const distinct = new Set(after.map((one) => part.tokens[one.lastToken]!.folded)).size;
  if (startsWithThing && things.length > 0 && distinct >= 2) return 'item';
  return 'part';
}

/** "Class 66 bobbins, fit …", "potted motor for …": a part whose feature and noun are one phrase opens the title. */
function isFeaturedPart(
  part: TextPart,
  hits: readonly Hit[],
  first: Noun | undefined,
  cues: readonly { value: Cue; firstToken: number }[],
): boolean {
  return ofKind(hits, 'value').some((hit) => {
    const opens = !first || hit.lastToken < first.firstToken;
    const fits = cues.some((cue) => cue.value === 'fitting' && cue.firstToken > hit.lastToken);
    return opens && fits && endsInPart(part, hit);
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
function phraseEnd(part: TextPart, first: Noun, cues: readonly { value: Cue; firstToken: number }[]): number {
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

function isCount(cue: { value: Cue; lastToken: number }, thing: Noun, part: TextPart): boolean {
  if (cue.value !== 'number' || cue.lastToken >= thing.firstToken) return false;
  let words = 0;
  for (let i = cue.lastToken + 1; i < thing.firstToken; i++) if (part.tokens[i]!.kind === 'word') words++;
  return words <= 3;
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
