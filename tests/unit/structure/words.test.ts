import { readFileSync, statSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../steps/root';
import { committedPaths } from './source-files';

// Written so that this file does not hold what it looks for.
const MACHINE_PATHS = new RegExp(`(?<![\\w./-])/(?:${['home', 'root', 'work', 'Users'].join('|')})/[\\w.-]`);
const DRIVE_PATHS = /\b[A-Z]:\\{1,2}Users\\/;
const REGISTRY_HOSTS = new RegExp(['npmjs', 'yarnpkg'].map((name) => `registry\\.${name}`).join('|'));

/** What gives away where the project was made or from where its packages came. */
function giveaways(path: string, text: string): string[] {
  return text.split('\n').flatMap((line, i) => {
    const bad = MACHINE_PATHS.test(line) || DRIVE_PATHS.test(line) || REGISTRY_HOSTS.test(line);
    return bad ? [`${path}:${i + 1}`] : [];
  });
}

describe('committed files', () => {
  const paths = committedPaths();

  it('name no path of one machine and no registry', () => {
    const texts = paths.filter((path) => !/\.(?:png|jpe?g|webp|ico|gif)$/.test(path) && isFile(path));
    expect(texts.length).toBeGreaterThan(20);
    expect(texts.flatMap((path) => giveaways(path, readFileSync(`${ROOT}/${path}`, 'utf8')))).toEqual([]);
  });

  it('leave it to npm where packages come from', () => {
    const lock = readFileSync(`${ROOT}/package-lock.json`, 'utf8');
    expect(lock).toContain('"integrity"');
    expect(lock).not.toContain('"resolved": "http');
  });

  it('would be found', () => {
    const sample = (...parts: string[]) => giveaways('a', `see ${parts.join('/')}`);
    expect(sample('', 'home', 'someone', 'x')).toEqual(['a:1']);
    expect(sample('', 'work', 'main')).toEqual(['a:1']);
    expect(sample(['https:', '', 'registry'].join('/').concat('.npmjs.org'), 'x')).toEqual(['a:1']);
    expect(sample('https://example.org', 'work', 'of', 'art')).toEqual([]);
  });
});

/** A path may be staged as deleted, or a link. */
function isFile(path: string): boolean {
  return statSync(`${ROOT}/${path}`, { throwIfNoEntry: false })?.isFile() ?? false;
}
