import { describe, expect, it } from 'vitest';
import { floorProblems, mirrorProblems } from './floors';
import { filesBelow } from './source-files';

const sources = filesBelow(['src', 'entrypoints'], ['.ts', '.tsx']);

describe('imports run downwards', () => {
  it('in every file of src and entrypoints', () => {
    expect(sources.length).toBeGreaterThan(20);
    expect(floorProblems(sources)).toEqual([]);
  });

  const bad: [string, string, string][] = [
    ['an import from a floor above', 'src/text/a.ts', "import { b } from '../pack/b';"],
    ['a type from a floor above', 'src/text/a.ts', "import type { B } from '../audit/types';"],
    ['a type named in place', 'src/text/a.ts', "export type A = import('../audit/types').Audit;"],
    ['a dynamic import from above', 'src/keep/a.ts', "export const a = () => import('../view/b');"],
    ['an import between siblings', 'src/price/a.ts', "import { b } from '../identify/b';"],
    ['an import from entrypoints', 'src/view/a.tsx', "import { b } from '../../entrypoints/reader';"],
    ['a way around through the engine', 'src/session/a.ts', "import { audit } from '../engine';"],
    ['Node in the core', 'src/listing/a.ts', "import { readFileSync } from 'node:fs';"],
    ['a re-export', 'src/pack/index.ts', "export { b } from './b';"],
    ['a re-export in two steps', 'src/pack/a.ts', "import { b } from './b';\nexport { b };"],
    ['a file that stands in no room', 'src/helpers.ts', 'export const a = 1;'],
    ['a room that the layout does not know', 'src/utils/a.ts', 'export const a = 1;'],
    ['an engine that opens onto storage', 'src/engine.ts', "export { a } from './keep/a';"],
  ];
  it.each(bad)('finds %s', (_what, path, text) => {
    expect(floorProblems([{ path, text }])).toHaveLength(1);
  });

  const good: [string, string, string][] = [
    ['its own folder', 'src/audit/checks/a.ts', "import { b } from '../b';"],
    ['a floor below', 'src/audit/a.ts', "import { b } from '../text/b';"],
    ['a package', 'src/pack/a.ts', "import * as z from 'zod/mini';"],
    ['the engine, in the command line', 'src/cli/a.ts', "import { audit } from '../engine';"],
  ];
  it.each(good)('allows %s', (_what, path, text) => {
    expect(floorProblems([{ path, text }])).toEqual([]);
  });
});

describe('unit tests mirror src', () => {
  it('file by file', () => {
    const tests = filesBelow(['tests/unit'], ['.ts', '.tsx']).map((file) => file.path);
    expect(
      mirrorProblems(
        tests,
        sources.map((file) => file.path),
      ),
    ).toEqual([]);
  });

  it('finds a test of nothing', () => {
    expect(mirrorProblems(['tests/unit/text/gone.test.ts'], ['src/text/fold.ts'])).toHaveLength(1);
    expect(mirrorProblems(['tests/unit/text/fold.long.test.ts'], ['src/text/fold.ts'])).toEqual([]);
    expect(mirrorProblems(['tests/unit/text.test.ts'], ['src/text/fold.ts'])).toEqual([]);
  });
});
