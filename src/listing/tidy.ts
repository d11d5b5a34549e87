/** White space, control characters or halves of pairs that are not as they should be. */
const UNEVEN = /[^\S ]| {2}|[\u0000-\u001f\u007f-\u009f\ud800-\udfff]/;

/** Single spaces, none at the ends; no control characters, no halves of a surrogate pair. Line breaks are spaces too. */
export function tidy(text: string): string {
  if (!UNEVEN.test(text)) return text.trim();
  return text
    .replace(/[\ud800-\udfff]/gu, '\ufffd')
    .replace(/[\u0000-\u001f\u007f-\u009f\s]+/g, ' ')
    .trim();
}

/** The same with one space left at each end that has any: most texts are so as they stand. */
export const evened = (text: string): string => (UNEVEN.test(text) ? tidy(`.${text}.`).slice(1, -1) : text);

/** The same as `tidy`, but line breaks stay; at most one in a row. */
export function tidyLines(text: string): string {
  if (!UNEVEN.test(text)) return text.trim();
  return text
    .split(/\r\n?|[\n\u2028\u2029]/)
    .map(tidy)
    .filter(Boolean)
    .join('\n');
}

/** At most `most` UTF-16 units, never half a surrogate pair. */
export function cutTo(text: string, most: number): string {
  if (text.length <= most) return text;
  const last = text.charCodeAt(most - 1);
  return text.slice(0, last >= 0xd800 && last < 0xdc00 ? most - 1 : most);
}
