import type { Folded } from '../text/fold';

const NEVER_INCHES = new Set('“„«»‟〝〞');
const ALWAYS_INCHES = '″';

/**
 * Where a double quote after a number means inches, by its place in the folded text. In `the "class 15" bobbin` it
 * closes what was opened on the same line, so it does not.
 */
export function inchMarks(text: string, folded: Folded): Set<number> {
  const marks = new Set<number>();
  let isOpen = false;
  for (let at = 0; at < folded.text.length; at++) {
    const character = folded.text[at]!;
    if (character === '\n') isOpen = false;
    if (character !== '"') continue;
    const written = text[folded.toOriginal(at, at + 1).start]!;
    const afterDigit = /\d/.test(folded.text[at - 1] ?? '');
    if (afterDigit && (written === ALWAYS_INCHES || (!isOpen && !NEVER_INCHES.has(written)))) marks.add(at);
    else isOpen = !isOpen;
  }
  return marks;
}
