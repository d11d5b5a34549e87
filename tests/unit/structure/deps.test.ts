import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../steps/root';
import { type Manifest, reasonProblems, usageProblems, versionProblems } from './dependencies';
import { filesBelow } from './source-files';

const manifest = JSON.parse(readFileSync(`${ROOT}/package.json`, 'utf8')) as Manifest;
const config = { path: 'wxt.config.ts', text: readFileSync(`${ROOT}/wxt.config.ts`, 'utf8') };
const files = [...filesBelow(['src', 'entrypoints', 'tests'], ['.ts', '.tsx']), config];
/** The part of the guide that gives the reasons. */
const guide = readFileSync(`${ROOT}/DEVELOPERS.md`, 'utf8').split('<!-- dependencies -->')[1] ?? '';

describe('each dependency', () => {
  it('is used, and whatever is used is one', () => expect(usageProblems(manifest, files)).toEqual([]));
  it('has its reason in DEVELOPERS.md', () => expect(reasonProblems(manifest, guide)).toEqual([]));
  it('has one exact version', () => expect(versionProblems(manifest)).toEqual([]));
});

describe('the check itself', () => {
  const uses = [{ path: 'src/a.ts', text: "import a from '@x/used/deep';" }];

  it('finds what is not used, and what is used without being asked for', () => {
    const found = usageProblems({ dependencies: { '@x/used': '1.0.0', idle: '1.0.0' } }, uses);
    expect(found).toEqual(['idle: nothing imports or starts it']);
    expect(usageProblems({}, uses)).toEqual(['@x/used: imported, but no dependency']);
  });

  it('takes a module of the builder, and what it puts in, as used only where the configuration names it', () => {
    const both = { dependencies: { 'webextension-polyfill': '1.0.0', '@wxt-dev/webextension-polyfill': '1.0.0' } };
    const named = [{ path: 'wxt.config.ts', text: "export default { modules: ['@wxt-dev/webextension-polyfill'] };" }];
    expect(usageProblems(both, named)).toEqual([]);
    expect(usageProblems(both, uses).filter((problem) => problem.includes('nothing'))).toHaveLength(2);
  });

  it('finds a missing reason, and a row too many', () => {
    const rows = '| `a` | reads the pages of the market |\n| `b` | ? |\n| `gone` | was needed a long time ago |';
    const found = reasonProblems({ dependencies: { a: '1.0.0', b: '1.0.0' } }, rows);
    expect(found).toEqual(['b: no reason is given', 'gone: a reason, but no dependency']);
  });

  it('finds a version that may move', () => {
    expect(versionProblems({ dependencies: { a: '^1.0.0', b: '1.2.3' } })).toEqual([
      'a: ^1.0.0 is not one exact version',
    ]);
  });
});
