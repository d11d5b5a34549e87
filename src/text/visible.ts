import { FoldedPlaces } from './folded-places';
import type { Span } from './span';

/** A text without its invisible characters, with the way back to where its parts stand in the original. */
export interface Visible {
  text: string;
  toOriginal(start: number, end: number): Span;
}

const INVISIBLE = /\p{Default_Ignorable_Code_Point}+/gu;

/** What a reader sees of a text: pages part long numbers by characters that take no room, so that lines can break. */
export function visible(text: string): Visible {
  const gaps = [...text.matchAll(INVISIBLE)];
  if (gaps.length === 0) return { text, toOriginal: (start, end) => ({ start, end }) };
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
}
