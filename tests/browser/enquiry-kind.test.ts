import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { likelyTexts } from '../../src/text/catalogue/likely';
import { ourErrors, ourRequests, until } from './hands';
import { openRoom, type Room } from './support/browser';

// A shopper without any pack of a club, at the keyboard alone: from the panel's first screen's address to a kind of
// machine with what follows from it.

let room: Room;
let bench: Page;
beforeAll(async () => {
  room = await openRoom({ packs: false });
  bench = await room.browser.openTab(room.browser.addressOf('workbench.html#enquiry'));
  await bench.locator('.question').waitFor();
});
afterAll(() => room?.close());

async function tabTo(selector: string): Promise<void> {
  for (let presses = 0; presses < 60; presses += 1) {
    await bench.keyboard.press('Tab');
    if (await bench.evaluate((wanted) => document.activeElement?.matches(wanted), selector)) return;
  }
  throw new Error(`the focus never came to ${selector}`);
}
const settled = () => bench.locator('[data-part="machine"][data-pending="false"]').waitFor();
const focused = () => bench.evaluate(() => document.activeElement?.className ?? '');
const likely = () => bench.locator('[data-part="likely"]').textContent();
const asked = () => bench.locator('.asked').getAttribute('data-question');
/** The number beside an answer's words is its key. */
const keyOf = async (answer: string) =>
  (await bench.locator(`[data-answer="${answer}"]`).getAttribute('aria-keyshortcuts')) ?? '';

it('begins with one drawn question, and makes nothing of nothing', async () => {
  expect(await bench.locator('.question').textContent()).toBe('Where does the bobbin go in?');
  expect(await bench.locator('svg.outline [data-part="mark"]').count()).toBe(1);
  expect(await bench.locator('.answer svg[data-drawn="own"]').count()).toBeGreaterThanOrEqual(4);
  expect(await bench.locator('[data-part="outcome"]').count()).toBe(0);
});

it('answers it by one key, and goes on at the next question', async () => {
  await tabTo('[data-answer]');
  await bench.keyboard.press(await keyOf('shuttle'));
  await bench.locator('[data-seen="trade/loading"]').waitFor();
  await settled();
  expect(await focused()).toBe('question');
  expect(await asked()).not.toBe('trade/loading');
  expect(await likely()).toContain('long bobbin');
});

it('comes to a kind, what follows, what fits, what to ask and what to mind', async () => {
  const size = async () => (await asked()) === 'trade/size';
  for (let question = 0; question < 8 && !(await size()); question += 1) {
    const before = await asked();
    if (before === null) break;
    const drive = before === 'trade/drive' ? await keyOf('treadle') : '';
    const mechanism = before === 'trade/mechanism' ? await keyOf('vibrating-shuttle') : '';
    await bench.keyboard.press(drive || mechanism || '0');
    await until('the next question', async () => (await asked()) !== before);
    await settled();
  }
  if (await size()) {
    await bench.keyboard.press(await keyOf('full-size'));
    await bench.locator('[data-seen="trade/size"]').waitFor();
    await settled();
  }
  expect(await bench.locator('.likely-name').textContent()).toBe('Full size, cast iron, vibrating shuttle');
  const text = await bench.locator('[data-part="outcome"]').textContent();
  for (const each of ['cast iron', 'long bobbin', 'usually 10 to 16 kg', 'low-shank feet', 'industrial', 'Lift it'])
    expect(text).toContain(each);
  expect(await bench.locator('[data-part="questions"] li').count()).toBeGreaterThan(0);
});

it('explains a term on demand', async () => {
  await tabTo('[data-follows="trade/shank"] summary');
  await bench.keyboard.press('Enter');
  expect(await bench.locator('[data-follows="trade/shank"] details[open] p').isVisible()).toBe(true);
});

it('shows its numbers behind "how do we know?" alone', async () => {
  const numbers = bench.locator('[data-part="how-likely"] .numbers').first();
  expect(await numbers.isVisible()).toBe(false);
  await tabTo('[data-part="how-likely"] > summary');
  await bench.keyboard.press('Enter');
  expect(await numbers.isVisible()).toBe(true);
  expect(await numbers.textContent()).toMatch(/\d in 100/);
});

it('has the whole answer as text, and copies it', async () => {
  await tabTo('[data-part="copy-answer"]');
  await bench.keyboard.press('Enter');
  await bench.locator('[data-part="copy-answer-outcome"]', { hasText: /./ }).waitFor();
  const text = await bench.locator('[data-part="written-text"] textarea').inputValue();
  for (const each of ['Full size, cast iron, vibrating shuttle', likelyTexts.kinds.type, 'bobbin: long bobbin'])
    expect(text).toContain(each);
});

it('takes an answer back, and begins again', async () => {
  await bench.locator('.question').focus();
  await tabTo('[data-seen="trade/loading"] button');
  await bench.keyboard.press('Enter');
  await bench.locator('[data-seen="trade/loading"]').waitFor({ state: 'detached' });
  await settled();
  expect(await focused()).toBe('question');
  await tabTo('[data-part="start-again"]');
  await bench.keyboard.press('Enter');
  await bench.locator('[data-part="outcome"]').waitFor({ state: 'detached' });
  await settled();
  expect(await asked()).toBe('trade/loading');
  expect(await focused()).toBe('question');
  expect(await bench.locator('[data-seen]').count()).toBe(0);
});

it('goes on with a number in the same answer, once a club’s pack is there', async () => {
  await bench.locator('[data-part="pack-file"]').setInputFiles('fixtures/packs/grindlewade-circle.json');
  await bench.locator('[data-part="ask-form"]').waitFor();
  await bench.locator('#enquiry-serial').fill('KD 439114');
  await bench.keyboard.press('Enter');
  await bench.locator('[data-part="enquiry"][data-verdict="found"]').waitFor();
  // A number alone doesn't say who made it: the name does.
  await bench.locator('[data-maker="Grindlewade"]').click();
  await bench.locator('[data-part="outcome"]', { hasText: 'Haddercombe' }).waitFor();
  await settled();
  const text = await bench.locator('[data-part="written-text"] textarea').inputValue();
  for (const each of ['Haddercombe', 'KD439114', 'KD433001']) expect(text).toContain(each);
});

it('none of this made a request or an error', () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(ourErrors(room.browser)).toEqual([]);
});
