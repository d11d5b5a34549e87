/** UTF-16 units of a seal's line: longer than the longest history. */
export const LONGEST_LINE = 100_000;

/** Does a file mean to be sealed, whether or not its seal can be read? Its first line is an object with a seal. */
export function isSealed(text: string): boolean {
  const end = text.indexOf('\n');
  if (end < 0 || end > LONGEST_LINE) return false;
  const line = text.slice(0, end);
  if (!/^\s*\{.*"seal"/.test(line)) return false;
  try {
    const head: unknown = JSON.parse(line);
    return typeof head === 'object' && head !== null && 'seal' in head && !('schema' in head);
  } catch {
    // A plain pack's first line is JSON as a whole, or it is "{" or so: only a damaged seal has all this in it.
    return /"signature"|"key"/.test(line);
  }
}
