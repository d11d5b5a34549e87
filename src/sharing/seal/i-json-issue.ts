import type { PackIssue } from '../../pack/issues';
import { lineAndColumn } from '../../pack/json-place';
import { shown } from '../../pack/shown';
import { sealTexts as texts } from '../../text/catalogue/seal';
import { iJsonProblem } from './i-json';

/** What I-JSON forbids in a JSON text, in words and with its place; null where there is nothing. */
export function iJsonIssue(text: string): PackIssue | null {
  const json = text.startsWith('\ufeff') ? text.slice(1) : text;
  const problem = iJsonProblem(json);
  if (!problem) return null;
  const { line, column } = lineAndColumn(json, problem.at);
  const { iJson } = texts;
  const what = problem.what === 'key-twice' ? iJson['key-twice'](shown(problem.key)) : iJson[problem.what];
  return { path: '', what: iJson.at(what, line, column), expected: iJson.expected };
}
