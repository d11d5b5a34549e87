import { SourceMap } from 'node:module';
import { fileURLToPath } from 'node:url';
import { chromium, type Page } from 'playwright-core';
import { build } from 'vite';
import type { Measured } from './in-page';
import { type CpuProfile, type FileOf, type Profile, told } from './profile';
import type { StoredPage } from './stored-pages';

const ROUNDS = 9;
const ROUNDS_LEAST = 3;
/** Bytes: larger pages take fewer rounds. */
const LARGE = 400_000;
/** Milliseconds that one page is read for a profile, and microseconds between two looks at what runs. */
const PROFILED = 1000;
const INTERVAL = 100;

/** The reader, readability and the clock as one script, as a browser gets them; for a profile with all names. */
async function bundle(isNamed = false): Promise<{ script: string; map: SourceMap | null }> {
  const entry = fileURLToPath(new URL('in-page.ts', import.meta.url));
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, minify: !isNamed, sourcemap: isNamed, lib: { entry, formats: ['iife'], name: 'reading' } },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (!first || !('output' in first)) throw new Error('nothing was built');
  const { code, map } = first.output[0];
  return { script: code, map: map && new SourceMap({ ...map, file: map.file ?? '', sourceRoot: '' }) };
}

/**
 * Shows each page in turn in a real Chromium, with layout. No script of a page runs, and nothing that it names is loaded:
 * whatever is asked for but the page itself is refused.
 */
async function withEach<T>(
  pages: readonly StoredPage[],
  executablePath: string,
  look: (tab: Page, page: StoredPage) => Promise<T>,
): Promise<T[]> {
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const context = await browser.newContext({ serviceWorkers: 'block' });
    const tab = await context.newPage();
    let current: StoredPage | null = null;
    await context.route('**/*', async (route) => {
      if (!current || withoutFragment(route.request().url()) !== withoutFragment(current.address)) return route.abort();
      await route.fulfill({
        body: current.html,
        // Without a charset, so that the page's own is found as the standard says.
        headers: { 'content-type': 'text/html', 'content-security-policy': "script-src 'none'" },
      });
    });
    const found: T[] = [];
    for (const page of pages) {
      current = page;
      await tab.goto(page.address, { waitUntil: 'load' });
      found.push(await look(tab, page));
    }
    return found;
  } finally {
    await browser.close();
  }
}

/** No server is asked for what stands behind the `#`. */
function withoutFragment(address: string): string {
  const url = new URL(address);
  url.hash = '';
  return url.href;
}

/** Reads pages with ours and with readability, in turns. */
export async function measureInChromium(pages: readonly StoredPage[], executablePath: string): Promise<Measured[]> {
  const { script } = await bundle();
  return await withEach(pages, executablePath, (tab, page) =>
    tab.evaluate(
      ({ script, address, rounds }) => {
        const { measure } = new Function(`${script}\n;return reading;`)() as {
          measure: (document: Document, url: string, rounds: number) => Promise<unknown>;
        };
        return measure(document, address, rounds) as Promise<never>;
      },
      { script, address: page.address, rounds: page.html.length < LARGE ? ROUNDS : ROUNDS_LEAST },
    ),
  );
}

/** Where ours spends its time on each page, from CPU profiles by the devtools protocol. */
export async function profileInChromium(
  pages: readonly StoredPage[],
  executablePath: string,
): Promise<(Profile & { readings: number })[]> {
  const { script, map } = await bundle(true);
  const fileAt: FileOf = (line, column) => {
    const entry = map?.findEntry(line, column);
    return entry && 'originalSource' in entry ? entry.originalSource : '';
  };
  return await withEach(pages, executablePath, async (tab, page) => {
    const devtools = await tab.context().newCDPSession(tab);
    await devtools.send('Profiler.enable');
    await devtools.send('Profiler.setSamplingInterval', { interval: INTERVAL });
    await devtools.send('Profiler.start');
    const readings = await tab.evaluate(
      ({ script, address, milliseconds }) => {
        const { repeat } = new Function(`${script}\n;return reading;`)() as {
          repeat: (document: Document, url: string, milliseconds: number) => number;
        };
        return repeat(document, address, milliseconds);
      },
      { script, address: page.address, milliseconds: PROFILED },
    );
    const { profile } = (await devtools.send('Profiler.stop')) as { profile: CpuProfile };
    await devtools.detach();
    return { ...told(profile, fileAt), readings };
  });
}
