import { describe, expect, it } from 'vitest';
import { committedPaths } from './source-files';

const FILES = [
  'README.md',
  'DEVELOPERS.md',
  'LICENSE',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'wxt.config.ts',
];
const FOLDERS = ['entrypoints', 'src', 'tests', 'fixtures'];

function strangers(paths: readonly string[]): string[] {
  return paths.filter((path) => {
    const [top = '', ...below] = path.split('/');
    if (top.startsWith('.')) return false;
    return below.length > 0 ? !FOLDERS.includes(top) : !FILES.includes(top);
  });
}

describe('the top level holds only what it should', () => {
  it('among what is committed', () => {
    const paths = committedPaths();
    expect(paths).toContain('package.json');
    expect(strangers(paths)).toEqual([]);
  });

  it('finds a file and a folder too many, and a file where a folder belongs', () => {
    expect(strangers(['notes.md', 'lib/a.ts', 'src'])).toEqual(['notes.md', 'lib/a.ts', 'src']);
    expect(strangers(['README.md', 'src/a.ts', '.ci/run', '.gitignore'])).toEqual([]);
  });
});
