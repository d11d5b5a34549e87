import { wellDecoded } from '../listing/decide/mis-decoded';

/** Where in a text as it was written a stretch of it stands as it was read. */
export interface ReadPlaces {
  /** @param start, end offsets into the text as read, end exclusive. @returns the same into the text as written */
  span(start: number, end: number): { start: number; end: number };
}

const SPACE = /[\s\u0000-\u001f\u007f-\u009f]/;
const SPACES = /(?:[\s\u0000-\u001f\u007f-\u009f]|&(?:nbsp|ensp|emsp|thinsp|#160|#32|#xa0|#x20);)*/iy;
/** An escape, also one that was escaped again ("&amp;nbsp;"). */
const ESCAPE = /&(?:amp;)*(?:#\d{1,7}|#x[\da-f]{1,6}|[a-z][a-z\d]{1,31});/iy;

/**
 * Finds its way back from a text as the reader tidied it (single spaces, no empty lines, escapes decoded, cut at its
 * limit, wrongly decoded letters mended) to the text as it was written.
 * @returns null where the two can't be brought together: nothing is marked then, rather than the wrong words
 */
export function readPlaces(written: string, read: string): ReadPlaces | null {
  const starts = new Int32Array(read.length);
  const ends = new Int32Array(read.length);
  let at = skipSpace(written, 0);
  for (let i = 0; i < read.length; i++) {
    const from = at;
    const mended = mendedAt(written, at, read, i);
    if (mended) {
      at += mended.written;
      starts.fill(from, i, i + mended.read);
      ends.fill(at, i, i + mended.read);
      i += mended.read - 1;
      continue;
    }
    const character = read[i]!;
    const escaped = written[at] === '&' ? matchAt(ESCAPE, written, at) : '';
    if (SPACE.test(character)) at = skipSpace(written, at);
    // An escape that nobody knows is read as it is written.
    else if (escaped !== '' && !read.startsWith(escaped, i)) at += escaped.length;
    else if (written[at] === character || (character === '\ufffd' && at < written.length)) at += 1;
    if (at === from) return null;
    starts[i] = from;
    ends[i] = at;
  }
  return {
    span: (start, end) =>
      end > start && end <= read.length ? { start: starts[start]!, end: ends[end - 1]! } : { start: 0, end: 0 },
  };
}

/** Letters that were mended, right here: how many units they have as written and as read; null where none were. */
function mendedAt(written: string, at: number, read: string, i: number): { written: number; read: number } | null {
  for (let units = 2; units <= 4; units += 1) {
    const letters = written.slice(at, at + units);
    const mended = wellDecoded(letters);
    // One character, or two halves of one.
    if (mended !== letters && [...mended].length === 1 && read.startsWith(mended, i))
      return { written: units, read: mended.length };
  }
  return null;
}

function skipSpace(text: string, from: number): number {
  return from + matchAt(SPACES, text, from).length;
}

/** What a sticky pattern finds right here, "" for nothing. */
function matchAt(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? '';
}
