import type { Box } from '../types';
import type { Reading } from './reading';

/** Names of the seller's own words. */
export const DESCRIPTION_WORDS =
  /\b(?:(?<!(?:site|blog|forum)-)description|ad-desc|descriptif|beschreibung|anzeigentext|omschrijving|beschrijving|descrizione|descripcion|adtext|ad-text|body-text|ad-body|posting-?body)(?!\w)/;

/** Names of what is shorter than the description, and mostly leads to it. */
const SHORT_WORDS = /\b(?:short|brief|excerpt|teaser|intro)(?!\w)/;

/** In a box that a name calls the short description, or the small one around that box. */
export const isInShort = ({ boxes }: Reading, box: number): boolean =>
  SHORT_WORDS.test(boxes[box]!.hint) || SHORT_WORDS.test(boxes[boxes[box]!.parent]?.hint ?? '');

/** Paragraphs that follow each other under one name are one text. */
const isOfKind = (one: Box, next: Box): boolean =>
  next.parent === one.parent && next.tag === one.tag && next.hint === one.hint;
export const isContinued = (boxes: readonly Box[], at: number): boolean =>
  boxes.some((one, index) => index < at && one.to === boxes[at]!.from && isOfKind(one, boxes[at]!));
export function endOfKind(boxes: readonly Box[], at: number): number {
  let { to } = boxes[at]!;
  for (let next = at + 1; next < boxes.length && boxes[next]!.from <= to; next++)
    if (boxes[next]!.from === to && isOfKind(boxes[at]!, boxes[next]!)) to = boxes[next]!.to;
  return to;
}

/** A label and what it labels, in one line. */
export const COLON = /^([^:]{4,40}):\s+(\S.*)$/s;
/** Where the paragraphs end that follow one with a label in it and have none themselves. */
export function unlabelledAfter({ lines, boxes }: Reading, index: number): number {
  const own = boxes[lines[index]!.box]!;
  let to = index + 1;
  if (own.tag !== 'p' || own.to !== to) return to;
  for (; to < lines.length && isOfKind(own, boxes[lines[to]!.box]!); to++) if (COLON.test(lines[to]!.text)) break;
  return to;
}
