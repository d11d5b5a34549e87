import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ROOT } from '../steps/root';
import { type Mutant, mutantsOf, spread } from './mutants';

export interface Tried {
  file: string;
  mutant: Mutant;
  noticed: boolean;
}

const COPIED = ['src', 'tests', 'fixtures', 'package.json', 'tsconfig.json', '.wxt'];

/** A copy of the project in which sources can be changed without anybody minding. */
export function workshop(): { root: string; close(): void } {
  const root = mkdtempSync(join(tmpdir(), 'bedplate-mutants-'));
  for (const name of COPIED)
    if (existsSync(join(ROOT, name))) cpSync(join(ROOT, name), join(root, name), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(root, 'node_modules'));
  return { root, close: () => rmSync(root, { recursive: true }) };
}

/** Do all of these tests pass there? */
function pass(root: string, paths: readonly string[]): boolean {
  const vitest = join(ROOT, 'node_modules/vitest/vitest.mjs');
  const args = [vitest, 'run', '--config', 'tests/vitest.config.ts', '--bail', '1', '--reporter', 'dot', ...paths];
  return spawnSync(process.execPath, args, { cwd: root, stdio: 'ignore', timeout: 120_000 }).status === 0;
}

const ROOMS = [
  'tests/unit/claims',
  'tests/unit/audit',
  'tests/outside/negation.test.ts',
  'tests/outside/context.test.ts',
];

/** The test that mirrors a source file: `src/claims/a.ts`, `tests/unit/claims/a.test.ts`. */
function ownTest(file: string): string {
  return file.replace(/^src\//, 'tests/unit/').replace(/\.ts$/, '.test.ts');
}

/** @throws Error where the tests fail without any change: then nothing could be told. */
export function mustPass(root: string): void {
  if (!pass(root, ROOMS)) throw new Error('the tests fail as they are: mend that first');
}

/** Tries up to so many mutants of a file, one after the other: is each noticed by some unit test? */
export function tryFile(root: string, file: string, most: number, tell: (one: Tried) => void = () => {}): Tried[] {
  const path = join(root, file);
  const source = readFileSync(path, 'utf8');
  return spread(mutantsOf(source), most).map((mutant) => {
    writeFileSync(path, mutant.text);
    const own = ownTest(file);
    const noticed = (existsSync(join(root, own)) && !pass(root, [own])) || !pass(root, ROOMS);
    writeFileSync(path, source);
    const tried = { file, mutant, noticed };
    tell(tried);
    return tried;
  });
}
