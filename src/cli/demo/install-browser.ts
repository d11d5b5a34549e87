import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { cli as texts } from '../../text/catalogue/cli';
import { BROWSER_VARIABLE, findBrowser } from './find-browser';

/**
 * The browser of this machine; where there is none and this is Debian or Ubuntu with root's rights, one is installed.
 * @param say takes lines of progress.
 * @returns its path, or null after one line that says how to get one.
 */
export function findOrInstallBrowser(say: (line: string) => void): string | null {
  const found = findBrowser();
  if (found) return found;
  const named = process.env[BROWSER_VARIABLE];
  if (named) {
    // Whoever names a browser wants that one, and no other installed.
    say(texts.demo.namedCannotRun(named));
    return null;
  }
  if (mayInstall()) {
    say(texts.demo.installing);
    if (apt('update', '-q') && apt('install', '-y', '-q', '--no-install-recommends', 'chromium', 'fonts-dejavu-core')) {
      const installed = findBrowser();
      if (installed) return installed;
    }
  }
  say(texts.demo.howToGetBrowser);
  return null;
}

function mayInstall(): boolean {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return false;
  const release = existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '';
  return /^(?:ID|ID_LIKE)=.*\b(?:debian|ubuntu)\b/m.test(release);
}

/** Runs apt-get without questions; its output is shown only when it fails. */
function apt(...args: string[]): boolean {
  const run = spawnSync('apt-get', args, {
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    stdio: ['ignore', 'pipe', 'pipe'],
    encoding: 'utf8',
  });
  if (run.status !== 0) process.stderr.write(`${run.stdout ?? ''}${run.stderr ?? ''}`);
  return run.status === 0;
}
