import { characterKind, IGNORABLE } from './characters';
import { FoldedPlaces } from './folded-places';
import { remembering } from './remember';
import type { Span } from './span';

/** A text without its invisible characters, with the way back to where its parts stand in the original. */
export interface Visible {
  text: string;
  toOriginal(start: number, end: number): Span;
}

const INVISIBLE = /\p{Default_Ignorable_Code_Point}+/gu;

/** What a reader sees of a text: pages part long numbers by characters that take no room, so that lines can break. */
export const visible = remembering((text: string): Visible => {
  if (!mayHide(text)) return { text, toOriginal: (start, end) => ({ start, end }) };
  const gaps = [...text.matchAll(INVISIBLE)];
  const places = new FoldedPlaces();
  let seen = '';
  let from = 0;
  const keep = (to: number): void => {
    if (to > from) places.addRun(from, to - from);
    seen += text.slice(from, to);
  };
  for (const gap of gaps) {
    keep(gap.index);
    from = gap.index + gap[0].length;
  }
  keep(text.length);
  return { text: seen, toOriginal: (start, end) => places.toOriginal(start, end, text.length) };
});

/** Of the characters beyond the basic plane that take no room, the halves alone tell nothing. */
function mayHide(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code > 0x7f && ((code >= 0xd800 && code <= 0xdfff) || characterKind(code) === IGNORABLE)) return true;
  }
  return false;
}
