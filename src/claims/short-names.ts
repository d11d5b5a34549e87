import type { NameKnown } from '../pack/knowledge';
import type { PhraseMatch } from '../text/phrases';
import { packOf } from './packs-named';
import { type ClauseRange, clauseAt, type TextPart } from './part-text';

/** Words that make the number or letter after them a model's name. */
const NAMING = new Set('model mod type class no nr number mark mk series modell typ klasse serie modele'.split(' '));
const NAMING_REACH = 3;
/** Tokens between a short name and its maker's. */
const NEAR = 3;
/** In tokens: a name that begins farther away doesn't reach up to here. */
const LONGEST_NAME = 80;

/** "Maker treadle sewing machine 44": a title's words for the thing part no name from its maker's. */
const PLAIN = /^(?:sewing|treadle|hand|crank|cranked|electric|portable|machine|the|by|from|model|no|number)$/;

type NameMatch = PhraseMatch<NameKnown>;
/** What vouches for a short name: its maker, in small letters, or its family. */
type Voucher = string | object;

/**
 * Names that are words, numbers or letters of their own as well: which of them are names here. By pack some are wherever
 * another name of the pack stands; the others only near their own maker or family, or after a naming word beside such a
 * name.
 */
export class ShortNames {
  readonly #part: TextPart;
  /** Packs that the advert names, from `packsNamed`. */
  readonly #named: ReadonlySet<string>;
  /** By its first token: names that stand by themselves. */
  readonly #alone = new Map<number, NameMatch[]>();
  /** By its first token: who vouches in a clause. */
  readonly #inClause = new Map<number, Set<Voucher>>();
  /** Who vouches anywhere in the text. */
  readonly #anywhere = new Set<Voucher>();

