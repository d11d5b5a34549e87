import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import type { Measured } from './in-page';
import type { StoredPage } from './stored-pages';

const ROUNDS = 9;

/** The reader, readability and the clock as one script, as a browser gets them. */
async function bundle(): Promise<string> {
  const entry = fileURLToPath(new URL('in-page.ts', import.meta.url));
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, lib: { entry, formats: ['iife'], name: 'reading' } },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (!first || !('output' in first)) throw new Error('nothing was built');
  return first.output[0].code;
}

/**
 * Reads pages in a real Chromium, with layout. No script of a page runs, and nothing that it names is loaded: whatever is
 * asked for but the page itself is refused.
 */
export async function measureInChromium(pages: readonly StoredPage[], executablePath: string): Promise<Measured[]> {
  const script = await bundle();
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    const tab = await context.newPage();
    let current: StoredPage | null = null;
    await context.route('**/*', async (route) => {
      if (!current || route.request().url() !== new URL(current.address).href) return route.abort();
      await route.fulfill({
        body: current.html,
        // Without a charset, so that the page's own is found as the standard says.
        headers: { 'content-type': 'text/html', 'content-security-policy': "script-src 'none'" },
      });
    });
    const measured: Measured[] = [];
    for (const page of pages) {
      current = page;
      await tab.goto(page.address, { waitUntil: 'load' });
      measured.push(
        await tab.evaluate(
          ({ script, address, rounds }) => {
            const { measure } = new Function(`${script};return reading;`)() as {
              measure: (document: Document, url: string, rounds: number) => unknown;
            };
            return measure(document, address, rounds) as never;
          },
          { script, address: page.address, rounds: ROUNDS },
        ),
      );
    }
    return measured;
  } finally {
    await browser.close();
  }
}
