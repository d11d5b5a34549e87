import { type Clause, clauses } from '../text/clauses';
import { firstNotBefore } from '../text/in-order';
import type { PhraseMatch } from '../text/phrases';
import type { Span } from '../text/span';
import { type Token, tokenise } from '../text/tokens';
import type { YearKind } from './types';
import { YEAR_CUES, type YearCue } from './year-cues';

export interface KindReading {
  kind: YearKind;
  cue: string | null;
}

/** Words that may stand between a weak cue and its year: "from the 1950s", "aus dem Jahr 1954". */
const SMALL = new Set(
  "the a den dem der die jahr jahre jahren les l' annee annees year years early mid late circa ca c about around back to in".split(
    ' ',
  ),
);
const ARTICLES = new Set("a an this my our it's its ein eine einer diese une cette".split(' '));
const MACHINES = new Set('machine machines maschine nahmaschine model modell version example'.split(' '));
/** How near a stronger word must be to overrule a weak one: "manual dated 1954", "owned from 1954". */
const OVERRULES_WITHIN = 3;
/** English and French put what belongs to a year before it: what follows must stand right beside it. */
const FOLLOWS_WITHIN = 1;

/** "Bought in 1961, the year it was made". */
const IN_WHICH =
  /^,? the (?:same |very )?(year (?:in which )?(?:it|she|this(?: one)?) was (?:made|built|produced))(?!\w)/i;
/** "Est. 1851", "© 2023". Without its full stop "est" is a French verb. */
const FOUNDED = /(?:^|[^\p{L}])(©|\(c\)|est\.|estd\.?) ?$/iu;

/** In tokens: no clause that a person writes is longer, and it bounds the work where one is. */
const REACH = 60;

type Cue = PhraseMatch<YearCue>;

interface Candidate {
  cue: Cue;
  /** Words between cue and year. */
  distance: number;
  follows: boolean;
}

/** Tells what each of the years of a text, in order, is the year of: by the nearest cue in its clause. */
export function yearKinds(text: string, years: readonly Span[]): KindReading[] {
  const tokens = tokenise(text);
  const places = years.map((year) => tokensOf(tokens, year));
  const cues = apart(YEAR_CUES.search(tokens)).filter((cue) => !isBuiltIn(text, cue));
  const stretches = clauseStretches(tokens, clauses(text, tokens));
  return places.map((place, at) => {
    const stretch = stretches.find(place.first);
    const from = Math.max(stretch.first, (places[at - 1]?.last ?? -1) + 1, place.first - REACH);
    const to = Math.min(stretch.last, (places[at + 1]?.first ?? tokens.length) - 1, place.last + REACH);
    return kindOf(text, tokens, place, cuesWithin(cues, from, to));
  });
}

interface Place {
  first: number;
  last: number;
}

function firstTokenEndingAfter(tokens: readonly Token[], offset: number): number {
  return firstNotBefore(tokens, ({ end }) => end <= offset);
}

function tokensOf(tokens: readonly Token[], { start, end }: Span): Place {
  return { first: firstTokenEndingAfter(tokens, start), last: firstTokenEndingAfter(tokens, end - 1) };
}

/** Of cues that overlap the one that begins first, and of those the longest: "first sold" before "sold in". */
function apart(cues: readonly Cue[]): Cue[] {
  const kept: Cue[] = [];
  for (const cue of cues) if (cue.firstToken > (kept.at(-1)?.lastToken ?? -1)) kept.push(cue);
  return kept;
}

/** "Built-in light" tells nothing of when. */
function isBuiltIn(text: string, cue: Cue): boolean {
  return /^built-in$/i.test(text.slice(cue.start, cue.end)) || /^-in\b/i.test(text.slice(cue.end, cue.end + 4));
}

/**
 * For each clause the tokens whose cues count: its own, and for one in brackets or after a colon those of the clause
 * before it too ("built (1954)", "Baujahr: ca. 1954").
 */
