import { isAbbreviation } from './abbreviations';
import { type Token, tokenise } from './tokens';

/** What a token is to a phrase: a key to match, a mark to pass over, or a place no phrase goes across. */
export type Role = 'key' | 'pass' | 'stop';

const PASSED = new Set(['-', '/', "'", '®', 'tm']);
const STOPS = new Set([',', ';', ':', '!', '?', '...', '(', ')', '[', ']', '{', '}', '"']);
const JOINS_NUMBERS = new Set(['.', ',', '/']);

/** The role of the token at `at`; exported for the tests, which hold the index to a naive search. */
export function roleOf(tokens: readonly Token[], at: number): Role {
  const token = tokens[at]!;
  if (token.kind === 'break') return 'stop';
  if (token.kind !== 'mark') return 'key';
  const before = tokens[at - 1];
  const after = tokens[at + 1];
  const glued = token.glued && before !== undefined;
  const betweenNumbers = glued && before.kind === 'number' && after?.kind === 'number' && after.glued;
  if (betweenNumbers && JOINS_NUMBERS.has(token.folded)) return 'key';
  if (PASSED.has(token.folded)) return glued ? 'pass' : 'stop';
  if (token.folded === '.') {
    const short =
      glued && before.kind === 'word' && (before.folded.length === 1 || isAbbreviation(before.folded, after));
    return short ? 'pass' : 'stop';
  }
  return STOPS.has(token.folded) ? 'stop' : 'key';
}

/**
 * May a match begin (step -1) or end (step 1) at this token? "15" is not in "1.15", "3/15" or "15K", nor "K" in
 * "K20", which are other numbers and other names; but "15s" is more than one "15".
 */
export function isWholeAt(tokens: readonly Token[], at: number, step: -1 | 1): boolean {
  const token = tokens[at]!;
  const beside = tokens[at + step];
  if (!beside || !(step === 1 ? beside : token).glued) return true;
  if (token.kind === 'number') {
    if (beside.kind === 'mark') return !(JOINS_NUMBERS.has(beside.folded) && roleOf(tokens, at + step) === 'key');
    return beside.kind === 'number' || (step === 1 && beside.folded === 's');
  }
  return !(token.kind === 'word' && token.folded.length <= 2 && beside.kind === 'number');
}

const SHORTEST_PLURAL_STEM = 4;

/** What the last word of a phrase may be where the text has this word: itself, or the singular of it. */
export function singulars(folded: string): string[] {
  const stems: string[] = [folded];
  for (const ending of ['s', 'es', "'s", "s'"]) {
    if (folded.endsWith(ending) && folded.length - ending.length >= SHORTEST_PLURAL_STEM)
      stems.push(folded.slice(0, -ending.length));
  }
  return stems;
}

/** In keys: bounds the walk from each place in a text, whatever a pack holds. */
const LONGEST_PHRASE = 40;
const FRACTION = /^\d+\/\d+$/;

/** "3/4 size" is written "¾ size" too, where the fraction is one token: both ways are laid into the tree. */
function otherFractions(keys: readonly string[]): string[] {
  const split = keys.flatMap((key) => (FRACTION.test(key) ? [key.split('/')[0]!, '/', key.split('/')[1]!] : [key]));
  if (split.length > keys.length) return split;
  const joined: string[] = [];
  for (const key of keys) {
    const top = joined.at(-2);
    if (joined.at(-1) === '/' && top && FRACTION.test(`${top}/${key}`)) joined.splice(-2, 2, `${top}/${key}`);
    else joined.push(key);
  }
  return joined;
}

/**
 * The ways to write a phrase, each as its keys: words and numbers, and the marks that matter. None for a phrase of
 * mere punctuation, nor for one that is longer than any wording is.
 */
export function waysToWrite(phrase: string): string[][] {
  const tokens = tokenise(phrase);
  if (!tokens.some((token) => token.kind === 'word' || token.kind === 'number')) return [];
  const keys = tokens.filter((_, at) => roleOf(tokens, at) === 'key').map((token) => token.folded);
  if (keys.length === 0 || keys.length > LONGEST_PHRASE) return [];
  const ways = [keys];
  const other = otherFractions(keys);
  if (other.length !== keys.length) ways.push(other);
  ways.push(...otherVariant(keys));
  // "Class 15" is "cl. 15", too.
  if (keys[0] === 'class' && keys.length > 1) ways.push(['cl', ...keys.slice(1)]);
  // "Cream and green" is "cream/green" and "cream & green", too: the stroke is passed over.
  if (keys.length === 3 && AND.test(keys[1]!)) ways.push([keys[0]!, keys[2]!], keys.with(1, '&'), keys.with(1, '+'));
  // "Sews backwards": "it will sew backwards", too.
  const plain = PLAIN_FORMS.get(keys[0]!);
  if (plain && keys.length > 1) ways.push([plain, ...keys.slice(1)]);
  const bent = bentAt(phrase, tokens);
  const at = bent < 0 ? -1 : keys.indexOf(tokens[bent]!.folded);
  if (at >= 0)
    for (const ending of BENT_ENDINGS) {
      const other = keys[at]!.replace(BENT, `$1${ending}`);
      if (other !== keys[at]) ways.push(keys.with(at, other));
    }
  return ways;
}

/** How a variant's name is written: a row's forms mean one another. */
const VARIANTS = [
  'de luxe|deluxe|delux|de lux|dlx',
  'mk ii|mk 2|mkii|mark ii|mark 2|mark two',
  'mk i|mk 1|mki|mark i|mark 1|mark one',
  'mk iii|mk 3|mkiii|mark iii|mark 3|mark three',
  'mk iv|mk 4|mkiv|mark iv|mark 4|mark four',
].map((row) => row.split('|').map((form) => form.split(' ')));
/** Few phrases have one: each of thousands is looked at. */
const OF_VARIANTS = new Set(VARIANTS.flat(2));
const AND = /^(?:and|und|et)$/;

/** "Name de Luxe" is "Name Deluxe", and "Name Mk II" is "Name Mark 2". */
function otherVariant(keys: readonly string[]): string[][] {
  if (!keys.some((key) => OF_VARIANTS.has(key))) return [];
  for (const forms of VARIANTS)
    for (const form of forms)
      for (let at = 0; at + form.length <= keys.length; at++)
        if (form.every((key, i) => keys[at + i] === key))
          return forms
            .filter((other) => other !== form)
            .map((other) => [...keys.slice(0, at), ...other, ...keys.slice(at + form.length)]);
  return [];
}

/** A German adjective before its noun, which has another ending behind "der", "mit" or alone. */
const BENT = /^(.{5,})(?:e[rsmn]?)$/;
const BENT_ENDINGS = ['e', 'er', 'es', 'em', 'en'];

/** "eingebauter Motor": the noun's capital tells it; -1 where there is none. */
function bentAt(phrase: string, tokens: readonly Token[]): number {
  return tokens.findIndex(({ kind, folded, start }, at) => {
    const noun = tokens[at + 1];
    return (
      kind === 'word' &&
      noun?.kind === 'word' &&
      BENT.test(folded) &&
      /\p{Ll}/u.test(phrase[start]!) &&
      /\p{Lu}/u.test(phrase[noun.start]!) &&
      noun.folded.length > 2
    );
  });
}

const PLAIN_FORMS = new Map(
  Object.entries({
    sews: 'sew',
    takes: 'take',
    goes: 'go',
    loads: 'load',
    drops: 'drop',
    runs: 'run',
    uses: 'use',
    does: 'do',
    folds: 'fold',
    prints: 'print',
  }),
);
