import type { Span } from '../text/span';

/** Pairs of quotation marks. The plain ones must open before a letter and close after one: 10" is ten inches. */
const QUOTED =
  /“[^“”]{3,400}”|„[^„“”]{3,400}[“”]|«[^«»]{3,400}»|(?<=^|[\s(:])"(?=[\p{L}\p{N}])[^"\n]{3,400}(?<=[\p{L}\p{N}.,!?])"(?=$|[\s).,;:!?])/gu;
/** Single ones are apostrophes as well: only behind a word of saying. */
const SINGLY =
  /(?<=\b(?:said|says|saying|called|calls|reads|read|claimed|wrote|described as|listed as|sold as|advertised as):? )['‘](?=\p{L})[^'‘’\n]{3,200}['’](?=$|[\s).,;:!?])/giu;
/** What any of them opens with. */
const OPENS = /[“„«"]/;
const FEWEST_WORDS = 2;

/**
 * Somebody else's words in quotation marks. A single word in them is a name or an emphasis and is left as the seller's
 * own.
 */
export function quotations(text: string): Span[] {
  const all = OPENS.test(text) ? [...text.matchAll(QUOTED)] : [];
  return [...all, ...text.matchAll(SINGLY)]
    .filter((found) => found[0].trim().split(/\s+/).length >= FEWEST_WORDS)
    .map((found) => ({ start: found.index, end: found.index + found[0].length }));
}
