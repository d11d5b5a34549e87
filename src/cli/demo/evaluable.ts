/**
 * A function and its arguments as an expression that a page can evaluate. A transpiler may have wrapped inner functions
 * in its own `__name` helper, which the page doesn't have.
 */
export function expressionOf(what: string | ((...args: never[]) => unknown), args: readonly unknown[] = []): string {
  if (typeof what === 'string') return what;
  return `(() => { const __name = (f) => f; return (${what})(...${JSON.stringify(args)}); })()`;
}
