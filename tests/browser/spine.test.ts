import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { takePictures } from '../../src/cli/demo/take-pictures';
import { ourRequests, press, seenErrors, until } from './hands';
import { BUILD, openTestedRoom, type Room } from './support/browser';
import { EACH_PAGE_OF, PERMISSIONS, PICTURES } from './support/differences';

const MARKET = 'fixtures/market';
const pages = readdirSync(MARKET, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .filter((_name, index) => index % EACH_PAGE_OF === 0);

interface Expected {
  kind: string;
  /** The page fills itself in after it has loaded. */
  dynamic?: boolean;
  disproved: { quote: string }[];
  listing: { title: string };
}
const expectedOf = (name: string, file = 'expected.json'): Expected =>
  JSON.parse(readFileSync(join(MARKET, name, file), 'utf8'));

let room: Room<Driven>;
beforeAll(async () => {
  room = await openTestedRoom();
});
afterAll(() => room?.close());

/** The title of the advert, and each thing that is expected not to hold, with both its halves. */
async function expectShown(panel: Panel, expected: Expected): Promise<void> {
  expect(await panel.text()).toContain(expected.listing.title);
  const disproved = await panel.evaluate(() =>
    [...document.querySelectorAll('[data-standing="disproved"]')].map((finding) => ({
      said: [...finding.querySelectorAll('[data-part="said"] q')].map((quote) => quote.textContent ?? ''),
      known: finding.querySelectorAll('[data-part="known"] .words').length,
    })),
  );
  // Both halves or nothing: one said and one known, or two said.
  for (const { said, known } of disproved) expect(said.length >= 2 || (said.length === 1 && known >= 1)).toBe(true);
  for (const { quote } of expected.disproved)
    expect(
      disproved
        .flatMap(({ said }) => said)
        .join(' | ')
        .toLowerCase(),
    ).toContain(quote.toLowerCase());
  if (expected.disproved.length === 0) expect(disproved).toEqual([]);
}

describe('a press of the toolbar button on an advert', () => {
  it.each(pages)('shows its audit in the side panel: %s', async (name) => {
    const { browser, market } = room;
    const expected = expectedOf(name);
    const page = await browser.openTab(market.addressOf(`${name}/page.html`));
    if (expected.dynamic) await page.waitForSelector('h1', { state: 'attached' });
    const panel = await press(browser, page, ...(expected.kind === 'list' ? ['list'] : ['audit', 'no-pack']));
    if (PICTURES) await takePictures(panel, PICTURES, name);

    if (expected.kind === 'list') return page.close();
    await expectShown(panel, expected);
    await page.close();
  });

  it('follows a single-page site to its next advert', async () => {
    const { browser, market } = room;
    const page = await browser.openTab(market.addressOf('spa-two-adverts/page.html'));
    await page.waitForSelector('h1', { state: 'attached' });
    const panel = await press(browser, page, 'audit');
    const next = expectedOf('spa-two-adverts', 'expected-second.json');
    await page.click('.related a');
    await panel.waitFor(
      `document.querySelector('[data-screen="audit"] h1')?.textContent === ${JSON.stringify(next.listing.title)}`,
    );
    await expectShown(panel, next);
    await page.close();
  });

  it('leaves the page as it was', async () => {
    const { browser, market } = room;
    const page = await browser.openTab(market.addressOf('wendelow-industrial-zigzag/page.html'));
    const before = await page.content();
    await press(browser, page, 'audit');
    expect(await page.content()).toBe(before);
    await page.close();
  });

  it('marks the button where there is something to read, without a count', async () => {
    const { browser, market } = room;
    const page = await browser.openTab(market.addressOf('wendelow-industrial-zigzag/page.html'));
    expect(await browser.markInFront()).toBe('');
    await press(browser, page, 'audit');
    await until('a mark on the button', async () => (await browser.markInFront()) === '•');
    await page.close();
  });

  it('made no request and no error', async () => {
    expect(ourRequests(room.browser)).toEqual([]);
    expect(await seenErrors(room.browser)).toEqual([]);
    // The watch sees: each market page asked for itself and its photos.
    expect(room.browser.requests().length).toBeGreaterThan(pages.length);
  });

  it('asks for no more than six permissions and no host; for hosts of packs it may ask later, over https alone', async () => {
    const manifest = JSON.parse(readFileSync(`${BUILD}/manifest.json`, 'utf8'));
    expect([...manifest.permissions].sort()).toEqual(PERMISSIONS);
    expect(manifest.optional_host_permissions).toEqual(['https://*/*']);
    for (const key of [
      'host_permissions',
      'optional_permissions',
      'content_scripts',
      'externally_connectable',
      'web_accessible_resources',
    ])
      expect(manifest[key] ?? []).toEqual([]);
  });
});
