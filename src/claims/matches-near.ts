import { fold } from '../text/fold';

/**
 * The matches of a pattern in a text, looked for only where one of the words stands with which each of them begins: to
 * try a pattern that minds no case at every letter of an advert takes longer than to search it for all phrases.
 * @param pattern sticky
 * @param cue global; the words, folded
 */
export function matchesNear(text: string, pattern: RegExp, cue: RegExp): RegExpExecArray[] {
  const folded = fold(text);
  const found: RegExpExecArray[] = [];
  let free = 0;
  cue.lastIndex = 0;
  for (let word = cue.exec(folded.text); word; word = cue.exec(folded.text)) {
    // A word may begin inside another: "well over".
    cue.lastIndex = word.index + 1;
    const { start } = folded.toOriginal(word.index, word.index + 1);
    if (start < free) continue;
    pattern.lastIndex = start;
    const match = pattern.exec(text);
    if (!match) continue;
    found.push(match);
    free = start + match[0].length;
  }
  return found;
}
