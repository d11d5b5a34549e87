import { tidyLines } from '../tidy';
import { entity } from './entities';
import { wellDecoded } from './mis-decoded';

const ENTITY = /&(#\d{1,7}|#x[\da-f]{1,6}|[a-z][a-z\d]{1,31});/gi;
const TAG = /<(?:!--[\s\S]{0,2000}?--|\/?[a-z][^<>]{0,2000})>/gi;
const BREAKING = /<(?:br|\/?(?:p|div|li|ul|ol|tr|h[1-6]|table|section|article|blockquote))\b[^<>]*>/gi;

function decoded(text: string): string {
  return text.replace(ENTITY, (written, name: string) => {
    if (name.startsWith('#')) {
      const code = /^#x/i.test(name) ? Number.parseInt(name.slice(2), 16) : Number(name.slice(1));
      // Halves of surrogate pairs, NUL and what is beyond Unicode stay as they are written.
      return code > 0 && code <= 0x10ffff && (code < 0xd800 || code > 0xdfff) ? String.fromCodePoint(code) : written;
    }
    return entity(name) ?? entity(name.toLowerCase()) ?? written;
  });
}

/** Words that a template wrote as for an address: "Hand%20crank". */
function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/**
 * A text as a person should read it. Escapes that a template wrote twice ("&amp;amp;") are decoded, at most three times
 * over. `mayHoldTags`: text meant for machines, where tags are mark-up; on a page they are what the seller typed.
 */
export function plain(text: string, mayHoldTags: boolean): string {
  let out = mayHoldTags && text.includes('%20') && !/\s/.test(text.trim()) ? unescaped(text) : text;
  for (let round = 0; round < 3; round++) {
    const before = out;
    if (mayHoldTags && out.includes('<')) out = out.replace(BREAKING, '\n').replace(TAG, '');
    if (out.includes('&')) out = decoded(out);
    if (out === before) break;
  }
  return tidyLines(wellDecoded(out));
}
