import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Chromium, driveChromium } from '../../../src/cli/demo/drive-chromium';
import { BROWSER_VARIABLE, findBrowser } from '../../../src/cli/demo/find-browser';
import { installPacks, packsIn } from '../../../src/cli/demo/install-packs';
import { type MarketServer, serveMarket } from '../../../src/cli/demo/serve-market';

export interface Room {
  browser: Chromium;
  market: MarketServer;
  close(): Promise<void>;
}

/**
 * A watched browser with the built extension, and the invented market served beside it.
 * @param options.packs installs the demo packs first (default true); @param options.market the folder to serve.
 * @throws Error where there is no build or no browser: `npm test` makes the one and finds or installs the other.
 */
export async function openRoom(options: { packs?: boolean; market?: string; extension?: string } = {}): Promise<Room> {
  const extension = resolve(options.extension ?? '.output/chrome-mv3');
  if (!existsSync(extension)) throw new Error('no build to test: run npm run build first');
  const executable = findBrowser();
  if (!executable) throw new Error(`no Chromium found: install one, or name it in ${BROWSER_VARIABLE}`);
  const market = await serveMarket(options.market ?? 'fixtures/market');
  const browser = await driveChromium({ executable, extension, watch: true, window: { width: 1280, height: 800 } });
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