  constructor(part: TextPart, all: readonly NameMatch[], named: ReadonlySet<string>) {
    this.#part = part;
    this.#named = named;
    for (const match of all) {
      const vouchers = vouchersIn(match.value.of);
      if (match.value.stands !== 'alone' || vouchers.length === 0) continue;
      for (const voucher of vouchers) this.#anywhere.add(voucher);
      add(this.#alone, match.firstToken, match);
      const clause = clauseAt(part, match.firstToken);
      if (!clause || match.lastToken > clause.last) continue;
      const there = this.#inClause.get(clause.first) ?? new Set();
      this.#inClause.set(clause.first, there);
      for (const voucher of vouchers) there.add(voucher);
    }
  }

  isNameHere(match: NameMatch): boolean {
    const { stands, of } = match.value;
    if (stands === 'alone') return true;
    if (stands === 'named' && !('maker' in of) && this.#named.has(packOf(of))) return true;
    return this.#standsByItsMaker(match);
  }

  #standsByItsMaker(match: NameMatch): boolean {
    const { field, tokens } = this.#part;
    // "Open 9-3": hours.
    const dash = tokens[match.firstToken - 1];
    if (dash?.folded === '-' && dash.glued && tokens[match.firstToken - 2]?.kind === 'number') return false;
    const named = hasNamingWord(match, this.#part);
    if (named && field === 'details') return true;
    const wanted = vouchersFor(match.value.of);
    const clause = clauseAt(this.#part, match.firstToken);
    if (named) {
      const vouching = field === 'title' ? this.#anywhere : clause && this.#inClause.get(clause.first);
      if (vouching && wanted.some((one) => vouching.has(one))) return true;
    }
    if (this.#named.has(packOf(match.value.of)) && (this.#isSaidToBe(match) || this.#isTheLettered(match))) return true;
    if (field === 'title' && (this.#isInTitle(match, wanted) || this.#opensTitle(match))) return true;
    return clause !== null && this.#isNear(match, clause, wanted);
  }

  #isNear(match: NameMatch, clause: ClauseRange, wanted: readonly Voucher[]): boolean {
    const from = Math.max(clause.first, match.firstToken - NEAR - LONGEST_NAME);
    const to = Math.min(clause.last, match.lastToken + NEAR);
    for (let first = from; first <= to; first++)
      for (const { lastToken, value } of this.#alone.get(first) ?? []) {
        const gap = lastToken < match.firstToken ? match.firstToken - lastToken : first - match.lastToken;
        const isBeside = gap >= 0 && gap <= NEAR && lastToken <= clause.last;
        if (isBeside && vouches(value.of, wanted)) return true;
        if (lastToken + 1 === match.firstToken && this.#isCalled(match)) return true;
      }
    return false;
  }

  /** "This is the 14": of the thing whose maker the advert names elsewhere. */
  #isSaidToBe({ firstToken, value }: NameMatch): boolean {
    const before = this.#part.tokens.slice(Math.max(0, firstToken - 3), firstToken).map(({ folded }) => folded);
    return 'model' in value.of && /^this is (?:the|a|an)$/.test(before.join(' '));
  }

  /** "I'm keeping the 21 A, which is …": digits with a letter, spoken of like a name. */
  #isTheLettered({ start, end, firstToken, lastToken, value }: NameMatch): boolean {
    const written = this.#part.text.slice(start, end);
    const next = this.#part.tokens[lastToken + 1];
    return (
      'model' in value.of &&
      /\d/.test(written) &&
      /\p{Lu}/u.test(written) &&
      /^(?:the|my|a|an)$/.test(this.#part.tokens[firstToken - 1]?.folded ?? '') &&
      (next?.kind !== 'word' || /^(?:is|was|has|which|that|and|or|but|in|from)$/.test(next.folded))
    );
  }

  /** "Name 24, Maker, light green", "Maker No. I Name": a title is all of one thing, whatever marks part it. */
  #isInTitle(match: NameMatch, wanted: readonly Voucher[]): boolean {
    if (!this.#isWrittenAsName(match)) return false;
    for (const there of this.#alone.values())
      for (const { firstToken, lastToken, value } of there) {
        const [from, to] =
          lastToken < match.firstToken ? [lastToken + 1, match.firstToken] : [match.lastToken + 1, firstToken];
        const between = this.#part.tokens
          .slice(from, to)
          .filter(({ kind, folded }) => kind !== 'mark' && !PLAIN.test(folded));
        if (between.length < NEAR && vouches(value.of, wanted)) return true;
      }
    return false;
  }

  /** "Pantry, post-war": the number in the text is of that pack. */
  #opensTitle(match: NameMatch): boolean {
    const next = this.#part.tokens[match.lastToken + 1];
    return (
      this.#part.tokens.slice(0, match.firstToken).every(({ kind }) => kind === 'mark') &&
      (next === undefined || next.kind === 'mark') &&
      this.#isWrittenAsName(match) &&
      this.#named.has(packOf(match.value.of))
    );
  }

  #isWrittenAsName({ start, value }: NameMatch): boolean {
    return 'model' in value.of && /^[\p{Lu}\p{N}]/u.test(this.#part.text.slice(start));
  }

  /** "Ottermere Sedge", "Ottermere F5": a title's capital behind another maker's name. That maker is the mistake. */
  #isCalled({ start, end, value }: NameMatch): boolean {
    const written = this.#part.text.slice(start, end);
    return (
      this.#part.field === 'title' &&
      'model' in value.of &&
      /^(?:\p{Lu}(?:\p{L}{3,}|\d{1,3}\p{Lu}?)|\d{3}\p{Lu}?)$/u.test(written)
    );
  }
}

/** A family that is called like its maker is all of the maker's: its other spellings vouch as the maker's name does. */
function vouchersIn(of: NameKnown['of']): Voucher[] {
  if ('maker' in of) return [of.maker.toLowerCase()];
  if (!('family' in of)) return [];
  const { label, maker } = of.family.def;
  return maker !== undefined && label === maker ? [of.family, maker.toLowerCase()] : [of.family];
}

const vouches = (of: NameKnown['of'], wanted: readonly Voucher[]): boolean =>
  vouchersIn(of).some((one) => wanted.includes(one));

function vouchersFor(of: NameKnown['of']): Voucher[] {
  if ('maker' in of) return [];
  const family = 'model' in of ? of.model.family : of.family;
  const makers = [family?.def.maker, ...('model' in of ? [of.model.def.maker] : [])];
  return [
    ...makers.flatMap((maker) => (maker === undefined ? [] : [maker.toLowerCase()])),
    ...('model' in of && family ? [family] : []),
  ];
}

function hasNamingWord({ firstToken }: NameMatch, part: TextPart): boolean {
  for (let i = firstToken - 1; i >= Math.max(0, firstToken - NAMING_REACH); i--) {
    const token = part.tokens[i]!;
    if (token.kind === 'word') return NAMING.has(token.folded);
    if (token.kind === 'break') return false;
  }
  return false;
}

function add<K, V>(to: Map<K, V[]>, key: K, value: V): void {
  const there = to.get(key);
  if (there) there.push(value);
  else to.set(key, [value]);
}
