type Expect = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | ', or end' | 'nothing';

const SPACE = new Set([' ', '\t', '\n', '\r']);
const ESCAPED = new Set([...'"\\/bfnrt']);
const HEX = /^[0-9a-fA-F]$/;
const DIGIT = /^[0-9]$/;
const WORDS = ['true', 'false', 'null'];

/**
 * Where a text stops being JSON (RFC 8259): the UTF-16 offset of the first character that can't stand there, the
 * text's length where it ends too soon, null where it is JSON. Engines word this each in its own way, some without a
 * place; a keeper who wrote a comma too many needs the place.
 */
export function brokenAt(text: string): number | null {
  const open: ('{' | '[')[] = [];
  let expect: Expect = 'value';
  for (let at = 0; at < text.length; ) {
    const character = text[at]!;
    if (SPACE.has(character)) at++;
    else if (expect === 'value' || expect === 'value or ]') {
      if (character === '{' || character === '[') {
        open.push(character);
        expect = character === '{' ? 'key or }' : 'value or ]';
        at++;
      } else if (character === ']' && expect === 'value or ]') {
        open.pop();
        expect = afterValue(open);
        at++;
      } else {
        const end = character === '"' ? stringFrom(text, at) : wordOrNumberFrom(text, at);
        if (end.broken) return end.at;
        expect = afterValue(open);
        at = end.at;
      }
    } else if (expect === 'key' || expect === 'key or }') {
      if (character === '"') {
        const end = stringFrom(text, at);
        if (end.broken) return end.at;
        expect = ':';
        at = end.at;
      } else if (character === '}' && expect === 'key or }') {
        open.pop();
        expect = afterValue(open);
        at++;
      } else return at;
    } else if (expect === ':' && character === ':') {
      expect = 'value';
      at++;
    } else if (expect === ', or end' && character === ',') {
      expect = open.at(-1) === '{' ? 'key' : 'value';
      at++;
    } else if (expect === ', or end' && character === (open.at(-1) === '{' ? '}' : ']')) {
      open.pop();
      expect = afterValue(open);
      at++;
    } else return at;
  }
  return expect === 'nothing' ? null : text.length;
}

function afterValue(open: readonly string[]): Expect {
  return open.length > 0 ? ', or end' : 'nothing';
}

interface End {
  at: number;
  broken: boolean;
}

function stringFrom(text: string, start: number): End {
  for (let at = start + 1; at < text.length; at++) {
    const character = text[at]!;
    if (character === '"') return { at: at + 1, broken: false };
    if (character < ' ') return { at, broken: true };
    if (character !== '\\') continue;
    at++;
    if (text[at] === 'u') {
      for (let digit = 0; digit < 4; digit++) if (!HEX.test(text[++at] ?? '')) return { at, broken: true };
    } else if (!ESCAPED.has(text[at] ?? '')) return { at: Math.min(at, text.length), broken: true };
  }
  return { at: text.length, broken: true };
}

function wordOrNumberFrom(text: string, start: number): End {
  const word = WORDS.find((one) => one[0] === text[start]);
  if (!word) return numberFrom(text, start);
  for (let i = 1; i < word.length; i++) if (text[start + i] !== word[i]) return { at: start + i, broken: true };
  return { at: start + word.length, broken: false };
}

function numberFrom(text: string, start: number): End {
  let at = text[start] === '-' ? start + 1 : start;
  const digits = (): boolean => {
    const from = at;
    while (DIGIT.test(text[at] ?? '')) at++;
    return at > from;
  };
  if (text[at] === '0') at++;
  else if (!digits()) return { at, broken: true };
  if (text[at] === '.') {
    at++;
    if (!digits()) return { at, broken: true };
  }
  if (text[at] === 'e' || text[at] === 'E') {
    at++;
    if (text[at] === '+' || text[at] === '-') at++;
    if (!digits()) return { at, broken: true };
  }
  return { at, broken: false };
}

/** Line and column of an offset, both from 1; a column is a UTF-16 unit. */
export function lineAndColumn(text: string, at: number): { line: number; column: number } {
  let line = 1;
  let start = 0;
  for (let feed = text.indexOf('\n'); feed !== -1 && feed < at; feed = text.indexOf('\n', feed + 1)) {
    line++;
    start = feed + 1;
  }
  return { line, column: at - start + 1 };
}
