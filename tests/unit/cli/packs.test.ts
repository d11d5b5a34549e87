import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { BadInput } from '../../../src/cli/bad-input';
import { loadPacks } from '../../../src/cli/packs';

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

const about = {
  id: 'p',
  title: 'P',
  edition: 1,
  licence: 'CC0-1.0',
  language: 'en',
  covers: { thing: 'a machine', words: ['machine'] },
};

function file(text: string): string {
  const path = join(folder, 'pack.json');
  writeFileSync(path, text);
  return path;
}

function refusal(text: string): string {
  try {
    loadPacks([file(text)]);
    return '';
  } catch (error) {
    expect(error).toBeInstanceOf(BadInput);
    return (error as Error).message.replace(folder, '');
  }
}

describe('packs from files', () => {
  it('stand beside the shipped trade pack', () => {
    expect(loadPacks([]).map((pack) => pack.about.id)).toHaveLength(1);
    expect(loadPacks([file(JSON.stringify({ schema: 1, about }))]).at(-1)?.about.id).toBe('p');
  });

  it('are refused in one line that names the first issue and how many there are', () => {
    const one = refusal(JSON.stringify({ schema: 1, about: { ...about, edition: 0 } }));
    expect(one).toMatch(/^\/pack\.json: not a pack: 1 issue at about\.edition: .+, expected .+$/);
    const two = refusal(JSON.stringify({ schema: 1, about: { ...about, edition: 0, id: 'P P' } }));
    expect(two).toMatch(/^\/pack\.json: not a pack: 2 issues, the first at about\.\w+: .+, expected .+$/);
    expect(refusal('{')).toMatch(/^\/pack\.json: not a pack: 1 issue: .+, expected one JSON object$/);
  });
});
