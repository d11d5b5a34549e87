import { packTexts as texts } from '../text/catalogue/pack';
import { checkPack } from './check/check';
import { fromZod, MOST_ISSUES, type PackIssue, whatIs } from './issues';
import { brokenAt, lineAndColumn } from './json-place';
import { Pack } from './schema/index';
import { shown } from './shown';

export type ParsedPack = { pack: Pack; issues?: undefined } | { pack?: undefined; issues: PackIssue[] };

/** UTF-16 units; a million runs are about 60 million. */
const MOST_UNITS = 200_000_000;
const MOST_DEPTH = 24;

/**
 * Reads a pack from its JSON text.
 * @returns the pack, or all that is wrong with it (200 issues at most). Never throws; nothing is half-taken.
 */
export function parsePack(text: string): ParsedPack {
  if (text.length > MOST_UNITS)
    return refuse('', texts.what.tooLarge(Math.ceil(text.length / 1e6)), texts.expected.size(MOST_UNITS / 1e6));
  const json = text.startsWith('\ufeff') ? text.slice(1) : text;
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch {
    return refuse('', whyNotJson(json), texts.expected.json);
  }
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    return refuse('', whatIs(data), texts.expected.packObject);
  const hostile = hostileShape(data);
  if (hostile) return { issues: [hostile] };
  const read = Pack.safeParse(data);
  if (!read.success) return { issues: fromZod(read.error.issues, data) };
  const issues = checkPack(read.data);
  return issues.length > 0 ? { issues: issues.slice(0, MOST_ISSUES) } : { pack: read.data };
}

function refuse(path: string, what: string, expected: string): ParsedPack {
  return { issues: [{ path, what, expected }] };
}

function whyNotJson(json: string): string {
  const at = brokenAt(json) ?? json.length;
  const { line, column } = lineAndColumn(json, at);
  if (at >= json.length) return texts.what.endsTooSoon(line);
  return texts.what.notJson(line, column, shown(String.fromCodePoint(json.codePointAt(at)!)));
}

/** Nesting that could exhaust the stack, and keys that could reach a prototype, are refused before anything is copied. */
function hostileShape(root: object): PackIssue | null {
  const stack: { value: object; depth: number }[] = [{ value: root, depth: 1 }];
  for (let top = stack.pop(); top; top = stack.pop()) {
    if (top.depth > MOST_DEPTH)
      return { path: '', what: texts.what.tooDeep, expected: texts.expected.depth(MOST_DEPTH) };
    if (!Array.isArray(top.value) && Object.hasOwn(top.value, '__proto__'))
      return { path: '', what: texts.what.unknownKey('"__proto__"'), expected: texts.expected.knownKey };
    const values: unknown[] = Array.isArray(top.value) ? top.value : Object.values(top.value);
    for (const value of values)
      if (typeof value === 'object' && value !== null) stack.push({ value, depth: top.depth + 1 });
  }
  return null;
}
