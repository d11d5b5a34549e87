import type { Hit } from '../hits';
import { type ClauseRange, clauseIndexAt, type TextPart } from '../part-text';
import type { Known } from './clause-words';
import { type LooseTurn, looseTurns } from './loose';
import type { LooseWord } from './loose-clause';
import type { LooseWords } from './loose-words';

/** Clauses of the sentence on either side that are looked at. */
const NEIGHBOURS = 4;

/** What a German or French clause makes of the feature found in it. */
export function turnLoosely(
  part: TextPart,
  clause: ClauseRange,
  hit: Hit,
  known: Known,
  denied: boolean,
  lists: LooseWords,
): LooseTurn {
  const joined = joinedNoun(part, hit, known, lists);
  if (joined) return { to: 'other', word: joined };
  const words = looseWords(part, clause, known, lists);
  const first = words.findIndex(({ token }) => token === hit.firstToken);
  const last = words.findLastIndex(({ token }) => token <= hit.lastToken);
  if (first < 0 || last < first) return null;
  const at = clauseIndexAt(part, hit.firstToken);
  const aside = part.clauses
    .slice(Math.max(0, at - NEIGHBOURS), at)
    .filter((one) => one.sentence === clause.sentence)
    .flatMap((one) => looseWords(part, one, known, lists));
  const next = part.clauses[at + 1];
  const goesOn = next?.sentence === clause.sentence ? looseWords(part, next, known, lists) : [];
  return looseTurns({ words, first, last, aside, goesOn, denied }, lists);
}

function looseWords(part: TextPart, clause: ClauseRange, known: Known, lists: LooseWords): LooseWord[] {
  const words: LooseWord[] = [];
  for (let token = clause.first; token <= clause.last; token++) {
    const { kind, folded } = part.tokens[token]!;
    if (kind === 'mark' && folded !== '&' && folded !== '+') continue;
    const is = known.classes.get(token) ?? null;
    for (const piece of lists.split(folded)) words.push({ token, folded: piece, known: is });
  }
  return words;
}

/** "Alu-Kante": of the noun that it is joined to, unless that is the thing. */
function joinedNoun({ tokens }: TextPart, hit: Hit, known: Known, lists: LooseWords): LooseWord | null {
  const [hyphen, noun] = tokens.slice(hit.lastToken + 1, hit.lastToken + 3);
  if (hyphen?.folded !== '-' || !hyphen.glued || noun?.kind !== 'word' || !noun.glued) return null;
  const token = hit.lastToken + 2;
  const is = known.classes.get(token) ?? null;
  const isThing = is !== null && is !== 'part';
  return isThing || lists.own.has(noun.folded) || /(?:maschine|gehause|korpus|kopf|guss)$/.test(noun.folded)
    ? null
    : { token, folded: noun.folded, known: is };
}
