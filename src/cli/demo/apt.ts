import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';

/** Whether programs of Debian or Ubuntu can be installed here: as root, and where there is such a system. */
export function mayInstall(): boolean {
  if (process.platform !== 'linux' || process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return false;
  const release = existsSync('/etc/os-release') ? readFileSync('/etc/os-release', 'utf8') : '';
  return /^(?:ID|ID_LIKE)=.*\b(?:debian|ubuntu)\b/m.test(release);
}

/** Installs packages without questions. A service among them is not started. @returns whether that was done */
export function aptInstall(...packages: string[]): boolean {
  return apt('update', '-q') && apt('install', '-y', '-q', '--no-install-recommends', ...packages);
}

/** Runs apt-get without questions; its output is shown only when it fails. */
function apt(...args: string[]): boolean {
  const run = spawnSync('apt-get', args, {
    // In runlevel 1 (single user) no service is started by its installation.
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive', RUNLEVEL: '1' },
    stdio: ['ignore', 'pipe', 'pipe'],
    encoding: 'utf8',
  });
  if (run.status !== 0) process.stderr.write(`${run.stdout ?? ''}${run.stderr ?? ''}`);
  return run.status === 0;
}
