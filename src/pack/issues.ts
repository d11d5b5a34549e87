import type * as z from 'zod/mini';
import { packTexts as texts } from '../text/catalogue/pack';

/** One thing wrong with a pack: where ("models[3].facts.frame"), what is there, what is expected. */
export interface PackIssue {
  path: string;
  what: string;
  expected: string;
}

type ZodIssue = z.core.$ZodIssue;

/** More than this many issues help nobody. */
export const MOST_ISSUES = 200;

export function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const key of path) {
    if (typeof key === 'number') text += `[${key}]`;
    else text += text === '' ? String(key) : `.${String(key)}`;
  }
  return text;
}

/** Zod's issues in this project's words; unions are told by the branch that came furthest. */
export function fromZod(issues: readonly ZodIssue[], data: unknown): PackIssue[] {
  const out: PackIssue[] = [];
  for (const issue of issues) {
    if (out.length >= MOST_ISSUES) break;
    tell(issue, [], data, out);
  }
  return out;
}

function tell(issue: ZodIssue, base: readonly PropertyKey[], data: unknown, out: PackIssue[]): void {
  const path = [...base, ...issue.path];
  const value = valueAt(data, path);
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    const best = furthest(issue.errors);
    if (best) for (const inner of best) tell(inner, path, data, out);
    else out.push({ path: pathText(path), what: whatIs(value), expected: rootTypes(issue) });
    return;
  }
  if (issue.code === 'unrecognized_keys') {
    for (const key of issue.keys)
      out.push({
        path: pathText(path),
        what: texts.what.unknownKey(key.slice(0, 80)),
        expected: texts.expected.knownKey,
      });
    return;
  }
  out.push({ path: pathText(path), what: whatIs(value), expected: expectation(issue) });
}

/** The branch of a union that came furthest, with the fewest issues; null when all fail at the root by their type. */
function furthest(branches: readonly (readonly ZodIssue[])[]): readonly ZodIssue[] | null {
  const open = branches.filter((branch) => branch[0] && !branch.every(failsAtRoot));
  const ranked = open.map((branch) => ({
    branch,
    depth: Math.max(...branch.map(depthOf)),
    count: branch.reduce((sum, issue) => sum + countOf(issue), 0),
  }));
  ranked.sort((a, b) => b.depth - a.depth || a.count - b.count);
  return ranked[0]?.branch ?? null;
}

function failsAtRoot(issue: ZodIssue): boolean {
  if (issue.path.length > 0) return false;
  return issue.code === 'invalid_type' || (issue.code === 'invalid_union' && furthest(issue.errors) === null);
}

function depthOf(issue: ZodIssue): number {
  if (issue.code !== 'invalid_union') return issue.path.length;
  const best = furthest(issue.errors);
  return issue.path.length + (best ? Math.max(...best.map(depthOf)) : 0);
}

function countOf(issue: ZodIssue): number {
  if (issue.code === 'unrecognized_keys') return issue.keys.length;
  if (issue.code !== 'invalid_union') return 1;
  return furthest(issue.errors)?.reduce((sum, inner) => sum + countOf(inner), 0) ?? 1;
}

function rootTypes(issue: Extract<ZodIssue, { code: 'invalid_union' }>): string {
  const names = new Set<string>();
  const gather = (branches: readonly (readonly ZodIssue[])[]): void => {
    for (const branch of branches)
      for (const inner of branch) {
        if (inner.path.length > 0) continue;
        if (inner.code === 'invalid_type') names.add(texts.kinds[inner.expected] ?? inner.expected);
        if (inner.code === 'invalid_union') gather(inner.errors);
      }
  };
  gather(issue.errors);
  return names.size > 0 ? [...names].join(' or ') : texts.expected.packObject;
}

function expectation(issue: ZodIssue): string {
  if (issue.message && issue.message !== 'Invalid input') return issue.message;
  switch (issue.code) {
    case 'invalid_type':
      return texts.kinds[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return texts.expected.oneOf(issue.values.map((value) => JSON.stringify(value)).join(', '));
    case 'too_small':
      return issue.inclusive
        ? texts.expected.atLeast(String(issue.minimum))
        : texts.expected.above(String(issue.minimum));
    case 'too_big':
      return texts.expected.atMost(String(issue.maximum));
    case 'invalid_key':
      return issue.issues[0] ? expectation(issue.issues[0]) : texts.expected.id;
    default:
      return texts.expected.packObject;
  }
}

function whatIs(value: unknown): string {
  if (value === undefined) return texts.what.missing;
  if (value === null) return texts.what.is('null');
  if (Array.isArray(value)) return texts.what.is(`${texts.kinds.array} of ${value.length}`);
  if (typeof value === 'object') return texts.what.is('an object');
  // What can't be seen, or turns the reading direction, is shown as its escape.
  const shown = JSON.stringify(value).replace(
    /[\p{Cc}\p{Cf}]/gu,
    (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
  return texts.what.is(shown.length > 60 ? `${shown.slice(0, 57)}…` : shown);
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  let value = data;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}
