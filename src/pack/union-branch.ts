import type * as z from 'zod/mini';

type ZodIssue = z.core.$ZodIssue;
type Branch = readonly ZodIssue[];

/** A key too many, a key missing, a list where an object belongs: most likely another form was meant. */
const ANOTHER_FORM = 10;

/**
 * Which of a union's forms did the writer mean? The one with the least to mend; of equals the one whose issues lie
 * deeper, for it was followed further. Null where the value is of no form at all (a number where a text or an object
 * could stand).
 */
export function nearestBranch(branches: readonly Branch[], value: unknown): Branch | null {
  let nearest: { branch: Branch; cost: number; depth: number } | null = null;
  for (const branch of branches) {
    if (branch.length === 0 || branch.every((issue) => failsAtRoot(issue, value))) continue;
    const cost = costOf(branch, value);
    const depth = branch.reduce((most, issue) => Math.max(most, depthOf(issue, value)), 0);
    if (!nearest || cost < nearest.cost || (cost === nearest.cost && depth > nearest.depth))
      nearest = { branch, cost, depth };
  }
  return nearest?.branch ?? null;
}

/** What stands at a path of the value; undefined where nothing does. Keys that are inherited don't count. */
export function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  let value = data;
  for (const key of path) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

function failsAtRoot(issue: ZodIssue, value: unknown): boolean {
  if (issue.path.length > 0) return false;
  if (issue.code === 'invalid_type') return true;
  return issue.code === 'invalid_union' && nearestBranch(issue.errors, value) === null;
}

function costOf(branch: Branch, value: unknown): number {
  return branch.reduce((sum, issue) => sum + costOfIssue(issue, value), 0);
}

function costOfIssue(issue: ZodIssue, root: unknown): number {
  const value = valueAt(root, issue.path);
  const atRoot = issue.path.length === 0;
  if (issue.code === 'unrecognized_keys') return issue.keys.length * (atRoot ? ANOTHER_FORM : 1);
  if (value === undefined) return issue.path.length === 1 ? ANOTHER_FORM : 1;
  if (issue.code === 'invalid_type') return shapeOf(value) === shapeExpected(issue.expected) ? 1 : ANOTHER_FORM;
  if (issue.code !== 'invalid_union') return 1;
  const inner = nearestBranch(issue.errors, value);
  return inner ? costOf(inner, value) : 1;
}

function depthOf(issue: ZodIssue, root: unknown): number {
  if (issue.code !== 'invalid_union') return issue.path.length;
  const value = valueAt(root, issue.path);
  const inner = nearestBranch(issue.errors, value) ?? [];
  return issue.path.length + inner.reduce((most, one) => Math.max(most, depthOf(one, value)), 0);
}

function shapeOf(value: unknown): 'list' | 'object' | 'single' {
  if (Array.isArray(value)) return 'list';
  return typeof value === 'object' && value !== null ? 'object' : 'single';
}

function shapeExpected(expected: string): 'list' | 'object' | 'single' {
  if (expected === 'array' || expected === 'tuple') return 'list';
  return expected === 'object' || expected === 'record' ? 'object' : 'single';
}
