/** Single spaces, none at the ends; no control characters, no halves of a surrogate pair. Line breaks are spaces too. */
export function tidy(text: string): string {
  return text
    .replace(/[\ud800-\udfff]/gu, '\ufffd')
    .replace(/[\u0000-\u001f\u007f-\u009f\s]+/g, ' ')
    .trim();
}

/** The same, but line breaks stay; at most one in a row. */
export function tidyLines(text: string): string {
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
