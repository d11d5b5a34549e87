import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { outdatedTexts } from '../../src/text/catalogue/outdated';
import { press, seenErrors, waitForScreen } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { OWN_PAGE } from './support/differences';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const RUN = `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
  .then(({ violations, passes }) => ({ passes: passes.length, violations: violations.map(({ id, nodes }) => id + ': ' + nodes.map((n) => n.html).join(' | ')) }))`;
const OPEN_ALL = `for (const details of document.querySelectorAll('details')) details.open = true; 0`;

let room: Room<Driven>;
beforeAll(async () => {
  room = await openTestedRoom();
});
afterAll(() => room?.close());

async function expectAccessible(where: { evaluate(script: string): Promise<unknown> }): Promise<void> {
  await where.evaluate(OPEN_ALL);
  await where.evaluate(`${axe}; 0`);
  const { passes, violations } = (await where.evaluate(RUN)) as { passes: number; violations: string[] };
  expect(passes).toBeGreaterThan(5);
  expect(violations).toEqual([]);
}

const open = (name: string) => room.browser.openTab(room.market.addressOf(`${name}/page.html`));

describe('accessible by WCAG 2.2 AA as far as axe-core can tell', () => {
  it.each([
    ['audit', 'wendelow-industrial-zigzag'],
    ['list', 'adverts-list'],
  ])('the panel with an advert, a list or nothing on offer: %s', async (screen, name) => {
    const page = await open(name);
    const panel = await press(room.browser, page, screen);
    for (const scheme of ['light', 'dark'] as const) {
      await panel.setColourScheme(scheme);
      await expectAccessible(panel);
    }
    await panel.setColourScheme('light');
    await page.close();
  });

  it('the panel where nothing was read, where the page was left, and where none may be read', async () => {
    const page = await open('wendelow-industrial-zigzag');
    const panel = await press(room.browser, page, 'audit');
    await page.reload();
    await waitForScreen(panel, 'left');
    await expectAccessible(panel);
    const other = await room.browser.openTab(OWN_PAGE);
    await waitForScreen(panel, 'waiting');
    await expectAccessible(panel);
    await press(room.browser, other, 'refused');
    await expectAccessible(panel);
    await other.close();
    await page.close();
  });

  it('the enquiry with its first question, and with what comes of an answer', async () => {
    const bench = await room.browser.openTab(room.browser.addressOf('workbench.html#enquiry'));
    await bench.waitForSelector('[data-thing="trade"]', { state: 'attached' });
    await bench.click('[data-thing="trade"]');
    await bench.waitForSelector('.asked', { state: 'attached' });
    await expectAccessible(bench);
    await bench.click('[data-answer="shuttle"]');
    await bench.waitForSelector('[data-part="outcome"]', { state: 'attached' });
    await expectAccessible(bench);
    await bench.close();
  });

  it('the workbench with packs', async () => {
    const bench = await room.browser.openTab(room.browser.addressOf('workbench.html'));
    await bench.waitForSelector('[data-pack-id]', { state: 'attached' });
    await expectAccessible(bench);
    await bench.close();
  });
});

it('a panel that has outlived its program says so, and what to press', async () => {
  const page = await open('wendelow-industrial-zigzag');
  const panel: Panel = await press(room.browser, page, 'audit');
  // What the calls of such a page fail with; browsers close these pages as a rule, so that none can be had here.
  await panel.evaluate(() => void Promise.reject(new Error('Extension context invalidated.')));
  await waitForScreen(panel, 'outdated');
  expect(await panel.text()).toContain(outdatedTexts.panel);
  await expectAccessible(panel);
  await page.close();
});

it('a workbench that has outlived its program says so, and offers to reload', async () => {
  const bench = await room.browser.openTab(room.browser.addressOf('workbench.html'));
  await bench.waitForSelector('[data-pack-id]', { state: 'attached' });
  await bench.evaluate(() => void Promise.reject(new Error('Extension context invalidated.')));
  await bench.waitForSelector('[data-screen="outdated"]', { state: 'attached' });
  expect(await bench.evaluate(() => document.body.textContent)).toContain(outdatedTexts.workbench);
  await expectAccessible(bench);
  await bench.click('button');
  await bench.waitForSelector('[data-pack-id]', { state: 'attached' });
  await bench.close();
});

it('none of this made an error, save the one that was made on purpose', async () => {
  const errors = await seenErrors(room.browser);
  expect(errors.filter(({ text }) => !text.includes('context invalidated'))).toEqual([]);
});
