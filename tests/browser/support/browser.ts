import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Chromium } from '../../../src/cli/demo/drive-chromium';
import type { Driven } from '../../../src/cli/demo/driven';
import { BROWSER_VARIABLE, findBrowser } from '../../../src/cli/demo/find-browser';
import { FIREFOX_VARIABLE, findFirefox } from '../../../src/cli/demo/find-firefox';
import { installPacks, packsIn } from '../../../src/cli/demo/install-packs';
import { type MarketServer, serveMarket } from '../../../src/cli/demo/serve-market';

export interface Room<B extends Driven = Chromium> {
  browser: B;
  market: MarketServer;
  close(): Promise<void>;
}

export interface RoomOptions {
  /** Installs the demo packs first (default true). */
  packs?: boolean;
  /** The folder of pages to serve. */
  market?: string;
  /** The folder of the built extension. */
  extension?: string;
  /** Allows the extension in private windows. */
  privately?: boolean;
  /** Takes certificates that nobody vouches for, and has the user's leave to fetch from these hosts once it asks. */
  hosts?: readonly string[];
  /** How many bytes there are for all that pages keep. */
  space?: number;
  /** The folder of a profile that outlives the browser; for Chromium alone. */
  profile?: string;
}

/** The browser that this run is about, whose driver alone is loaded; the tests that are written for both ask for it. */
export const TESTED: Driven['name'] = process.env.BEDPLATE_TESTED === 'firefox' ? 'firefox' : 'chromium';

/** Where the build for that browser stands. */
export const BUILD = TESTED === 'firefox' ? '.output/firefox-mv3' : '.output/chrome-mv3';

/**
 * A watched Chromium with the built extension, and the invented market served beside it: for tests that need what only
 * this browser's driver can do.
 * @throws Error where there is no build or no browser: `npm test` makes the one and finds or installs the other.
 */
export function openRoom(options: RoomOptions = {}): Promise<Room> {
  const executable = findBrowser();
  if (!executable) throw new Error(`no Chromium found: install one, or name it in ${BROWSER_VARIABLE}`);
  return furnish(options, '.output/chrome-mv3', async (extension) => {
    const { driveChromium } = await import('../../../src/cli/demo/drive-chromium');
    return driveChromium({ executable, extension, watch: true, window: WINDOW, ...wishesOf(options) });
  });
}

/** The same with the browser that this run is about. */
export function openTestedRoom(options: RoomOptions = {}): Promise<Room<Driven>> {
  if (TESTED === 'chromium') return openRoom(options);
  const executable = findFirefox();
  if (!executable) throw new Error(`no Firefox found: install one, or name it in ${FIREFOX_VARIABLE}`);
  return furnish(options, BUILD, async (extension) => {
    const { driveFirefox } = await import('../../../src/cli/demo/drive-firefox');
    return driveFirefox({ executable, extension, watch: true, window: WINDOW, ...wishesOf(options) });
  });
}

const WINDOW = { width: 1280, height: 800 };
const wishesOf = ({ space, hosts, profile, privately = false }: RoomOptions) => ({
  privately,
  ...(hosts === undefined ? {} : { anyCertificate: true, grants: hosts }),
  ...(space === undefined ? {} : { space }),
  ...(profile === undefined ? {} : { profile }),
});

async function furnish<B extends Driven>(
  options: RoomOptions,
  build: string,
  drive: (extension: string) => Promise<B>,
): Promise<Room<B>> {
  const extension = resolve(options.extension ?? build);
  if (!existsSync(extension)) throw new Error('no build to test: run npm run build first');
  const market = await serveMarket(options.market ?? 'fixtures/market');
  const browser = await drive(extension);
  if (options.packs !== false) await installPacks(browser, packsIn('fixtures/packs'));
  return {
    browser,
    market,
    async close() {
      await browser.close();
      await market.close();
    },
  };
}
