/*
 * I-JSON (RFC 7493), section 2: no key twice in one object, no half characters (surrogates) and no noncharacters in
 * any string. Numbers beyond a double can't survive the canonical form, which is asked for as well. JSON.parse takes all
 * of these without a word, and of two equal keys the last: a file could show one thing here and another elsewhere.
 */

export type IJsonProblem =
  | { what: 'key-twice'; key: string; at: number }
  | { what: 'half-character' | 'noncharacter'; at: number };

const LONE = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/;
const NONCHARACTER = /\p{Noncharacter_Code_Point}/u;

/**
 * The first thing in a JSON text that I-JSON forbids, with its UTF-16 offset; null where there is none. The text must be
 * JSON: ask JSON.parse first. One pass; an escaped string is decoded before it is judged.
 */
export function iJsonProblem(text: string): IJsonProblem | null {
  /** Keys of the objects that are open; null for a list. */
  const open: (Set<string> | null)[] = [];
  let key = false;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === OPEN_OBJECT || code === OPEN_LIST) {
      key = code === OPEN_OBJECT;
      open.push(key ? new Set() : null);
    } else if (code === CLOSE_OBJECT || code === CLOSE_LIST) open.pop();
    else if (code === COMMA) key = (open.at(-1) ?? null) !== null;
    else if (code === COLON) key = false;
    else if (code === QUOTE) {
      const end = endOfString(text, at);
      const string = decoded(text, at, end);
      if (LONE.test(string)) return { what: 'half-character', at };
      if (NONCHARACTER.test(string)) return { what: 'noncharacter', at };
      const keys = key ? open.at(-1) : null;
      if (keys?.has(string)) return { what: 'key-twice', key: string, at };
      keys?.add(string);
      at = end;
    }
  }
  return null;
}

const [QUOTE, COMMA, COLON, BACKSLASH] = [0x22, 0x2c, 0x3a, 0x5c];
const [OPEN_LIST, CLOSE_LIST, OPEN_OBJECT, CLOSE_OBJECT] = [0x5b, 0x5d, 0x7b, 0x7d];

/** The offset of the closing quote. */
function endOfString(text: string, start: number): number {
  let at = start + 1;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === BACKSLASH) at++;
    else if (code === QUOTE) break;
  }
  return at;
}

function decoded(text: string, start: number, end: number): string {
  const raw = text.slice(start + 1, end);
  return raw.includes('\\') ? (JSON.parse(text.slice(start, end + 1)) as string) : raw;
}
