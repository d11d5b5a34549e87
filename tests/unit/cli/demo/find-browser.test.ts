import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { findBrowser } from '../../../../src/cli/demo/find-browser';

const folder = mkdtempSync(join(tmpdir(), 'bedplate-'));
afterAll(() => rmSync(folder, { recursive: true }));

function program(name: string, text: string, mode = 0o755): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  chmodSync(path, mode);
  return path;
}

describe('a browser is found', () => {
  it('by the variable that names it, and then no other is tried', () => {
    const named = program('my-browser', '#!/bin/sh\n');
    expect(findBrowser({ BEDPLATE_BROWSER: named })).toBe(named);
    const chromium = program('chromium', '#!/bin/sh\n');
    expect(findBrowser({ BEDPLATE_BROWSER: join(folder, 'gone'), PATH: folder })).toBeNull();
    expect(findBrowser({ PATH: folder })).toBe(chromium);
  });

  it('but neither one that cannot run, nor a folder, nor a stub that asks for a snap', () => {
    const asleep = program('chromium', '#!/bin/sh\n', 0o644);
    expect(findBrowser({ BEDPLATE_BROWSER: asleep })).toBeNull();
    expect(findBrowser({ BEDPLATE_BROWSER: folder })).toBeNull();
    const stub = program('chromium', '#!/bin/sh\necho "Please install it with: snap install chromium"\nexit 1\n');
    expect(findBrowser({ PATH: folder })).not.toBe(stub);
  });
});
