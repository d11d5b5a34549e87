import { chmodSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { FIREFOX_VARIABLE, findFirefox } from '../../../../src/cli/demo/find-firefox';

const folder = mkdtempSync(join(tmpdir(), 'firefoxes-'));
const program = (name: string) => {
  const path = join(folder, name);
  writeFileSync(path, '#!/bin/sh\n');
  chmodSync(path, 0o755);
  return path;
};

it('takes the long-term Firefox of the search path before another', () => {
  const usual = program('firefox');
  expect(findFirefox({ PATH: folder }, 'linux')).toBe(usual);
  const longTerm = program('firefox-esr');
  expect(findFirefox({ PATH: folder }, 'linux')).toBe(longTerm);
});

it('takes the one that is named, and no other where that one can’t be run', () => {
  const named = program('my-own');
  expect(findFirefox({ PATH: folder, [FIREFOX_VARIABLE]: named }, 'linux')).toBe(named);
  expect(findFirefox({ PATH: folder, [FIREFOX_VARIABLE]: join(folder, 'none') }, 'linux')).toBeNull();
});
