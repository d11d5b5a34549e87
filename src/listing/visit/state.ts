import type { StateObject } from '../types';

/** Scripts longer than this, and more of them, are not parsed. */
const SCRIPT_MOST = 3_000_000;
const SCRIPTS_MOST = 60;
const OBJECTS_MOST = 60_000;
const KEPT_MOST = 12;
const DEPTH_MOST = 40;
/** A script is not read oftener than this, though each bracket in it may begin a value. */
const SCANS_MOST = 4;
/** Inside a kept object. */
const INNER_DEPTH = 4;
const INNER_KEYS = 60;
const INNER_ITEMS = 20;
const TEXT_MOST = 8000;

const NAME = /^(?:(?:ad|listing|item)?title|name|headline|subject|tit(?:el|re|[uo]lo))$/i;
const TELLING = /price|amount|preis|prix|precio|prezzo|description|body|text/i;
const MAY_TELL = /"(?:[a-z]*title|name|headline|subject|tit(?:el|re|[uo]lo))\\?"/i;

/** What JSON has outside of texts and brackets. */
const BETWEEN = /[\s\d,:+.eEtrufalsn-]/;

type Plain = { [key: string]: unknown };
const isPlain = (value: unknown): value is Plain =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * Objects in the page's scripts that have the shape of something for sale: a name, and a price or a description beside
 * it. Scripts are read as text, never run. Which of them is the page's own is judged elsewhere.
 */
export function* stateOf(scripts: Iterable<string>): Generator<void, StateObject[]> {
  const found: StateObject[] = [];
  let left = SCRIPTS_MOST;
  for (const text of scripts) {
    if (left-- <= 0 || found.length >= KEPT_MOST) break;
    yield;
    if (text.length > SCRIPT_MOST || !MAY_TELL.test(text)) continue;
    for (const value of valuesIn(text)) search(value, found);
  }
  return found;
}

/** The JSON values of a script: all of it, what it assigns, and texts that it has parsed. */
function valuesIn(text: string): unknown[] {
  const whole = parsed(text);
  if (whole !== undefined) return [whole];
  const values: unknown[] = [];
  for (const [, literal = ''] of text.matchAll(/JSON\.parse\(\s*("(?:[^"\\]|\\.)*")/g)) {
    const inner = parsed(literal);
    if (typeof inner === 'string') values.push(parsed(inner));
  }
  let room = SCANS_MOST * text.length;
  const begins = /[=(,:]\s*(?=[[{]\s*["[{])/g;
  for (let begin = begins.exec(text); begin && values.length < 20 && room > 0; begin = begins.exec(text)) {
    const from = begins.lastIndex;
    const to = endOf(text, from);
    room -= Math.abs(to) - from;
    const value = to > from + 20 ? parsed(text.slice(from, to)) : undefined;
    if (value === undefined) continue;
    values.push(value);
    begins.lastIndex = to;
  }
  return values;
}

/**
 * The end of a bracketed value, outside of texts; minus the place where it stops being JSON. So a script that only looks
 * like it is given up where it says so, and not at its end.
 */
function endOf(text: string, from: number): number {
  let depth = 0;
  let inText = false;
  for (let at = from; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === 34) inText = !inText;
    else if (inText) at += code === 92 ? 1 : 0;
    // Of each pair of brackets and braces one bit differs.
    else if ((code | 32) === 123) depth++;
    else if ((code | 32) === 125) {
      if (--depth === 0) return at + 1;
    } else if (!BETWEEN.test(text[at]!)) return -at;
  }
  return -text.length;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function search(root: unknown, found: StateObject[]): void {
  const waiting: { value: unknown; depth: number; siblings: number }[] = [{ value: root, depth: 0, siblings: 1 }];
  for (let steps = 0; waiting.length > 0 && steps < OBJECTS_MOST && found.length < KEPT_MOST; steps++) {
    const { value, depth, siblings } = waiting.pop()!;
    if (isPlain(value)) {
      const keys = Object.keys(value);
      const isNamed = keys.some((key) => NAME.test(key) && typeof value[key] === 'string' && value[key] !== '');
      if (isNamed && keys.some((key) => TELLING.test(key)))
        found.push({ depth, siblings, json: JSON.stringify(pruned(value, INNER_DEPTH)) });
    }
    if (typeof value !== 'object' || value === null || depth > DEPTH_MOST) continue;
    const isList = Array.isArray(value);
    const inner = Object.values(value).filter((one) => typeof one === 'object' && one !== null);
    // In the order in which they are written, from the end of the list.
    for (const one of inner.reverse())
      waiting.push({ value: one, depth: depth + 1, siblings: isList ? Math.max(siblings, inner.length) : siblings });
  }
}

/** Within bounds: nothing deep, long or wide. */
function pruned(value: unknown, depth: number): unknown {
  if (typeof value === 'string') return value.slice(0, TEXT_MOST);
  if (typeof value !== 'object' || value === null) return value;
  if (depth === 0) return null;
  if (Array.isArray(value)) return value.slice(0, INNER_ITEMS).map((one) => pruned(one, depth - 1));
  return Object.fromEntries(
    Object.entries(value)
      .slice(0, INNER_KEYS)
      .map(([key, one]) => [key, pruned(one, depth - 1)]),
  );
}
