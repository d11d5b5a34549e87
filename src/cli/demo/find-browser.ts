import { existsSync, readdirSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { canRun, onPath } from './executables';

/** The environment variable that names a browser outright. */
export const BROWSER_VARIABLE = 'BEDPLATE_BROWSER';

// Only Chromium and Chrome for Testing: the branded builds no longer take --load-extension (since version 137).
const NAMES = ['chromium', 'chromium-browser', 'chrome-for-testing', 'google-chrome-for-testing'];

const FIXED: Partial<Record<NodeJS.Platform, string[]>> = {
  linux: [
    '/usr/bin/chromium',
    '/usr/lib/chromium/chromium',
    '/usr/lib64/chromium-browser/chromium-browser',
    '/opt/chromium/chrome',
    '/var/lib/flatpak/exports/bin/org.chromium.Chromium',
    '/snap/bin/chromium',
  ],
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    join(homedir(), 'Applications/Chromium.app/Contents/MacOS/Chromium'),
    '/Applications/Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing',
  ],
  win32: ['LOCALAPPDATA', 'PROGRAMFILES', 'PROGRAMFILES(X86)'].flatMap((name) => {
    const base = process.env[name];
    return base ? [join(base, 'Chromium\\Application\\chrome.exe')] : [];
  }),
};

/** Where browser automation tools keep the Chromium builds they download, and the executable inside one. */
const CACHES: Partial<Record<NodeJS.Platform, { folder: string; inside: string[] }>> = {
  linux: {
    folder: join(homedir(), '.cache/ms-playwright'),
    inside: ['chrome-linux/chrome', 'chrome-linux64/chrome'],
  },
  darwin: {
    folder: join(homedir(), 'Library/Caches/ms-playwright'),
    inside: [
      'chrome-mac/Chromium.app/Contents/MacOS/Chromium',
      'chrome-mac-arm64/Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing',
    ],
  },
  win32: {
    folder: join(process.env.LOCALAPPDATA ?? homedir(), 'ms-playwright'),
    inside: ['chrome-win\\chrome.exe', 'chrome-win64\\chrome.exe'],
  },
};

/**
 * A browser on this machine that still loads an unpacked extension from its command line.
 * @returns the path of its executable, or null. A path in BEDPLATE_BROWSER is taken as it is, and no other is tried.
 */
export function findBrowser(
  env: Record<string, string | undefined> = process.env,
  platform: NodeJS.Platform = process.platform,
): string | null {
  const named = env[BROWSER_VARIABLE];
  if (named) return canRun(named) ? named : null;
  const candidates = [...onPath(NAMES, env, platform), ...(FIXED[platform] ?? []), ...cached(platform)];
  return candidates.find((path) => canRun(path) && !isSnapStub(path)) ?? null;
}

function cached(platform: NodeJS.Platform): string[] {
  const cache = CACHES[platform];
  if (!cache || !existsSync(cache.folder)) return [];
  const builds = readdirSync(cache.folder).filter((name) => /^chromium-\d+$/.test(name));
  builds.sort((a, b) => Number(b.slice(9)) - Number(a.slice(9)));
  return builds.flatMap((build) => cache.inside.map((inside) => join(cache.folder, build, inside)));
}

/** Ubuntu ships a small script under Chromium's name that only tells to install the snap. */
function isSnapStub(path: string): boolean {
  if (existsSync('/snap/bin/chromium')) return false;
  const real = realpathSync(path);
  if (statSync(real).size > 20_000) return false;
  return /snap install chromium|requires the chromium snap/.test(readFileSync(real, 'utf8'));
}
