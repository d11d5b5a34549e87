import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cli } from '../../text/catalogue/cli';
import { auditorOf, today } from '../auditor';
import { readPageFile } from '../page-file';
import { printable } from '../printable';
import { runCommand } from '../run-command';
import { buildExtension } from './build-extension';
import { hasDisplay } from './display';
import { type Chromium, driveChromium } from './drive-chromium';
import { findOrInstallBrowser } from './install-browser';
import { packsIn } from './install-packs';
import { choosePage, fileOfPage } from './market-page';
import { type MarketServer, serveMarket } from './serve-market';
import { showAudit } from './show-audit';
import { takePictures } from './take-pictures';

// `npm start`: the main job, from a listing of the invented market to its audit in the side panel of a real browser.

const texts = cli.demo;
const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const MARKET = join(ROOT, 'fixtures/market');
const PICTURES = join(ROOT, '.shots');
const USUAL_PAGE = 'wendelow-industrial-zigzag';

const say = (line: string) => console.log(line);

async function start(argv: string[]): Promise<string> {
  const page = choosePage(MARKET, USUAL_PAGE, argv);
  const packs = packsIn(join(ROOT, 'fixtures/packs'));
  const executable = findOrInstallBrowser(say);
  if (!executable) return asText(page, packs);
  say(texts.building);
  const extension = buildExtension(ROOT);
  if (!extension) throw new Error(texts.buildFailed);
  const opened = await open(executable, extension);
  if (!opened) return asText(page, packs);
  const market = await serveMarket(MARKET);
  try {
    return await present(opened.browser, opened.headed, market, page, packs);
  } finally {
    await opened.browser.close();
    await market.close();
  }
}

/** With a window where there is a screen for one; a screen that can't be reached is as good as none. */
async function open(executable: string, extension: string): Promise<{ browser: Chromium; headed: boolean } | null> {
  for (const headed of hasDisplay() ? [true, false] : [false]) {
    try {
      const browser = await driveChromium({ executable, extension, headed, window: { width: 1280, height: 900 } });
      return { browser, headed };
    } catch (error) {
      say(texts.didNotStart(printable(error instanceof Error ? error.message : String(error))));
    }
  }
  return null;
}

async function present(
  browser: Chromium,
  headed: boolean,
  market: MarketServer,
  name: string,
  packs: string[],
): Promise<string> {
  const { panel } = await showAudit(browser, market.addressOf(`${name}/page.html`), packs);
  if (headed) {
    say(texts.open(market.addressOf(`${name}/page.html`)));
    await untilClosed(browser);
    return '';
  }
  const text = await panel.text();
  const pictures = await takePictures(panel, PICTURES, name);
  return [
    texts.panelSays(market.addressOf(`${name}/page.html`)),
    '',
    ...printable(text).split(/\n\s*/),
    '',
    texts.laidOut(commandFor(name, packs)),
    '',
    asText(name, packs),
    texts.pictures(pictures.map((path) => relative(process.cwd(), path)).join(', ')),
    '',
  ].join('\n');
}

function untilClosed(browser: Chromium): Promise<void> {
  return new Promise((resolve) => {
    browser.context.once('close', () => resolve());
    // On a Mac the browser stays when its last window is closed.
    const onPageClosed = () => browser.context.pages().length === 0 && resolve();
    for (const page of browser.context.pages()) page.once('close', onPageClosed);
    browser.context.on('page', (page) => page.once('close', onPageClosed));
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
}

/** The same engine, page and packs, for a terminal. */
function asText(name: string, packs: string[]): string {
  const auditor = auditorOf(packs, today());
  return auditor.text(auditor.audit(readPageFile(fileOfPage(MARKET, name), undefined)));
}

function commandFor(name: string, packs: string[]): string {
  const short = (path: string) => relative(process.cwd(), path);
  return `npm run -s audit -- ${short(fileOfPage(MARKET, name))} ${packs.map((path) => `--pack ${short(path)}`).join(' ')}`;
}

await runCommand(start);
