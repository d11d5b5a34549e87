import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Builds the extension for Chromium.
 * @returns its folder, or null where the build failed; what the build printed is shown then.
 */
export function buildExtension(root: string): string | null {
  const run = spawnSync(process.execPath, [join(root, 'node_modules/wxt/bin/wxt.mjs'), 'build', '-b', 'chrome'], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
    encoding: 'utf8',
    env: { ...process.env, WXT_TELEMETRY: '0' },
  });
  const folder = join(root, '.output/chrome-mv3');
  if (run.status === 0 && existsSync(folder)) return folder;
  process.stderr.write(`${run.stdout ?? ''}${run.stderr ?? ''}`);
  return null;
}
