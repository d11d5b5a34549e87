import type { Knowledge } from '../../pack/knowledge';
import { labelWords } from '../attribute-words';
import type { Hit } from '../hits';
import { ofAnother } from '../other-thing';
import { clauseAt, type TextPart } from '../part-text';
import type { Stanced } from '../types';
import { classesOf, type Known, wordsOf } from './clause-words';
import { frameTurns } from './english';
import { retracted } from './retraction';
import type { Word } from './types';
import { english } from './words-en';

/** Tokens on either side: a clause of hundreds of words is no clause. */
const WINDOW = 60;

/** Claims of one text, each turned where its clause doesn't assert it of the thing on sale. */
export class Framer {
  readonly #part: TextPart;
  readonly #known: Known;

  constructor(part: TextPart, hits: readonly Hit[], vocabulary: ReadonlySet<string>) {
    this.#part = part;
    this.#known = { classes: classesOf(hits), vocabulary };
  }

  turn<C extends Stanced>(claim: C, hit: Hit): C {
    const clause = clauseAt(this.#part, hit.firstToken);
    if (!clause || claim.subject === 'other' || (claim.stance !== 'says' && claim.stance !== 'denies')) return claim;
    const window = {
      ...clause,
      first: Math.max(clause.first, hit.firstToken - WINDOW),
      last: Math.min(clause.last, hit.lastToken + WINDOW),
    };
    const words = wordsOf(this.#part, window, english, this.#known);
    const first = words.findIndex(({ token }) => token === hit.firstToken);
    let last = words.findLastIndex(({ token }) => token === hit.lastToken);
    if (first < 0 || last < first) return claim;
    let isOfThing = false;
    while (
      words[last + 1] &&
      ['own', 'feature'].includes(words[last + 1]!.is) &&
      words[last + 1]!.token - words[last]!.token <= 2
    ) {
      last++;
      isOfThing ||= this.#isThing(words[last]!);
    }
    isOfThing ||= words.slice(first, last + 1).some((word) => this.#isThing(word));
    const turn = frameTurns({
      words,
      first,
      last,
      isOfThing,
      denied: claim.stance === 'denies',
      afterPerson: this.#afterPerson(clause.first),
    });
    if (turn) {
      const written = this.#written(turn.word);
      return turn.to === 'other'
        ? ofAnother(claim, 'frame', written)
        : {
            ...claim,
            stance: turn.to,
            trigger: written,
            why: [...(claim.why ?? []), { rule: 'frame', makes: turn.to, word: written }],
          };
    }
    const taken = retracted(this.#part, clause, hit);
    return taken === null
      ? claim
      : {
          ...claim,
          stance: 'quotes',
          trigger: taken,
          why: [...(claim.why ?? []), { rule: 'retracted', makes: 'quotes', word: taken }],
        };
  }

  #isThing({ folded }: Word): boolean {
    return /^(?:machine|one|model|version)s?$/.test(folded);
  }

  #written({ token }: Word): string {
    const { start, end } = this.#part.tokens[token]!;
    return this.#part.text.slice(start, end);
  }

  /** A person is spoken of shortly before: "she" may be that one. */
  #afterPerson(token: number): boolean {
    for (let i = token - 1; i >= 0 && token - i <= WINDOW; i--) {
      const { folded } = this.#part.tokens[i]!;
      if (english.classOf(folded) === 'person' && folded.length > 3) return true;
    }
    return false;
  }
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
