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
const USUAL_PAGE = 'honest';

const say = (line: string) => console.log(line);

async function start(argv: string[]): Promise<string> {
  const page = choosePage(MARKET, USUAL_PAGE, argv);
  const packs = packsIn(join(ROOT, 'fixtures/packs'));
  const executable = findOrInstallBrowser(say);
  if (!executable) return asText(page, packs);
  say(texts.building);
  const extension = buildExtension(ROOT);
  if (!extension) throw new Error(texts.buildFailed);
  const market = await serveMarket(MARKET);
  try {
    const { browser, headed } = await open(executable, extension);
    try {
      return await present(browser, headed, market, page, packs);
    } finally {
      await browser.close();
    }
  } finally {
    await market.close();
  }
}

/** With a window where there is a screen for one; a screen that can't be reached is as good as none. */
async function open(executable: string, extension: string): Promise<{ browser: Chromium; headed: boolean }> {
  const window = { width: 1280, height: 900 };
  if (hasDisplay()) {
    try {
      return { browser: await driveChromium({ executable, extension, window, headed: true }), headed: true };
    } catch {
      say(texts.noWindow);
    }
  }
  return { browser: await driveChromium({ executable, extension, window }), headed: false };
}

async function present(
  browser: Chromium,
  headed: boolean,
  market: MarketServer,
  name: string,
  packs: string[],
): Promise<string> {
  const { panel } = await showAudit(browser, market.addressOf(`${name}/`), packs);
  if (headed) {
    say(texts.open(market.addressOf(`${name}/`)));
    await untilClosed(browser);
    return '';
  }
  const text = await panel.text();
  const pictures = await takePictures(panel, PICTURES, name);
  return [
    texts.panelSays(market.addressOf(`${name}/`)),
    '',
    printable(text.trim()),
    '',
    texts.pictures(pictures.map((path) => relative(process.cwd(), path)).join(', ')),
    texts.inTerminal(commandFor(name, packs)),
    '',
  ].join('\n');
}

function untilClosed(browser: Chromium): Promise<void> {
  return new Promise((resolve) => {
    browser.context.once('close', () => resolve());
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });
}

/** Without a browser the same engine answers, on the same page and packs. */
function asText(name: string, packs: string[]): string {
  const auditor = auditorOf(packs, today());
  return auditor.text(auditor.audit(readPageFile(fileOfPage(MARKET, name), undefined)));
}

function commandFor(name: string, packs: string[]): string {
  const short = (path: string) => relative(process.cwd(), path);
  return `npm run -s audit -- ${short(fileOfPage(MARKET, name))} ${packs.map((path) => `--pack ${short(path)}`).join(' ')}`;
}

await runCommand(start);
