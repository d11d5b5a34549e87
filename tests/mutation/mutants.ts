/** One change to a source file that some test ought to notice. */
export interface Mutant {
  /** From 1. */
  line: number;
  /** What was changed, for people: "=== -> !==". */
  change: string;
  /** The whole file with the change. */
  text: string;
}

/** What is looked for in a line, and what stands there instead. */
const CHANGES: readonly (readonly [RegExp, (found: string) => string])[] = [
  [/ === /g, () => ' !== '],
  [/ !== /g, () => ' === '],
  [/ < /g, () => ' <= '],
  [/ <= /g, () => ' < '],
  [/ > /g, () => ' >= '],
  [/ >= /g, () => ' > '],
  [/ && /g, () => ' || '],
  [/ \|\| /g, () => ' && '],
  [/ \?\? null\b/g, () => ' && null'],
  [/(?<=[(&|=] ?)!(?=[\w(])/g, () => ''],
  [/\.some\(/g, () => '.every('],
  [/\.every\(/g, () => '.some('],
  [/ \+ 1\b/g, () => ' - 1'],
  [/ - 1\b/g, () => ' + 1'],
  [/\btrue\b/g, () => 'false'],
  [/\bfalse\b/g, () => 'true'],
  [/(?<== |\? |: )\d+(?:\.\d+)?\b/g, (found) => String(Number(found) * 2 + 1)],
  [/'(?:disproved|unproved|caution|agrees)'/g, (found) => (found === "'caution'" ? "'agrees'" : "'caution'")],
  [/'(?:says|denies|guesses|likens|quotes)'/g, (found) => (found === "'says'" ? "'guesses'" : "'says'")],
  [/'other'/g, () => "'this'"],
];

/** Lines that no test can tell apart: comments, imports, types. */
const NO_CODE =
  /^\s*(?:\/\/|\/?\*|import |export type |export interface |interface |type |\| )|^\s*(?:readonly )?\w+\??: [\w'| [\]<>,.]+;$/;

/** All mutants of a file, in order. */
export function mutantsOf(source: string): Mutant[] {
  const lines = source.split('\n');
  return lines.flatMap((written, at) => {
    if (NO_CODE.test(written)) return [];
    return CHANGES.flatMap(([pattern, instead]) =>
      [...written.matchAll(pattern)].map((found) => {
        const put = instead(found[0]);
        const line = written.slice(0, found.index) + put + written.slice(found.index + found[0].length);
        return {
          line: at + 1,
          change: `${found[0].trim()} -> ${put.trim() || '(nothing)'}`,
          text: lines.with(at, line).join('\n'),
        };
      }),
    );
  });
}

/** So many of a list, spread evenly over it. */
export function spread<T>(list: readonly T[], most: number): T[] {
  if (list.length <= most) return [...list];
  return Array.from({ length: most }, (_, i) => list[Math.floor(((i + 0.5) * list.length) / most)]!);
}
