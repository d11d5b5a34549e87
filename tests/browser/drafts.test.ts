import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Draft } from '../../src/listing/types';
import { draftRoomTexts as texts } from '../../src/text/catalogue/draft-room';
import { ourErrors, ourRequests, until } from './hands';
import { openRoom, type Room } from './support/browser';

const example = JSON.parse(readFileSync('fixtures/drafts/hopeful-haddercombe.json', 'utf8')) as Draft;
const FIELDS = ['title', 'description', 'priceText', 'conditionText', 'serialText'] as const;

let room: Room;
let bench: Page;
beforeAll(async () => {
  room = await openRoom();
  bench = await room.browser.openTab(room.browser.addressOf('workbench.html#drafts'));
});
afterAll(() => room?.close());

const part = (name: string) => bench.locator(`[data-part="${name}"]`);
const field = (name: string) => bench.locator(`#draft-${name}`);
const kept = () => bench.locator('[data-part="kept"][data-kept="kept"]').waitFor();
const rows = () => bench.locator('.draft-name').allTextContents();

it('says what to do where there is no draft yet', async () => {
  await part('empty').waitFor();
  expect(await part('empty').textContent()).toBe(texts.empty);
});

it('audits a draft as it is typed, by keyboard alone', async () => {
  await part('new-draft').focus();
  await bench.keyboard.press('Enter');
  await until('the title has the focus', () => bench.evaluate(() => document.activeElement?.id === 'draft-title'));
  for (const name of FIELDS) {
    if (name !== 'title') await bench.keyboard.press('Tab');
    while (!(await bench.evaluate((id) => document.activeElement?.id === id, `draft-${name}`)))
      await bench.keyboard.press('Tab');
    await bench.keyboard.type(example[name] ?? '');
  }
  await bench.locator('[data-finding][data-standing="disproved"]').first().waitFor();
  const marked = await bench.locator('mark[data-standing="disproved"]').allTextContents();
  expect(marked.join(' | ').toLowerCase()).toContain('free arm');
});

it('leads from marked words to their finding, and lays the marks exactly under the words', async () => {
  const link = bench.locator('[data-field="description"] .mark-links li[data-standing="disproved"] a').first();
  await link.focus();
  await bench.keyboard.press('Enter');
  const focused = await bench.evaluate(() => document.activeElement?.getAttribute('data-standing'));
  expect(focused).toBe('disproved');
  const sizes = await bench.locator('.marked').evaluateAll((boxes) =>
    boxes.map((box) => {
      const [under, over] = [...box.children] as HTMLElement[];
      if (!under || !over) throw new Error('a field without its two layers');
      return [over.scrollHeight - over.clientHeight, under.offsetHeight - over.offsetHeight];
    }),
  );
  expect(sizes).toEqual(sizes.map(() => [0, 0]));
});

it('keeps drafts over a reload, lists them by title and renames them with it', async () => {
  await kept();
  await bench.reload();
  await bench.locator('.draft-name', { hasText: 'Haddercombe' }).click();
  expect(await field('description').inputValue()).toBe(example.description);
  await field('title').fill('Renamed sewing machine');
  await kept();
  expect(await rows()).toEqual(['Renamed sewing machine']);
  await part('new-draft').click();
  await field('description').fill('A second one');
  await kept();
  expect(await rows()).toEqual(['A second one', 'Renamed sewing machine']);
  await bench.reload();
  await bench.locator('.draft-name').nth(1).waitFor();
  expect(await rows()).toEqual(['A second one', 'Renamed sewing machine']);
});

it('deletes a draft and puts it back', async () => {
  await part('remove-draft').first().click();
  await part('undo-draft').waitFor();
  expect(await rows()).toEqual(['Renamed sewing machine']);
  await part('undo-draft').click();
  await until('it is back', async () => (await rows()).length === 2);
  await bench.reload();
  await bench.locator('.draft-name').nth(1).waitFor();
});

it('keeps what was seen of the thing with its draft, and with no other one', async () => {
  await part('new-draft').click();
  await field('title').fill('Treadle sewing machine');
  await kept();
  await bench.locator('.asked').waitFor();
  await bench.locator('.answer').first().click();
  await bench.locator('[data-seen]').waitFor();
  await bench.reload();
  await bench.locator('.draft-name', { hasText: 'Treadle' }).click();
  await bench.locator('[data-seen]').waitFor();
  await bench.locator('.draft-name', { hasText: 'Renamed' }).click();
  await bench.locator('[data-part="summary"]').waitFor();
  expect(await bench.locator('[data-seen]').count()).toBe(0);
  const remove = () =>
    bench.locator('.draft-row', { hasText: 'Treadle' }).locator('[data-part="remove-draft"]').click();
  await remove();
  await part('undo-draft').click();
  await bench.locator('.draft-name', { hasText: 'Treadle' }).click();
  await bench.locator('[data-seen] button').click();
  await bench.locator('[data-seen]').waitFor({ state: 'detached' });
  await remove();
});

it('copies a draft out as plain text', async () => {
  await bench.locator('.draft-name', { hasText: 'Renamed' }).click();
  await room.browser.context.grantPermissions(['clipboard-read'], { origin: room.market.origin });
  await part('copy-draft').click();
  await bench.locator('[data-part="copy-outcome"]', { hasText: texts.copied }).waitFor();
  const market = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  const text = await market.evaluate(() => navigator.clipboard.readText());
  expect(text).toContain('Renamed sewing machine\n\nRare Haddercombe');
  expect(text).toContain(texts.row(texts.fields.priceText, example.priceText ?? ''));
  await market.close();
});

it('gives way when what it keeps is deleted under it, and goes on', async () => {
  await bench.bringToFront();
  await bench.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const deleting = indexedDB.deleteDatabase('bedplate');
        deleting.onsuccess = resolve;
        deleting.onerror = reject;
      }),
  );
  await field('title').fill('Written after the deletion');
  await kept();
  await bench.reload();
  await bench.locator('.draft-name').first().waitFor();
  expect(await rows()).toEqual(['Written after the deletion']);
});

it('none of this made a request or an error', () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(ourErrors(room.browser)).toEqual([]);
});
