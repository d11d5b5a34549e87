import type { Knowledge } from '../../pack/knowledge';
import { labelWords } from '../attribute-words';
import type { Hit } from '../hits';
import { languagesOf } from '../language';
import { ofAnother } from '../other-thing';
import { type ClauseRange, clauseAt, type TextPart } from '../part-text';
import type { NameClaim } from '../reading';
import type { Stance, Stanced } from '../types';
import { isAside } from './aside';
import type { FramedLanguage } from './aside-words';
import { classesOf, type Known } from './clause-words';
import { turnInEnglish } from './in-english';
import { turnLoosely } from './in-loose';
import { french, german, type LooseWords } from './loose-words';
import { retracted } from './retraction';
import { english } from './words-en';

/** Tokens on either side: a clause of hundreds of words is no clause. */
const WINDOW = 60;

/** The claims of one text, each turned where its clause doesn't assert it of the thing on sale. */
export class Framer {
  readonly #part: TextPart;
  readonly #language: FramedLanguage | null;
  readonly #known: Known;

  /**
   * @param languages those that the advert may be read in
   * @param called words by which the title calls the thing and that no pack knows, folded
   */
  constructor(
    part: TextPart,
    hits: readonly Hit[],
    names: readonly NameClaim[],
    vocabulary: ReadonlySet<string>,
    languages: ReadonlySet<string>,
    called: ReadonlySet<string>,
  ) {
    this.#part = part;
    this.#language = framedLanguage(part, languages);
    this.#known = { classes: classesOf(part, hits, names, called), vocabulary };
  }

  /** A feature, the thing or a name stands there. */
  isKnown(token: number): boolean {
    const is = this.#known.classes.get(token);
    return is === 'feature' || is === 'own';
  }

  turn<C extends Stanced>(claim: C, hit: Hit): C {
    const clause = clauseAt(this.#part, hit.firstToken);
    if (!clause || claim.subject === 'other' || (claim.stance !== 'says' && claim.stance !== 'denies')) return claim;
    const turn = this.#turn(clause, hit, claim.stance === 'denies');
    if (turn) {
      const { start, end } = this.#part.tokens[turn.word.token]!;
      const written = this.#part.text.slice(start, end);
      return turn.to === 'other' ? ofAnother(claim, 'frame', written) : turned(claim, turn.to, 'frame', written);
    }
    const taken = retracted(this.#part, clause, hit);
    if (taken !== null) return turned(claim, 'quotes', 'retracted', taken);
    return this.#language && isAside(this.#part, clause, hit, this.#known, this.#language)
      ? { ...claim, aside: true }
      : claim;
  }

  /** When or where something was made: is it told only in passing? */
  isMakingTold(firstToken: number, lastToken: number): boolean {
    const clause = clauseAt(this.#part, firstToken);
    return (
      clause !== null &&
      this.#language !== null &&
      isAside(this.#part, clause, { firstToken, lastToken }, this.#known, this.#language, 'making')
    );
  }

  #turn(whole: ClauseRange, hit: Hit, denied: boolean) {
    const { sentence, tokens, start, end } = whole;
    const first = Math.max(whole.first, hit.firstToken - WINDOW);
    const last = Math.min(whole.last, hit.lastToken + WINDOW);
    const clause = { sentence, tokens, start, end, first, last };
    if (this.#language === null) return null;
    if (this.#language === 'en') return turnInEnglish(this.#part, clause, hit, this.#known, denied);
    return turnLoosely(this.#part, clause, hit, this.#known, denied, this.#language === 'de' ? german : french);
  }
}

function turned<C extends Stanced>(claim: C, stance: Stance, rule: 'frame' | 'retracted', word: string): C {
  return { ...claim, stance, trigger: word, why: [...(claim.why ?? []), { rule, makes: stance, word }] };
}

const READ: readonly FramedLanguage[] = ['en', 'de', 'fr'];

const knows = ({ persons, own, passed, uses, apart, not }: LooseWords, word: string): boolean =>
  persons.has(word) || own.has(word) || passed.has(word) || uses.test(word) || apart.test(word) || not.test(word);
const KNOWS: Record<FramedLanguage, (word: string) => boolean> = {
  en: (word) => english.classOf(word) !== 'plain',
  de: (word) => knows(german, word),
  fr: (word) => knows(french, word),
};

/** The language that knows most of a text's words, English where two do. */
function likeliest({ tokens }: TextPart): FramedLanguage {
  const words = tokens.filter(({ kind }) => kind === 'word');
  const known = (one: FramedLanguage): number => words.filter(({ folded }) => KNOWS[one](folded)).length;
  return READ.reduce((best, one) => (known(one) > known(best) ? one : best));
}

/** The language in which a text's clauses are read: its own, else the page's; null where that isn't one alone. */
function framedLanguage(part: TextPart, languages: ReadonlySet<string>): FramedLanguage | null {
  const own = languagesOf(null, [part]);
  // Of a few words nothing tells: their own are looked for.
  const few = part.field === 'description' && languages.size === 0 ? new Set([likeliest(part)]) : languages;
  const told = own.size > 0 ? own : few;
  // A description in several is read in one: unread clauses would all be taken for plain claims.
  const [language, more] = told.size > 1 && part.field === 'description' ? READ.filter((one) => told.has(one)) : told;
  const isOne = more === undefined || part.field === 'description';
  return isOne && (language === 'en' || language === 'de' || language === 'fr') ? language : null;
}

const vocabularies = new WeakMap<Knowledge, ReadonlySet<string>>();

/** The words by which packs call features: what a thing consists of. */
export function vocabularyOf(knowledge: Knowledge): ReadonlySet<string> {
  const there = vocabularies.get(knowledge);
  if (there) return there;
  const made = new Set([...knowledge.attributes.values()].flatMap((one) => [...labelWords(one)]));
  vocabularies.set(knowledge, made);
  return made;
}
