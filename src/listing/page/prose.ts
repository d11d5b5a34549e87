import { fitted } from '../../text/fitted';
import { CONTROL, LINK, type Line } from '../types';
import { runsOf } from './reading';

const TWO_WORDS = fitted('u')`\p{L}\s+\p{L}`;

/** An item of a list that is written with marks. */
export const LISTED = /^[-–—•*·●]\s/;

/** Lines longer than this are sentences. */
export const PROSE = 25;

/** Prose that could not be a row of facts. */
export const isSentence = (line: Line): boolean =>
  isProse(line) &&
  (line.text.length >= 60 || (/[.!?\u2026"\u201d)]$/.test(line.text) && !/^[^.!?]{0,30}:\s/.test(line.text)));

export function isProse(line: Line): boolean {
  if (line.text.length < PROSE || !TWO_WORDS.test(line.text)) return false;
  let linked = 0;
  for (const { text, flags } of runsOf(line)) if (flags & (LINK | CONTROL)) linked += text.length;
  return linked < line.text.length / 2;
}
