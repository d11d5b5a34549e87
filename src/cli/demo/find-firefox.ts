import { homedir } from 'node:os';
import { join } from 'node:path';
import { canRun, type Environment, onPath } from './executables';

/** The environment variable that names a Firefox outright. */
export const FIREFOX_VARIABLE = 'BEDPLATE_FIREFOX';

// Any of them takes an unpacked extension for the length of one run, over WebDriver BiDi. The long-term one goes first:
// it is what Debian has, so that a developer and a bare machine test the same.
const NAMES = ['firefox-esr', 'firefox', 'firefox-devedition'];

const FIXED: Partial<Record<NodeJS.Platform, string[]>> = {
  linux: ['/usr/bin/firefox-esr', '/usr/lib/firefox-esr/firefox-esr', '/usr/lib/firefox/firefox', '/usr/bin/firefox'],
  darwin: [
    '/Applications/Firefox.app/Contents/MacOS/firefox',
    join(homedir(), 'Applications/Firefox.app/Contents/MacOS/firefox'),
    '/Applications/Firefox Developer Edition.app/Contents/MacOS/firefox',
  ],
  win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) => {
    const base = process.env[name];
    return base ? [join(base, 'Mozilla Firefox\\firefox.exe')] : [];
  }),
};

/**
 * A Firefox on this machine.
 * @returns the path of its executable, or null. A path in BEDPLATE_FIREFOX is taken as it is, and no other is tried.
 */
export function findFirefox(
  env: Environment = process.env,
  platform: NodeJS.Platform = process.platform,
): string | null {
  const named = env[FIREFOX_VARIABLE];
  if (named) return canRun(named) ? named : null;
  return [...onPath(NAMES, env, platform), ...(FIXED[platform] ?? [])].find(canRun) ?? null;
}
