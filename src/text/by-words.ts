import { ANY, BOUND, EDGE, spelledOut, UNSAID } from './spelled-out';

/** One way in which a pattern begins to be found. */
interface Entry {
  /** As it stands between the edges of a text. */
  phrase: string;
  /** The word ends behind it. */
  isWhole: boolean;
  /** The pattern is found wherever this stands. */
  isSure: boolean;
  pattern: number;
}

/** Letters by which a word is looked up of which the beginning alone is known. */
const BEGINNING = 3;
const KNOWN_MOST = 4000;
const LONG = 200;

/** Those that nobody has asked yet, and how many there are of all. */
const waiting: { source: string; pattern: number }[] = [];
let patterns = 0;
const byWord = new Map<string, Entry[]>();
const byBeginning = new Map<string, Entry[]>();
/** The patterns that are found in a text, and as `~pattern` those that may be. */
const known = new Map<string, readonly number[]>();
const { exec } = RegExp.prototype;
const NONE: readonly never[] = [];

/**
 * The same pattern, looked up word by word: a browser takes a millisecond to get a pattern of a hundred words ready, and
 * a page is asked for dozens of such patterns. All of them are one dictionary, and a text is looked through once for all.
 * For patterns whose every way begins at the edge of a word (`\b`) or of the text (`^`) and with a word of ASCII, of
 * three letters where the word goes on in some other way; without flags, for texts in lower case.
 */
export function byWords(pattern: RegExp): RegExp {
  const own = patterns++;
  waiting.push({ source: pattern.source, pattern: own });
  pattern.exec = (text) => {
    const found = foundIn(text);
    return found.includes(own) || found.includes(~own) ? exec.call(pattern, text) : null;
  };
  pattern.test = (text) => {
    const found = foundIn(text);
    return found.includes(own) || (found.includes(~own) && exec.call(pattern, text) !== null);
  };
  return pattern;
}

function foundIn(text: string): readonly number[] {
  if (waiting.length > 0) learn();
  const before = known.get(text);
  if (before) return before;
  const found = lookThrough(text);
  if (text.length > LONG) return found;
  if (known.size >= KNOWN_MOST) known.clear();
  known.set(text, found);
  return found;
}

function lookThrough(text: string): readonly number[] {
  const found: number[] = [];
  let between = '';
  const look = (entries: readonly Entry[] | undefined) => {
    if (entries === undefined) return;
    between ||= EDGE + text + EDGE;
    for (const entry of entries) {
      const told = entry.isSure ? entry.pattern : ~entry.pattern;
      if (!found.includes(told) && stands(between, entry)) found.push(told);
    }
  };
  for (const word of text.match(/\w+/g) ?? NONE) {
    look(byWord.get(word));
    if (word.length >= BEGINNING) look(byBeginning.get(word.slice(0, BEGINNING)));
  }
  return found;
}

const isWord = (character: string): boolean => /\w/.test(character);

function stands(text: string, { phrase, isWhole }: Entry): boolean {
  for (let at = text.indexOf(phrase); at >= 0; at = text.indexOf(phrase, at + 1)) {
    const end = at + phrase.length;
    const begins = phrase[0] === EDGE || !isWord(text[at - 1]!);
    if (begins && (!isWhole || isWord(text[end - 1]!) !== isWord(text[end]!))) return true;
  }
  return false;
}

/** A way that was spelled out: what stands there, its first word, and what comes behind. */
const SPELLED = new RegExp(`^(?:${BOUND}|(?=${EDGE}))(${EDGE}?(\\w+)([^${BOUND}${ANY}${UNSAID}]*))(.*)$`, 's');
const SURE = ['', BOUND, ANY, ANY + BOUND];

/** Puts what waits into the dictionary. @throws where a pattern is none that can be looked up. */
function learn(): void {
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const { source, pattern } = next;
    for (const way of spelledOut(source)) {
      const [, phrase = '', word = '', more, behind = ''] = SPELLED.exec(way) ?? [];
      const isWhole = behind === BOUND;
      const isWord = isWhole || more !== '';
      if (word.length < (isWord ? 1 : BEGINNING)) throw new Error(`Begins with no word: ${way}`);
      const key = isWord ? word : word.slice(0, BEGINNING);
      const entries = isWord ? byWord : byBeginning;
      const same = entries.get(key) ?? [];
      if (same.push({ phrase, isWhole, isSure: SURE.includes(behind), pattern }) === 1) entries.set(key, same);
    }
  }
  known.clear();
}
