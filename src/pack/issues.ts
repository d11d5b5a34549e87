import type * as z from 'zod/mini';
import { packTexts as texts } from '../text/catalogue/pack';
import { shown } from './shown';
import { nearestBranch, valueAt } from './union-branch';

/** One thing wrong with a pack: where ("models[3].facts.frame"), what is there, what is expected. */
export interface PackIssue {
  path: string;
  what: string;
  expected: string;
}

type ZodIssue = z.core.$ZodIssue;

/** More than this many issues help nobody. */
export const MOST_ISSUES = 200;

const PLAIN_KEY = /^[A-Za-z0-9_$/-]{1,80}$/;

/** "models[3].facts.frame"; a key of other than letters, digits, "_", "$", "/" and "-" in quotes: `sources["my page"]`. */
export function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const key of path) {
    if (typeof key === 'number') text += `[${key}]`;
    else if (!PLAIN_KEY.test(String(key))) text += `[${shown(String(key))}]`;
    else text += text === '' ? String(key) : `.${String(key)}`;
  }
  return text;
}

/** Zod's issues in this project's words, 200 at most; of a union's forms the one that was most likely meant is told. */
export function fromZod(issues: readonly ZodIssue[], data: unknown): PackIssue[] {
  const out: PackIssue[] = [];
  for (const issue of issues) tell(issue, [], data, out);
  return out;
}

function tell(issue: ZodIssue, base: readonly PropertyKey[], data: unknown, out: PackIssue[]): void {
  const path = [...base, ...issue.path];
  const value = valueAt(data, path);
  const add = (what: string, expected: string): void => {
    if (out.length < MOST_ISSUES) out.push({ path: pathText(path), what, expected });
  };
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    const meant = nearestBranch(issue.errors, value);
    if (meant) for (const inner of meant) tell(inner, path, data, out);
    else add(whatIs(value), formsOf(issue));
  } else if (issue.code === 'unrecognized_keys') {
    for (const key of issue.keys.slice(0, MOST_ISSUES)) add(texts.what.unknownKey(shown(key)), texts.expected.knownKey);
  } else if (issue.code === 'invalid_key') {
    add(texts.what.key(shown(String(path.at(-1)))), expectation(issue));
  } else add(whatIs(value), expectation(issue));
}

/** "a text or a number or an object": the forms of a union, for a value that is of none. */
function formsOf(issue: Extract<ZodIssue, { code: 'invalid_union' }>): string {
  const names = new Set<string>();
  const gather = (branches: readonly (readonly ZodIssue[])[]): void => {
    for (const inner of branches.flat()) {
      if (inner.path.length > 0) continue;
      if (inner.code === 'invalid_type') names.add(texts.kinds[inner.expected] ?? inner.expected);
      if (inner.code === 'invalid_union') gather(inner.errors);
    }
  };
  gather(issue.errors);
  return [...names].join(' or ');
}

function expectation(issue: z.core.$ZodIssueBase & ZodIssue): string {
  // Without a locale of its own Zod says "Invalid input" wherever the schema has no words.
  if (issue.message && issue.message !== 'Invalid input') return issue.message;
  switch (issue.code) {
    case 'invalid_type':
      return texts.kinds[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return texts.expected.oneOf(issue.values.map((value) => JSON.stringify(value)));
    case 'too_small': {
      const least = texts.count(Number(issue.minimum), issue.origin);
      return issue.inclusive ? texts.expected.atLeast(least) : texts.expected.above(least);
    }
    case 'too_big':
      return texts.expected.atMost(texts.count(Number(issue.maximum), issue.origin));
    case 'invalid_key':
      return issue.issues[0] ? expectation(issue.issues[0]) : texts.expected.id;
    default:
      return texts.expected.packObject;
  }
}

/** What stands there, in words. */
export function whatIs(value: unknown): string {
  if (value === undefined) return texts.what.missing;
  if (value === null) return texts.what.is('null');
  if (Array.isArray(value)) return texts.what.is(`${texts.kinds.array} of ${value.length}`);
  if (typeof value === 'object') return texts.what.is('an object');
  return texts.what.is(shown(value as string | number | boolean));
}
