/** Everything that is not seen but may move a cursor, colour a terminal or turn the reading direction. */
const UNSEEN = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]/g;

const escaped = (c: string) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`;

/** A text of unknown origin, safe on a terminal: what can't be seen is shown as its escape. Line breaks stay. */
export function printable(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(UNSEEN, escaped);
}

/** JSON that a terminal can show as well: the same value, the unseen escaped as JSON allows. */
export function printableJson(value: unknown, indent = 0): string {
  return JSON.stringify(value, null, indent).replace(UNSEEN, escaped);
}
