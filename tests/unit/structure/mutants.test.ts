import { describe, expect, it } from 'vitest';
import { mutantsOf, spread } from '../../mutation/mutants';

const changes = (source: string): string[] => mutantsOf(source).map(({ change }) => change);

describe('mutants of a source', () => {
  it('change one thing each, and say where', () => {
    expect(mutantsOf("const a = 1;\nif (x === y && y.some(z)) return 'says';")).toEqual([
      { line: 1, change: '1 -> 3', text: "const a = 3;\nif (x === y && y.some(z)) return 'says';" },
      { line: 2, change: '=== -> !==', text: "const a = 1;\nif (x !== y && y.some(z)) return 'says';" },
      { line: 2, change: '&& -> ||', text: "const a = 1;\nif (x === y || y.some(z)) return 'says';" },
      { line: 2, change: '.some( -> .every(', text: "const a = 1;\nif (x === y && y.every(z)) return 'says';" },
      { line: 2, change: "'says' -> 'guesses'", text: "const a = 1;\nif (x === y && y.some(z)) return 'guesses';" },
    ]);
  });

  it('leave alone what no test can tell apart', () => {
    expect(changes('// a === b')).toEqual([]);
    expect(changes(" * true && 'says'")).toEqual([]);
    expect(changes("import { a } from './true';")).toEqual([]);
    expect(changes("export type A = 'says' | 'denies';")).toEqual([]);
  });

  it('are taken evenly from all of a file', () => {
    const all = Array.from({ length: 100 }, (_, i) => i);
    expect(spread(all, 4)).toEqual([12, 37, 62, 87]);
    expect(spread([1, 2], 4)).toEqual([1, 2]);
  });
});
