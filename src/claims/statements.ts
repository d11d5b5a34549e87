import type { Clause } from '../text/clauses';
import type { Token } from '../text/tokens';
import type { WordClass } from './frame/types';
import { english } from './frame/words-en';

/** A clause of so many words is seldom one statement. */
const RUN = 18;
/** Words of a statement at least. */
const LEAST = 3;

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** Behind words of other classes ("told me it has", "and it has", "with it is") it isn't a statement of its own. */
const MAY_END: ReadonlySet<WordClass> = new Set<WordClass>(['plain', 'own', 'uses', 'sells', 'asserts']);
const BINDS = set('convinced assured decided noticed discovered figured a an the how why what cos cause coz on');
const ENDS = set('machine too now yet again well easily nicely happily here');
const OF_IT = set(
  "is was has had does did takes took uses used comes came weighs weighed sews sewed runs ran works worked needs wants goes went makes belongs can will would also just only isn't " +
    "doesn't wasn't hasn't got isnt doesnt wasnt hasnt",
);
const AFTER_ITS = set(
  'a an the got in been not all very really quite so only just too also never still from now made had done works working great lovely good about solid heavy light old',
);
const OF_ME = set("have am had was bought used got think can will would need want never did do just also don't dont");
const ALONE = set("ive im weve theres shes hes it's i've i'm we've there's she's");
/** A verb without a subject goes on about the thing behind a word that can be none, and behind "a" and a noun. */
const VERBS = set('weighs takes uses comes sews runs works needs has does');
const NO_SUBJECT = set('anywhere everywhere fine lovely great today perfectly beautifully smoothly condition order');

/**
 * Clauses that run on without stops, as people write them on a telephone, cut where a new statement begins: "… comes in
 * a suitcase it does zigzag …". English alone, in which it was seen; others have none of these words.
 */
export function statementsIn(clauses: readonly Clause[]): readonly Clause[] {
  return clauses.some(runsOn) ? clauses.flatMap((clause) => (runsOn(clause) ? cut(clause) : [clause])) : clauses;
}

/** Signs before and between them don't count. */
const wordsOf = (tokens: readonly Token[]): number => tokens.filter(({ kind }) => kind !== 'mark').length;

const runsOn = ({ tokens }: Clause): boolean => tokens.length >= RUN && wordsOf(tokens) >= RUN;

function cut({ tokens, sentence, start, end }: Clause): Clause[] {
  const found: Clause[] = [];
  let from = 0;
  for (let at = LEAST; at <= tokens.length; at++) {
    if (at < tokens.length && (at - from < LEAST || !begins(tokens, at) || wordsOf(tokens.slice(from, at)) < LEAST))
      continue;
    const own = tokens.slice(from, at);
    const [begin, stop] = [from === 0 ? start : own[0]!.start, at === tokens.length ? end : own.at(-1)!.end];
    found.push({ sentence, tokens: own, start: begin, end: stop });
    from = at;
  }
  return found;
}

function begins(tokens: readonly Token[], at: number): boolean {
  const { kind, folded } = tokens[at]!;
  const before = tokens[at - 1]!;
  if (kind !== 'word' || !mayEnd(before)) return false;
  if (ALONE.has(folded)) return true;
  const isOfA = /^an?$/.test(tokens[at - 2]?.folded ?? '');
  if (VERBS.has(folded) && (isOfA || NO_SUBJECT.has(before.folded) || ENDS.has(before.folded))) return true;
  const next = tokens[at + 1]?.folded ?? '';
  switch (folded) {
    case 'it':
    case 'she':
      return OF_IT.has(next);
    case 'its':
      return AFTER_ITS.has(next);
    case 'i':
    case 'we':
      return OF_ME.has(next);
    case 'there':
      return next === 'is' || next === 'are';
    case 'the':
      return (next === 'number' || next === 'serial') && /^(?:is|on|number|no)$/.test(tokens[at + 2]?.folded ?? '');
    default:
      return false;
  }
}

function mayEnd({ kind, folded }: Token): boolean {
  if (kind !== 'word') return kind === 'number';
  return ENDS.has(folded) || (MAY_END.has(english.classOf(folded)) && !BINDS.has(folded));
}
