import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import type { Draft } from '../../src/listing/types';
import { draftRoomTexts as texts } from '../../src/text/catalogue/draft-room';
import { ourRequests, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { keysOf, tabTo } from './support/keyboard';
import { type OwnPage, ownPage } from './support/page';

const example = JSON.parse(readFileSync('fixtures/drafts/hopeful-haddercombe.json', 'utf8')) as Draft;
const FIELDS = ['title', 'description', 'priceText', 'conditionText', 'serialText'] as const;

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom();
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html#drafts')));
});
afterAll(() => room?.close());

const part = (name: string) => `[data-part="${name}"]`;
const field = (name: string) => `#draft-${name}`;
const kept = () => bench.shows('[data-part="kept"][data-kept="kept"]');
const rows = () => bench.texts('.draft-name');
const isListed = (count: number) => until(`${count} drafts`, async () => (await rows()).length === count);

it('says what to do where there is no draft yet', async () => {
  await bench.shows(part('empty'));
  expect(await bench.text(part('empty'))).toBe(texts.empty);
});

it('audits a draft as it is typed, by keyboard alone', async () => {
  await bench.focus(part('new-draft'));
  await bench.press('Enter');
  await until('the title has the focus', () => bench.isFocused(field('title')));
  for (const name of FIELDS) {
    if (name !== 'title') await tabTo(keysOf(bench.tab), field(name));
    await bench.tab.keyboard.type(example[name] ?? '');
  }
  await bench.shows('[data-finding][data-standing="disproved"]');
  const marked = await bench.texts('mark[data-standing="disproved"]');
  expect(marked.join(' | ').toLowerCase()).toContain('free arm');
});

it('leads from marked words to their finding, and lays the marks exactly under the words', async () => {
  await bench.focus('[data-field="description"] .mark-links li[data-standing="disproved"] a');
  await bench.press('Enter');
  await until('the finding has the focus', () => bench.isFocused('[data-standing="disproved"]'));
  const sizes = await bench.tab.evaluate(() =>
    [...document.querySelectorAll('.marked')].map((box) => {
      const [under, over] = [...box.children] as HTMLElement[];
      if (!under || !over) throw new Error('a field without its two layers');
      return [over.scrollHeight - over.clientHeight, under.offsetHeight - over.offsetHeight];
    }),
  );
  expect(sizes.length).toBeGreaterThan(2);
  expect(sizes).toEqual(sizes.map(() => [0, 0]));
});

it('keeps drafts over a reload, lists them by title and renames them with it', async () => {
  await kept();
  await bench.reload();
  await bench.click('.draft-name', 'Haddercombe');
  await until('the text is there', async () => (await bench.valueOf(field('description'))) === example.description);
  await bench.fill(field('title'), 'Renamed sewing machine');
  await kept();
  expect(await rows()).toEqual(['Renamed sewing machine']);
  await bench.click(part('new-draft'));
  await until('the new one is open', async () => (await bench.valueOf(field('title'))) === '');
  await bench.fill(field('description'), 'A second one');
  await kept();
  expect(await rows()).toEqual(['A second one', 'Renamed sewing machine']);
  await bench.reload();
  await isListed(2);
  expect(await rows()).toEqual(['A second one', 'Renamed sewing machine']);
});

it('deletes a draft and puts it back', async () => {
  await bench.click(part('remove-draft'));
  await bench.shows(part('undo-draft'));
  expect(await rows()).toEqual(['Renamed sewing machine']);
  await bench.click(part('undo-draft'));
  await isListed(2);
  await bench.reload();
  await isListed(2);
});

it('keeps what was seen of the thing with its draft, and with no other one', async () => {
  await bench.click(part('new-draft'));
  await until('the new one is open', () => bench.isFocused(field('title')));
  await bench.fill(field('title'), 'Treadle sewing machine');
  await kept();
  await bench.shows('.asked');
  await bench.click('.answer');
  await bench.shows('[data-seen]');
  await bench.reload();
  await bench.click('.draft-name', 'Treadle');
  await bench.shows('[data-seen]');
  await bench.click('.draft-name', 'Renamed');
  await bench.lacks('[data-seen]');
  await bench.shows('[data-part="summary"]');
  const remove = () => bench.click(part('remove-draft'), 'Treadle');
  await remove();
  await bench.click(part('undo-draft'));
  await isListed(3);
  await bench.click('.draft-name', 'Treadle');
  await bench.click('[data-seen] button');
  await bench.lacks('[data-seen]');
  await remove();
  await isListed(2);
});

it('copies a draft out as plain text', async () => {
  await bench.click('.draft-name', 'Renamed');
  // The audit, once it is there, moves what stands below it.
  await bench.shows('[data-part="summary"]');
  await bench.click(part('copy-draft'));
  await bench.shows(part('copy-outcome'), texts.copied);
  const text = await room.browser.copied();
  expect(text).toContain('Renamed sewing machine\n\nRare Haddercombe');
  expect(text).toContain(texts.row(texts.fields.priceText, example.priceText ?? ''));
});

it('gives way when what it keeps is deleted under it, and goes on', async () => {
  await bench.tab.evaluate(
    () =>
      new Promise<void>((resolve, reject) => {
        const deleting = indexedDB.deleteDatabase('bedplate');
        deleting.onsuccess = () => resolve();
        deleting.onerror = () => reject(deleting.error);
      }),
  );
  await bench.fill(field('title'), 'Written after the deletion');
  await kept();
  await bench.reload();
  await isListed(1);
  expect(await rows()).toEqual(['Written after the deletion']);
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
