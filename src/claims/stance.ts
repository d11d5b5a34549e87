import { firstNotBefore } from '../text/in-order';
import type { Span } from '../text/span';
import type { Token } from '../text/tokens';
import { isCompared } from './compared';
import { deniedInList } from './denied-list';
import { beginningWithin } from './hits';
import { isCrossed, isLeftOpen, isListedAsLacking } from './lacking-list';
import { type ClauseRange, clauseAt, clauseIndexAt, FARTHEST, quoteOf, type TextPart } from './part-text';
import { quotations } from './quotation';
import { type Found, triggersIn } from './triggers-in';
import { turnsBack } from './turns-back';
import type { Quote, Rule, Stance, Subject, Why } from './types';

export interface StanceOf {
  stance: Stance;
  subject: Subject;
  /** The trigger as written, or null. */
  trigger: string | null;
  denial?: Quote;
  why?: readonly Why[];
}

/** "no", "without" reach a few words; "is not" reaches further, but not across an "and". */
const SHORT_DENIAL = 4;
/** In tokens: one that begins before a sentence may reach into it. */
const LONGEST_TRIGGER = 12;
/** "Does it do zigzag, people ask." */
const ASKS: readonly (readonly [verb: RegExp, who: RegExp])[] = [
  [/^(?:does|do|will|can|has|is)$/, /^(?:it|she|this|they)$/],
  [/^(?:fait|a-t|est|est-ce)$/, /^(?:-|elle|que)$/],
];
/** What a phrase can begin with that lacks something. */
const OWN_DENIAL = /^(?:pas|sans|ni|nor|noch|aucune?|kein\w*|nicht|ohne|no|not|without|\w+n['’]t)$/;
/** "Ni marche arrière ni lampe": each thing in the list has its own. */
const NEITHER = /^(?:ni|neither|weder)$/;
/** They say of a feature that it is the only one: "pas de zigzag point droit uniquement". */
const RESTRICTS = /^(?:seulement|uniquement|que|rien)$/;
/** Things that one answer is given for. */
const MOST_ROWS = 8;
/** "According to him …, but that is nonsense, only 300 were made": what follows is the seller's own. */
const REFUTED =
  /\bbut (?:that|this|it)(?:['’]s| is| was)? (?:nonsense|rubbish|wrong|untrue|not so|not true|a mistake)\b/i;
const JOINS = new Set(['and', '&', '+', 'plus', 'und', 'et']);

/** Finds the triggers of one text and tells what any phrase in it is: said, denied, likened, guessed, quoted; of what. */
export class StanceReader {
  readonly #part: TextPart;
  readonly #found: Found[];
  readonly #quoted: Span[];
  /** Sentence -> its tokens, from the first to the last. */
  readonly #sentences: { first: number; last: number }[] = [];
  /** Sentences with a question mark, and clauses by their first token. */
  readonly #askedSentences = new Set<number>();
  readonly #askedClauses = new Set<number>();
  /** Several phrases stand in the same place, of several packs and kinds. */
  readonly #known = new Map<number, StanceOf>();

  constructor(part: TextPart, languages: ReadonlySet<string>) {
    this.#part = part;
    // A title in quotation marks is a title.
    this.#quoted = part.field === 'title' ? [] : quotations(part.text);
    this.#found = triggersIn(part, languages);
    for (const { sentence, first, last, tokens } of part.clauses) {
      if (asks(tokens)) this.#askedClauses.add(first);
      if (tokens.some(isQuestionMark)) {
        this.#askedSentences.add(sentence);
        this.#askedClauses.add(first);
      }
      const there = this.#sentences[sentence];
      if (there) there.last = last;
      else this.#sentences[sentence] = { first, last };
    }
  }

  /** @param isName names obey triggers that features don't ("fits an X"). */
  at(firstToken: number, lastToken: number, isName = false): StanceOf {
    const place = 2 * (firstToken * this.#part.tokens.length + lastToken) + Number(isName);
    const there = this.#known.get(place);
    if (there) return there;
    const made = this.#read(firstToken, lastToken, isName);
    this.#known.set(place, made);
    return made;
  }

  #read(firstToken: number, lastToken: number, isName: boolean): StanceOf {
    const clause = clauseAt(this.#part, firstToken);
    if (!clause) return { stance: 'says', subject: 'this', trigger: null };
    let stance: Stance = 'says';
    let subject: Subject = 'this';
    let deciding: Found | null = null;
    const why: Why[] = [];
    const turn = (to: Stance, rule: Rule, word: string | null = null): void => {
      if (stance === to) return;
      stance = to;
      why.push({ rule, makes: to, word });
    };
    const governing = this.#governing(clause, firstToken, lastToken, isName);
    const denials = governing.length === 0 ? governing : governing.filter((one) => one.value.effect === 'denies');
    const sure = denials.length === 0 ? denials : denials.filter((one) => !this.#doubtful(one, firstToken, lastToken));
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
      why.push({ rule: 'trigger', makes: effect === 'other' ? 'other' : stance, word: this.#written(trigger) });
    }
    if (isCompared(this.#part, clause, firstToken)) turn('likens', 'compared');
    // "❌ no lamp", "missing: no lamp": the mark and the word say the same.
    const isDenial = this.#isDenial(firstToken, lastToken);
    if (stance === 'says' && !isDenial && isListedAsLacking(this.#part, clause, this.#in))
      turn('denies', 'lacking-list');
    if (stance === 'says' && !isDenial && isCrossed(this.#part, clause, lastToken)) turn('denies', 'crossed');
    if (stance === 'says' && isLeftOpen(this.#part, lastToken)) turn('guesses', 'crossed');
    const list = stance === 'says' && !isDenial ? deniedInList(this.#part, clause, firstToken, this.#in) : null;
    if (list) {
      deciding = list.trigger;
      turn(list.sure ? 'denies' : 'guesses', 'denied-list', this.#written(deciding));
    }
    if (rank(stance) < rank('quotes') && this.#isQuoted(firstToken)) turn('quotes', 'quoted');
    if (rank(stance) < rank('guesses') && this.#isAsked(clause, isName)) turn('guesses', 'asked');
    // "not without a motor": two denials say it.
    if (stance === 'denies' && adjacent(denials)) turn('says', 'denied-twice');
    if (stance === 'likens') subject = 'other';
    const trigger = deciding ? this.#written(deciding) : null;
    const made: StanceOf = { stance, subject, trigger };
    if (stance === 'denies' && deciding) made.denial = this.#together(deciding, firstToken, lastToken);
    if (why.length > 0) made.why = why;
    return made;
  }

  /**
   * The triggers that govern a phrase: those of its own sentence alone can, and those that it stands in, as far as they
   * are near: sentences of hundreds of words are no sentences.
   */
  #governing(clause: ClauseRange, firstToken: number, lastToken: number, isName: boolean): readonly Found[] {
    const { first, last } = this.#sentences[clause.sentence]!;
    const from = Math.max(firstToken - FARTHEST, first - LONGEST_TRIGGER);
    const near = beginningWithin(this.#found, from, Math.min(lastToken + FARTHEST, last));
    if (near.length === 0) return near;
    return near.filter((one) => this.#governs(one, clause, firstToken, lastToken, isName));
  }

  readonly #in = ({ first, last }: Pick<ClauseRange, 'first' | 'last'>): readonly Found[] =>
    beginningWithin(this.#found, first, last).filter((one) => one.lastToken <= last);

  #written({ start, end }: Span): string {
    return this.#part.text.slice(start, end);
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
    // "I used to have": the "used" in it is no condition of this thing.
    if (effect === 'other' && found.firstToken <= first && found.lastToken >= last) return true;
    // "Nicht aus" before "aus Eisen": they share a word.
    const before = found.firstToken < first;
    if (side === 'before' ? !before : side === 'after' ? before : false) return false;
    // "No reverse no light", "n'a pas" before "pas de lampe": the phrase is denied by its own word, and once.
    const isShort =
      effect === 'denies' && (reach <= SHORT_DENIAL || NEITHER.test(this.#part.tokens[found.firstToken]!.folded));
    const overlaps = before && found.lastToken >= first;
    if ((isShort || overlaps) && this.#isDenial(first, last)) return false;
    // "Name 12 industrial-style": of the word that it is joined to, and no other.
    if (!before && side === 'after' && this.#isJoinedAway(found, last)) return false;
    const sameClause = found.clause?.first === clause.first;
    if (!sameClause)
      return (
        across === true &&
        found.clause?.sentence === clause.sentence &&
        !(effect === 'other' && before && turnsBack(this.#part, clause)) &&
        !(before && REFUTED.test(this.#part.text.slice(found.end, this.#part.tokens[first]!.start)))
      );
    const [from, to] = before ? [found.lastToken + 1, first] : [last + 1, found.firstToken];
    if (this.#words(from, to) > reach || (reach < 99 && this.#stopped(from, to))) return false;
    return !(effect === 'denies' && reach > SHORT_DENIAL && this.#joined(from, to));
  }

  /** "No reverse", "does not reverse": the phrase is one that denies. */
  #isDenial(first: number, last: number): boolean {
    return this.#part.tokens.slice(first, Math.min(first + 2, last + 1)).some(({ folded }) => OWN_DENIAL.test(folded));
  }

  #isJoinedAway({ firstToken }: Found, last: number): boolean {
    const { tokens } = this.#part;
    const isJoined =
      tokens[firstToken - 1]?.folded === '-' && tokens[firstToken - 1]!.glued && tokens[firstToken]!.glued;
    return isJoined && firstToken - 2 > last;
  }

  /** "No motor and cast iron": whether the denial goes on after the "and" is anybody's guess. */
  #doubtful(found: Found, first: number, last: number): boolean {
    const { effect, reach } = found.value;
    if (this.#words(found.lastToken + 1, first) > 0 && this.#part.tokens.slice(first, last + 1).some(restricts))
      return true;
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

  #isQuoted(token: number): boolean {
    const { start } = this.#part.tokens[token]!;
    const at = firstNotBefore(this.#quoted, ({ end }) => end <= start);
    return at < this.#quoted.length && this.#quoted[at]!.start <= start;
  }

  /** A question claims nothing: "Is it a zigzag?" A name is asked for in its own clause only. */
  #isAsked(clause: ClauseRange, isName: boolean): boolean {
    return this.#askedClauses.has(clause.first) || (!isName && this.#askedSentences.has(clause.sentence));
  }

  /** "Zigzag: no": the answer opens the clause right after the one that ends in a colon. After a dash it is all of it. */
  #answers(found: Found, clause: ClauseRange): boolean {
    const { clauses, tokens } = this.#part;
    const own = clauseIndexAt(this.#part, clause.first);
    let at = own;
    // "Zigzag, free arm: neither".
    while (at - own < MOST_ROWS && clauses[at]?.tokens.at(-1)?.folded === ',') at++;
    if (clauses[at]?.sentence !== clause.sentence) return false;
    const next = clauses[at + 1];
    if (next?.sentence !== clause.sentence) return false;
    if (clauses[at]!.tokens.at(-1)?.folded === ':')
      // "Zigzag, 4 mm, and that's all: no pattern stitches" answers nothing.
      return (
        (at === own || this.#words(found.lastToken + 1, next.last + 1) === 0) &&
        found.firstToken === next.first + Number(/^(?:alles|beides|leider)$/.test(tokens[next.first]!.folded))
      );
    if (at > own) return false;
    const words = next.tokens.filter(({ kind }) => kind !== 'mark');
    if (!/^(?:no|none|nope|nein|kein|keine|keiner|non|aucun|aucune)$/.test(words[0]!.folded)) return false;
    const dashed = [clause.tokens.at(-1), next.tokens[0]].some((token) => token?.folded === '-');
    return dashed && words.length === found.lastToken - found.firstToken + 1 && words[0]!.start === found.start;
  }

  #words(from: number, to: number): number {
    let count = 0;
    for (let i = from; i < to; i++) if (this.#part.tokens[i]!.kind !== 'mark') count++;
    return count;
  }

  /** A termination word between trigger and phrase ends the trigger's reach. */
  #stopped(from: number, to: number): boolean {
    const { tokens } = this.#part;
    // "without case 6.5 kg. high shank": after a short form no sentence need end, but what went before does.
    for (let i = from; i < to; i++)
      if (tokens[i]!.folded === ':' || (tokens[i]!.folded === '.' && !tokens[i + 1]?.glued)) return true;
    return this.#in({ first: from, last: to - 1 }).some((one) => one.value.effect === 'stop');
  }
}

function asks([verb, who]: readonly Token[]): boolean {
  for (const one of ASKS) if (one[0].test(verb!.folded)) return one[1].test(who?.folded ?? '');
  return false;
}

const restricts = ({ folded }: Token): boolean => RESTRICTS.test(folded);
const isQuestionMark = ({ folded }: Token): boolean => folded.charCodeAt(0) === 0x3f;

/** Two denials side by side take each other back. */
function adjacent(denials: readonly Found[]): boolean {
  return denials.some((one) => denials.some((other) => one.lastToken + 1 === other.firstToken));
}

/** The more careful reading wins: a likeness claims least, then a quotation, a guess, a denial. */
function rank(stance: Stance): number {
  return RANKS[stance];
}

const RANKS: Record<Stance, number> = { says: 0, denies: 1, guesses: 2, quotes: 3, likens: 4 };
