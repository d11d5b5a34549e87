/** Is a JSON value nested no deeper than so many levels? Asks without recursion, so that nothing can exhaust the stack. */
export function isShallow(value: unknown, most: number): boolean {
  const waiting: [unknown, number][] = [[value, 1]];
  for (let top = waiting.pop(); top; top = waiting.pop()) {
    const [one, depth] = top;
    if (typeof one !== 'object' || one === null) continue;
    if (depth > most) return false;
    for (const inner of Object.values(one)) waiting.push([inner, depth + 1]);
  }
  return true;
}