function clauseStretches(tokens: readonly Token[], all: readonly Clause[]) {
  const starts: number[] = [];
  const places: Place[] = [];
  let first = 0;
  all.forEach((clause, at) => {
    while (tokens[first] !== clause.tokens[0]) first++;
    const before = all[at - 1];
    const isSame = before?.sentence === clause.sentence;
    const leans = isSame && (clause.tokens[0]!.folded === '(' || before.tokens.at(-1)!.folded === ':');
    starts.push(first);
    places.push({ first: leans ? places.at(-1)!.first : first, last: first + clause.tokens.length - 1 });
  });
  return {
    find(token: number): Place {
      const next = firstNotBefore(starts, (start) => start <= token);
      return places[next - 1] ?? { first: token, last: token };
    },
  };
}

function cuesWithin(cues: readonly Cue[], first: number, last: number): Cue[] {
  const within: Cue[] = [];
  for (
    let at = firstNotBefore(cues, ({ firstToken }) => firstToken < first);
    at < cues.length && cues[at]!.firstToken <= last;
    at++
  )
    if (cues[at]!.lastToken <= last) within.push(cues[at]!);
  return within;
}

function wordsBetween(tokens: readonly Token[], first: number, last: number): Token[] {
  return tokens.slice(first, last).filter((token) => token.kind === 'word' || token.kind === 'number');
}

function candidateOf(tokens: readonly Token[], place: Place, cue: Cue): Candidate | null {
  const { isWeak, mayFollow, isNoun } = cue.value;
  if (cue.lastToken < place.first) {
    const between = wordsBetween(tokens, cue.lastToken + 1, place.first);
    if (isWeak && !between.every((token) => SMALL.has(token.folded))) return null;
    return { cue, distance: between.length, follows: false };
  }
  if (cue.firstToken <= place.last) return null;
  const { length } = wordsBetween(tokens, place.last + 1, cue.firstToken);
  if (mayFollow) return { cue, distance: length + 0.5, follows: true };
  if (length > FOLLOWS_WITHIN || (isWeak && (length > 0 || cue.value.kind !== 'made' || !isAfterYear(tokens, cue))))
    return null;
  return { cue, distance: isNoun && length === 0 ? 0.5 : (length + 1) * 2, follows: true };
}

const AFTER_YEAR = new Set(['vintage', 'era', 'period']);
const isAfterYear = (tokens: readonly Token[], cue: Cue) => AFTER_YEAR.has(tokens[cue.firstToken]!.folded);

function nearest(candidates: readonly Candidate[]): Candidate | null {
  let best: Candidate | null = null;
  for (const candidate of candidates) {
    const isNearer = !best || candidate.distance < best.distance;
    const isLonger =
      best?.distance === candidate.distance && candidate.cue.end - candidate.cue.start > best.cue.end - best.cue.start;
    if (isNearer || isLonger) best = candidate;
  }
  return best;
}

function kindOf(text: string, tokens: readonly Token[], place: Place, cues: readonly Cue[]): KindReading {
  const candidates = cues.map((cue) => candidateOf(tokens, place, cue)).filter((candidate) => candidate !== null);
  let best = nearest(candidates);
  if (best?.cue.value.isWeak) {
    const reach = best.distance + OVERRULES_WITHIN;
    const stronger = candidates.filter(
      (one) => !one.cue.value.isWeak && one.distance <= reach && (!one.follows || one.distance < 2),
    );
    best = nearest(stronger) ?? best;
  }
  const start = tokens[place.first]!.start;
  const founded = FOUNDED.exec(text.slice(Math.max(0, start - 8), start));
  const same = IN_WHICH.exec(text.slice(tokens[place.last]!.end, tokens[place.last]!.end + 48));
  if (same) return { kind: 'made', cue: same[1]! };
  if (founded) return { kind: 'other', cue: founded[1]! };
  if (best) return { kind: best.cue.value.kind, cue: text.slice(best.cue.start, best.cue.end) };
  const after = tokens[place.last + 1];
  const hasArticle = tokens
    .slice(Math.max(0, place.first - 3), place.first)
    .some((token) => ARTICLES.has(token.folded));
  if (after && hasArticle && MACHINES.has(after.folded))
    return { kind: 'made', cue: text.slice(after.start, after.end) };
  return { kind: 'unknown', cue: null };
}
