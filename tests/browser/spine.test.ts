import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { takePictures } from '../../src/cli/demo/take-pictures';
import { markInFront, ourErrors, ourRequests, press, until } from './hands';
import { openRoom, type Room } from './support/browser';

const MARKET = 'fixtures/market';
const pages = readdirSync(MARKET, { withFileTypes: true })
  .filter((entry) => entry.isDirectory() && entry.name !== 'adverts-list')
  .map(({ name }) => name);

interface Expected {
  kind: string;
  disproved: { quote: string }[];
  listing: { title: string };
}
const expectedOf = (name: string): Expected => JSON.parse(readFileSync(join(MARKET, name, 'expected.json'), 'utf8'));

let room: Room;
beforeAll(async () => {
  room = await openRoom();
});
afterAll(() => room?.close());

describe('a press of the toolbar button on an advert', () => {
  it.each(pages)('shows its audit in the side panel: %s', async (name) => {
    const { browser, market } = room;
    const expected = expectedOf(name);
    const page = await browser.openTab(market.addressOf(`${name}/page.html`));
    const panel = await press(browser, page, 'audit', 'no-pack');
    await takePictures(panel, '.shots', name);

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
    expect(await markInFront(browser)).toBe('');
    await press(browser, page, 'audit');
    await until('a mark on the button', async () => (await markInFront(browser)) === '•');
    await page.close();
  });

  it('made no request and no error', () => {
    expect(ourRequests(room.browser)).toEqual([]);
    expect(ourErrors(room.browser)).toEqual([]);
    // The watch sees: each market page asked for itself and its photos.
    expect(room.browser.requests().length).toBeGreaterThan(pages.length);
  });

  it('asks for no more than four permissions and no host', async () => {
    const manifest = JSON.parse(readFileSync('.output/chrome-mv3/manifest.json', 'utf8'));
    expect([...manifest.permissions].sort()).toEqual(['activeTab', 'scripting', 'sidePanel', 'storage']);
    for (const key of [
      'host_permissions',
      'optional_host_permissions',
      'optional_permissions',
      'content_scripts',
      'externally_connectable',
      'web_accessible_resources',
    ])
      expect(manifest[key] ?? []).toEqual([]);
  });
});
