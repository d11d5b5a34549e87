import type { Hit } from '../hits';
import { type ClauseRange, hasNameCapital, type TextPart, tokenAt } from '../part-text';
import type { NameClaim } from '../reading';
import type { Lexicon, Word, WordClass } from './types';

/** What the packs know of a place in the text, as far as it matters to a clause's frame. */
export interface Known {
  /** Token -> what a pack's phrase or name makes of it. */
  classes: ReadonlyMap<number, WordClass>;
  /** Words that packs use of features and their labels: what the thing consists of. */
  vocabulary: ReadonlySet<string>;
}

/** The words of a clause, each with what it does there. */
export function wordsOf(part: TextPart, clause: ClauseRange, lexicon: Lexicon, known: Known): Word[] {
  const words: Word[] = [];
  for (let token = clause.first; token <= clause.last; token++) {
    const { kind, folded } = part.tokens[token]!;
    if (kind === 'mark') {
      if (folded === '&' || folded === '+') words.push({ token, folded, is: 'joins' });
      continue;
    }
    for (const piece of lexicon.split(folded)) {
      const is = saysLittle(part, token) ? 'adverb' : classOf(piece, token);
      // "The handle", "a switch", "my use": a noun, not the verb that is written so.
      words.push({ token, folded: piece, is: isNounHere(words.at(-1), is, piece) ? 'plain' : is });
    }
  }
  return words;

  function classOf(folded: string, token: number): WordClass {
    // "Sought after", "sought-after".
    if (folded === 'after' && /^sought$/.test(words.at(-1)?.folded ?? '')) return 'adverb';
    const own = lexicon.classOf(folded);
    // "Hit and miss" as a pack's phrase: no verb.
    if (NAMED.has(own) && known.classes.get(token) === 'feature') return 'feature';
    if (own !== 'plain' && own !== 'asserts' && own !== 'own') return own;
    const here = known.classes.get(token);
    if (here) return here;
    return own === 'plain' && known.vocabulary.has(folded) ? 'own' : own;
  }
}

/** "Brand new", "built like a tank", "if you push the lever it sews backwards": no speech, likeness or condition. */
function saysLittle({ tokens }: TextPart, at: number): boolean {
  const [word, next, third] = tokens.slice(at, at + 3).map(({ folded }) => folded);
  if (word === 'brand') return next === 'new';
  if (word === 'where') return at > 0 && SORT.test(tokens[at - 1]!.folded);
  if (word === 'like') return next === 'a' && third !== undefined && PRAISES.test(third);
  return word === 'if' && next === 'you' && third !== undefined && OPERATES.test(third);
}

/** "The type where the bobbin drops in." */
const SORT = /^(?:type|sort|kind|one|version|model)$/;
const PRAISES = /^(?:tank|dream|train|charm|rocket|horse|brick|battleship)$/;
const OPERATES = /^(?:push|press|pull|turn|flip|switch|move|lower|raise|drop|flick|twist|can|like|want|wish|prefer)$/;

const NAMED: ReadonlySet<WordClass> = new Set<WordClass>(['deals', 'speech', 'thinks', 'sells']);

function isNounHere(before: Word | undefined, is: WordClass, folded: string): boolean {
  const isVerb = is === 'asserts' || is === 'takes' || is === 'uses' || /^(?:market|brand)s?$/.test(folded);
  return (
    isVerb && (before?.is === 'article' || before?.is === 'possessive') && !/^(?:that|this|it)$/.test(before.folded)
  );
}

/** Token -> class, for the phrases and names found in one text. */
export function classesOf(
  part: TextPart,
  hits: readonly Hit[],
  names: readonly NameClaim[],
  called: ReadonlySet<string> = new Set(),
): Map<number, WordClass> {
  const classes = new Map<number, WordClass>();
  part.tokens.forEach((token, at) => {
    if (called.has(token.folded) && hasNameCapital(part, at)) classes.set(at, 'own');
  });
  const lay = (hit: { firstToken: number; lastToken: number }, is: WordClass): void => {
    for (let token = hit.firstToken; token <= hit.lastToken; token++) classes.set(token, is);
  };
  for (const hit of hits) if (hit.value.kind === 'value' || hit.value.kind === 'wording') lay(hit, 'feature');
  for (const hit of hits) if (hit.value.kind === 'part') lay(hit, 'part');
  for (const hit of hits) if (hit.value.kind === 'thing') lay(hit, 'own');
  for (const { field, start, end } of names)
    if (field === part.field) lay({ firstToken: tokenAt(part, start), lastToken: tokenAt(part, end - 1) }, 'own');
  return classes;
}
