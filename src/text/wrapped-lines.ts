import type { Token } from './tokens';

/** No sentence ends in one of these. Folded; English, German, French. */
const LEADS_ON = new Set(
  (
    'a an the and or nor of to with without from by at is are was were has have had its my your our his this as than very quite so which who can could will would been ' +
    "it class number about into onto don't doesn't isn't " +
    'der die das den dem des ein eine einen einem einer eines und oder mit ohne von vom zum zur fur im ist sind war hat kein keine sehr klasse ' +
    "le la les l' un une des du de d' et ou avec sans pour par dans est sont ma mon sa son tres classe"
  ).split(' '),
);
/** "There is no": with another word before it a row may say so ("reverse: no"). */
const BEFORE_NO = /^(?:is|are|has|have|had|with|got|there's|was|were)$/;

/** A line that was cut for its length, in the middle of a sentence: the next one goes on in small letters. */
function isCut(text: string, tokens: readonly Token[], at: number): boolean {
  const [before, breaks, after] = [tokens[at - 1], tokens[at], tokens[at + 1]];
  if (!before || !breaks || !after || before.kind !== 'word') return false;
  if (/\n\s*\n/.test(text.slice(before.end, after.start))) return false;
  const goesOn = after.kind === 'number' || (after.kind === 'word' && /^\p{Ll}/u.test(text.slice(after.start)));
  if (!goesOn) return false;
  return before.folded === 'no' ? BEFORE_NO.test(tokens[at - 2]?.folded ?? '') : LEADS_ON.has(before.folded);
}

/** The tokens of a text whose lines were cut for their length, without the breaks that part no sentences. */
export function unwrapped(text: string, tokens: readonly Token[]): readonly Token[] {
  return tokens.some(({ kind }) => kind === 'break')
    ? tokens.filter(({ kind }, at) => kind !== 'break' || !isCut(text, tokens, at))
    : tokens;
}
