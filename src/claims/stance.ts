import { PhraseIndex, type PhraseMatch } from '../text/phrases';
import type { Span } from '../text/span';
import { type ClauseRange, clauseAt, quoteOf, type TextPart } from './part-text';
import { quotations } from './quotation';
import { german } from './triggers/de';
import { english } from './triggers/en';
import { french } from './triggers/fr';
import type { Trigger, TriggerRow } from './triggers/types';
import { turnsBack } from './turns-back';
import type { Quote, Stance, Subject } from './types';

export interface StanceOf {
  stance: Stance;
  subject: Subject;
  /** The trigger as written, or null. */
  trigger: string | null;
  denial?: Quote;
}

interface Found extends PhraseMatch<Trigger> {
  clause: ClauseRange | null;
}

/** "no", "without" reach a few words; "is not" reaches further, but not across an "and". */
const SHORT_DENIAL = 4;
const COMPARED_WITHIN = 5;
const CROSSES = /^(?:❌|✗|✘|✖|🚫|⛔)/u;
const JOINS = new Set(['and', '&', '+', 'plus', 'und', 'et']);

const BY_LANGUAGE: Record<string, readonly TriggerRow[]> = { en: english, de: german, fr: french };

function indexFor(languages: ReadonlySet<string>): PhraseIndex<Trigger> {
  const known = Object.keys(BY_LANGUAGE).filter((language) => languages.has(language));
  const index = new PhraseIndex<Trigger>();
  for (const language of known.length > 0 ? known : Object.keys(BY_LANGUAGE))
    for (const [phrases, trigger] of BY_LANGUAGE[language]!)
      for (const phrase of phrases.split('|')) index.add(phrase, trigger);
  return index;
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

/** Finds the triggers of one text and tells what any phrase in it is: said, denied, likened, guessed, quoted; of what. */
export class StanceReader {
  readonly #part: TextPart;
  readonly #found: Found[];
  readonly #quoted: Span[];

  constructor(part: TextPart, languages: ReadonlySet<string>) {
    this.#part = part;
    // A title in quotation marks is a title.
    this.#quoted = part.field === 'title' ? [] : quotations(part.text);
    const all = triggerIndex(languages)
      .search(part.tokens)
      .filter((one) => !(one.value.ends && !endsClause(part, one.lastToken)) && !isNumberSign(part, one));
    // The longest trigger at a place speaks: "not only" is no "not".
    this.#found = all
      .filter((one) => !all.some((other) => covers(other, one)))
      .map((one) => ({ ...one, clause: clauseAt(part, one.firstToken) }));
  }

  /** @param isName names obey triggers that features don't ("fits an X"). */
  at(firstToken: number, lastToken: number, isName = false): StanceOf {
    const clause = clauseAt(this.#part, firstToken);
    if (!clause) return { stance: 'says', subject: 'this', trigger: null };
    let stance: Stance = 'says';
    let subject: Subject = 'this';
    let deciding: Found | null = null;
    const governing = this.#found.filter((one) => this.#governs(one, clause, firstToken, lastToken, isName));
    const denials = governing.filter((one) => one.value.effect === 'denies');
    const sure = denials.filter((one) => !this.#doubtful(one, firstToken));
    for (const trigger of governing) {
      const { effect } = trigger.value;
      if (effect === 'other') subject = 'other';
      else {
        const doubted = effect === 'denies' && !sure.includes(trigger);
        if (doubted && sure.length > 0) continue;
        const reading: Stance = doubted ? 'guesses' : (effect as Stance);
        if (rank(reading) <= rank(stance)) continue;
        stance = reading;
      }
      deciding = trigger;
    }
    if (this.#isCompared(clause, firstToken)) stance = 'likens';
    if (stance === 'says' && (this.#isListedAsLacking(clause) || this.#isCrossed(clause))) stance = 'denies';
    if (rank(stance) < rank('quotes') && this.#isQuoted(firstToken)) stance = 'quotes';
    if (rank(stance) < rank('guesses') && this.#isAsked(clause, isName)) stance = 'guesses';
    // "not without a motor": two denials say it.
    if (stance === 'denies' && adjacent(denials)) stance = 'says';
    if (stance === 'likens') subject = 'other';
    const trigger = deciding ? this.#part.text.slice(deciding.start, deciding.end) : null;
    const denial = stance === 'denies' && deciding ? { denial: this.#together(deciding, firstToken, lastToken) } : {};
    return { stance, subject, trigger, ...denial };
  }

  #together(trigger: Found, firstToken: number, lastToken: number): Quote {
    const start = Math.min(trigger.start, this.#part.tokens[firstToken]!.start);
    const end = Math.max(trigger.end, this.#part.tokens[lastToken]!.end);
    return quoteOf(this.#part, start, end);
  }

  #governs(found: Found, clause: ClauseRange, first: number, last: number, isName: boolean): boolean {
    if (found.firstToken >= first && found.lastToken <= last) return false;
    const { effect, side, reach, namesOnly, across } = found.value;
    if (effect === 'none' || effect === 'stop' || (namesOnly && !isName)) return false;
    if (side === 'row') return this.#answers(found, clause);
    const before = found.lastToken < first;
    if (side === 'before' ? !before : side === 'after' ? before : false) return false;
    const sameClause = found.clause?.first === clause.first;
    if (!sameClause)
      return (
        across === true &&
        found.clause?.sentence === clause.sentence &&
        !(effect === 'other' && before && turnsBack(this.#part, clause))
      );
    const [from, to] = before ? [found.lastToken + 1, first] : [last + 1, found.firstToken];
    if (this.#words(from, to) > reach || (reach < 99 && this.#stopped(from, to))) return false;
    return !(effect === 'denies' && reach > SHORT_DENIAL && this.#joined(from, to));
  }

  /** "No motor and cast iron": whether the denial goes on after the "and" is anybody's guess. */
  #doubtful(found: Found, first: number): boolean {
    const { effect, reach } = found.value;
    return (
      effect === 'denies' &&
      reach <= SHORT_DENIAL &&
      found.lastToken < first &&
      this.#joined(found.lastToken + 1, first)
    );
  }

  #joined(from: number, to: number): boolean {
    for (let i = from; i < to; i++) if (JOINS.has(this.#part.tokens[i]!.folded)) return true;
    return false;
  }

  /** "As quiet as a rotary hook", "aussi solide que la fonte": the second "as" stands shortly before. */
  #isCompared(clause: ClauseRange, first: number): boolean {
    const words = this.#part.tokens.slice(clause.first, first).map((token) => token.folded);
    const second = Math.max(...['as', 'wie', 'que', 'qu', "qu'"].map((word) => words.lastIndexOf(word)));
    if (second < 0 || words.length - second > COMPARED_WITHIN) return false;
    const before = words.slice(Math.max(0, second - COMPARED_WITHIN), second);
    return before.some((word) => word === 'as' || word === 'so' || word === 'aussi');
  }

  /** "What it can't do: zigzag, drop feed, leather": a clause before the colon denies the whole list. */
  #isListedAsLacking(clause: ClauseRange): boolean {
    const { clauses } = this.#part;
    for (let i = clauses.indexOf(clause) - 1; i >= 0 && clauses[i]!.sentence === clause.sentence; i--) {
      const before = clauses[i]!;
      if (before.tokens.at(-1)?.folded !== ':') continue;
      return this.#found.some(
        ({ value, firstToken, lastToken }) =>
          value.effect === 'denies' &&
          value.side === 'before' &&
          firstToken >= before.first &&
          lastToken <= before.last &&
          before.last - lastToken <= 3,
      );
    }
    return false;
  }

  /** A cross before a list's line denies it, as a tick asserts it. */
  #isCrossed(clause: ClauseRange): boolean {
    for (let i = clause.first; i >= 0; i--) {
      const token = this.#part.tokens[i]!;
      if (token.kind === 'break') return false;
      if (CROSSES.test(token.folded)) return true;
      if (token.kind !== 'mark' && i < clause.first) return false;
    }
    return false;
  }

  #isQuoted(token: number): boolean {
    const { start } = this.#part.tokens[token]!;
    return this.#quoted.some((span) => start >= span.start && start < span.end);
  }

  /** A question claims nothing: "Is it a zigzag?" A name is asked for in its own clause only. */
  #isAsked(clause: ClauseRange, isName: boolean): boolean {
    const asks = (one: ClauseRange): boolean => one.tokens.some((token) => token.folded.startsWith('?'));
    if (isName) return asks(clause);
    return this.#part.clauses.some((one) => one.sentence === clause.sentence && asks(one));
  }

  /** "Zigzag: no": the answer opens the clause right after the one that ends in a colon. */
  #answers(found: Found, clause: ClauseRange): boolean {
    if (clause.tokens.at(-1)?.folded !== ':') return false;
    const next = this.#part.clauses[this.#part.clauses.indexOf(clause) + 1];
    return next !== undefined && next.sentence === clause.sentence && found.firstToken === next.first;
  }

  #words(from: number, to: number): number {
    let count = 0;
    for (let i = from; i < to; i++) if (this.#part.tokens[i]!.kind !== 'mark') count++;
    return count;
  }

  /** A termination word between trigger and phrase ends the trigger's reach. */
  #stopped(from: number, to: number): boolean {
    for (let i = from; i < to; i++) if (this.#part.tokens[i]!.folded === ':') return true;
    return this.#found.some((one) => one.value.effect === 'stop' && one.firstToken >= from && one.lastToken < to);
  }
}

/** Two denials side by side take each other back. */
function adjacent(denials: readonly Found[]): boolean {
  return denials.some((one) => denials.some((other) => one.lastToken + 1 === other.firstToken));
}

/** The more careful reading wins: a likeness claims least, then a quotation, a guess, a denial. */
function rank(stance: Stance): number {
  return ['says', 'denies', 'guesses', 'quotes', 'likens'].indexOf(stance);
}

function covers(outer: PhraseMatch<unknown>, inner: PhraseMatch<unknown>): boolean {
  const wider = outer.lastToken - outer.firstToken > inner.lastToken - inner.firstToken;
  return wider && outer.firstToken <= inner.firstToken && outer.lastToken >= inner.lastToken;
}

function endsClause(part: TextPart, lastToken: number): boolean {
  const clause = clauseAt(part, lastToken);
  return clause !== null && part.tokens.slice(lastToken + 1, clause.last + 1).every((token) => token.kind === 'mark');
}

/** "No. 20417": a number's sign, no denial. */
function isNumberSign(part: TextPart, { firstToken, lastToken, start, end }: PhraseMatch<Trigger>): boolean {
  if (firstToken !== lastToken || !/^nos?$/i.test(part.text.slice(start, end))) return false;
  return /^\s*[.:°#]?\s*[A-Z]{0,3}[ -]?\d/.test(part.text.slice(end, end + 12));
}
