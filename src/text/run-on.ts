import type { Token } from './tokens';

/** So many words without a stop are seldom one statement. */
const RUN = 18;
/** Words of a statement at least. */
const LEAST = 3;

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** What follows these isn't a statement of its own. */
const BINDS = set(
  'and or that which who whom whose if when whenever because cos cause coz as since until till before after while where although though than like how why what ' +
    'whether once unless think thinks thought say says said saying told tell tells believe believes know knows sure hope hopes hoping reckon reckons guess guessing see ' +
    'means meaning suppose feel wish imagine suspect assume swore swears insisted insists claimed claims convinced promised found discovered noticed figured decided heard read shows showed proves ' +
    'remember remembers assured mentioned states stated asked me him us them is was are were be been has have had having do does did with without of to in on at from by for into onto off about ' +
    "over under round behind not no never nor just only even also then so the a an my his her our their your this these those let make makes made call calls called named plus it it's i we",
);
const OF_IT = set(
  "is was has had does did takes took uses used comes came weighs weighed sews sewed runs ran works worked needs wants goes went makes belonged belongs can will would also just only isn't " +
    "doesn't wasn't hasn't got isnt doesnt wasnt hasnt",
);
const AFTER_ITS = set(
  'a an the got in been not all very really quite so only just too also never still from now made had done works working great lovely good about solid heavy light old',
);
const OF_ME = set("have am had was bought used got think can will would need want never did do just also don't dont");
/** A verb without a subject goes on about the thing behind a word that can be none, and behind "a" and a noun. */
const VERBS = set('weighs takes uses comes sews runs works needs has does');
const NO_SUBJECT = set(
  'anywhere everywhere well fine lovely nicely great too now today perfectly beautifully smoothly condition order easily',
);
const ALONE = set("ive im weve theres shes hes it's i've i'm we've there's she's");

/**
 * Does a text that runs on without stops begin a new statement there: "… in a suitcase it does zigzag"? In English
 * alone, in which it was seen.
 * @param words of the statement before it
 */
export function beginsStatement(tokens: readonly Token[], at: number, words: number): boolean {
  const { kind, folded } = tokens[at]!;
  const before = tokens[at - 1];
  if (words < LEAST || kind !== 'word' || !before || before.kind === 'mark' || BINDS.has(before.folded)) return false;
  if (ALONE.has(folded)) return true;
  if (VERBS.has(folded) && (NO_SUBJECT.has(before.folded) || /^an?$/.test(tokens[at - 2]?.folded ?? ''))) return true;
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

const STOPS = /^(?:[.!?;:,()[\]{}|]|\.\.\.)$/;

/** Where a run of many words without a stop that begins at `at` ends; `at` where there is none. */
export function endOfRun(tokens: readonly Token[], at: number): number {
  let end = at;
  for (; end < tokens.length; end++) {
    const { kind, folded, glued } = tokens[end]!;
    const isInside = glued && tokens[end - 1]?.kind === 'number' && tokens[end + 1]?.glued;
    if (kind === 'break' || (kind === 'mark' && STOPS.test(folded) && !isInside)) break;
  }
  return end - at >= RUN ? end : at;
}
