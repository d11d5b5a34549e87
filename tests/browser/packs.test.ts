import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { sealPack } from '../../src/sharing/seal/seal';
import { workbenchTexts as texts } from '../../src/text/catalogue/workbench';
import { folderOf, ourErrors, ourRequests, press, waitForScreen } from './hands';
import { openRoom, type Room } from './support/browser';

const sound = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8'));
const shipped = JSON.parse(readFileSync('src/pack/shipped/trade.json', 'utf8'));
const ID = sound.about.id as string;
const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
const sealedPack = { ...sound, about: { ...sound.about, edition: sound.about.edition + 2 } };
const sealed = await sealPack(sealedPack, keys);
const files = folderOf({
  'sealed.pack': sealed,
  'tampered.pack': sealed.replace(sound.about.licence, 'CC0-9.9'),
  'other.json': JSON.stringify({ ...sound, about: { ...sound.about, id: 'another-circle' } }),
  'sound.json': JSON.stringify(sound),
  'newer.json': JSON.stringify({ ...sound, about: { ...sound.about, edition: sound.about.edition + 1 } }),
  'bad.json': JSON.stringify({ ...sound, about: { ...sound.about, edition: 'first' }, models: [{ id: 'A B' }] }),
  'no-json.json': '{"schema": 1,',
  'prototype.json': '{"schema":1,"__proto__":{"polluted":1}}',
  'binary.json': new Uint8Array([0xff, 0xfe, 0x00, 0xd8]),
  'stranger.json': JSON.stringify({ ...shipped, about: { ...shipped.about, edition: shipped.about.edition + 1 } }),
});

let room: Room;
let bench: Page;
beforeAll(async () => {
  room = await openRoom({ packs: false });
  bench = await room.browser.openTab(room.browser.addressOf('workbench.html'));
});
afterAll(() => room?.close());

const ids = () =>
  bench.locator('[data-pack-id]').evaluateAll((rows) => rows.map((row) => row.getAttribute('data-pack-id')));
const choose = (...names: string[]) =>
  bench.locator('[data-part="pack-file"]').setInputFiles(names.map((name) => `${files}/${name}`));
const outcome = () => bench.locator('[data-part="install-outcome"] p');

it('lists the pack that came with the program', async () => {
  await bench.locator('[data-pack-id]').first().waitFor();
  expect(await ids()).toEqual(['trade']);
  expect(await bench.locator('[data-pack-id="trade"] [data-part="remove"]').count()).toBe(0);
});

it.each([
  ['bad.json', ['about.edition', 'models[0].id']],
  ['no-json.json', []],
  ['prototype.json', []],
  ['binary.json', []],
  ['stranger.json', ['about.id']],
])('installs nothing of %s and lists its issues', async (name, paths) => {
  await choose(name);
  await bench.locator('[data-part="refused-file"]', { hasText: name }).waitFor();
  const listed = await bench.locator('[data-part="issue-path"]').allTextContents();
  for (const path of paths) expect(listed).toContain(path);
  expect(await bench.locator('[data-part="issue"]').count()).toBeGreaterThan(0);
  expect(await ids()).toEqual(['trade']);
});

it('installs nothing where one of two files is bad', async () => {
  await choose('sound.json', 'bad.json');
  await bench.locator('[data-part="refused-file"]', { hasText: 'bad.json' }).waitFor();
  expect(await ids()).toEqual(['trade']);
});

it('installs a sound pack, keeps it over a reload, and takes a newer edition', async () => {
  await choose('sound.json');
  await bench.locator(`[data-pack-id="${ID}"]`).waitFor();
  await bench.reload();
  await bench.locator(`[data-pack-id="${ID}"]`).waitFor();
  await choose('newer.json');
  await outcome()
    .filter({ hasText: String(sound.about.edition + 1) })
    .waitFor();
  await choose('sound.json');
  await bench.locator('[data-part="issue-path"]', { hasText: 'about.edition' }).waitFor();
  expect(await ids()).toEqual(['trade', ID]);
});

it('tells an open panel at once when packs are switched, removed and put back', async () => {
  const page = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  const panel = await press(room.browser, page, 'audit');
  const spoke = () =>
    panel.evaluate(() =>
      [...document.querySelectorAll('[data-part="packs"] [data-pack-id]')].map((row) =>
        row.getAttribute('data-pack-id'),
      ),
    );
  expect(await spoke()).toEqual(['trade', ID]);
  const change = async (selector: string, speaking: string[]) => {
    await bench.locator(selector).evaluate((control) => (control as HTMLElement).click());
    if (speaking.length === 0) await waitForScreen(panel, 'no-pack');
    else
      await panel.waitFor(
        `[...document.querySelectorAll('[data-part="packs"] [data-pack-id]')].map((row) => row.getAttribute('data-pack-id')).join() === '${speaking.join()}'`,
      );
  };
  await change('[data-pack-id="trade"] input[type="checkbox"]', [ID]);
  await change(`[data-pack-id="${ID}"] [data-part="remove"]`, []);
  await change('[data-part="undo"]', [ID]);
  await change('[data-pack-id="trade"] input[type="checkbox"]', ['trade', ID]);
  await page.close();
});

it('takes a dropped file as well', async () => {
  await bench.locator(`[data-pack-id="${ID}"] [data-part="remove"]`).click();
  await bench.locator(`[data-pack-id="${ID}"]`).waitFor({ state: 'detached' });
  const data = await bench.evaluateHandle((text) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([text], 'dropped.json', { type: 'application/json' }));
    return transfer;
  }, JSON.stringify(sound));
  await bench.locator('[data-part="drop"]').dispatchEvent('drop', { dataTransfer: data });
  await bench.locator(`[data-pack-id="${ID}"]`).waitFor();
});

it('opens from the panel’s link', async () => {
  const page = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  const panel = await press(room.browser, page, 'audit');
  const opened = room.browser.context.waitForEvent('page');
  await panel.click('[data-part="packs-link"]');
  const workbench = await opened;
  await workbench.locator('[data-pack-id="trade"]').waitFor();
  await workbench.close();
  await page.close();
});

it('takes a sealed pack, says whose seal it is and what it took the place of', async () => {
  await bench.bringToFront();
  await choose('tampered.pack');
  await bench.locator('[data-part="refused-file"]', { hasText: 'tampered.pack' }).waitFor();
  await choose('sealed.pack');
  const { edition } = sound.about;
  await outcome()
    .filter({ hasText: `edition ${edition + 2} in place of ${edition}` })
    .waitFor();
  const seal = await bench.locator(`[data-pack-id="${ID}"] .labels`).textContent();
  expect(seal).toMatch(/sealed by ([0-9a-f]{4} ){7}[0-9a-f]{4}/);
  expect(seal).not.toContain(texts.shelf.unsealed);
  expect(await bench.locator('[data-part="seal-changed"]').textContent()).toContain('unsealed before');
});

it('none of this made a request or an error', () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(ourErrors(room.browser)).toEqual([]);
});
