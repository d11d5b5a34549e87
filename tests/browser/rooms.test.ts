import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openRoom, type Room } from './support/browser';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const RUN = `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
  .then(({ violations, passes }) => ({ passes: passes.length, violations: violations.map(({ id, nodes }) => id + ': ' + nodes.map((n) => n.html).join(' | ')) }))`;

let room: Room;
let bench: Page;
beforeAll(async () => {
  room = await openRoom();
  bench = await room.browser.openTab(room.browser.addressOf('workbench.html#drafts'));
});
afterAll(() => room?.close());

/** What each room shows, from empty to full. */
const STATES: [name: string, reach: () => Promise<void>][] = [
  ['drafts-empty', () => bench.locator('[data-part="empty"]').waitFor()],
  [
    'drafts-full',
    async () => {
      await bench.locator('[data-part="new-draft"]').click();
      await bench.locator('#draft-title').fill('Rare Grindlewade Haddercombe heavy duty free arm sewing machine');
      await bench.locator('#draft-description').fill('Made in 1949. Does zigzag. Cast iron. Serial number KD 439114.');
      await bench.locator('#draft-priceText').fill('£395');
      await bench.locator('mark').first().waitFor();
      await bench.locator('[data-kept="kept"]').waitFor();
    },
  ],
  [
    'enquiry-empty',
    async () => {
      await bench.locator('[data-part="to-enquiry"]').click();
      await bench.locator('[data-part="things"]').waitFor();
      await bench.locator('[data-part="ask-form"]').waitFor();
    },
  ],
  ...['platen-circle', 'trade'].map((pack): [string, () => Promise<void>] => [
    `enquiry-question-${pack}`,
    async () => {
      if (await bench.locator('[data-part="other-thing"]').count())
        await bench.locator('[data-part="other-thing"]').click();
      await bench.locator(`[data-thing="${pack}"]`).click();
      await bench.locator('.asked').waitFor();
    },
  ]),
  [
    'enquiry-answered',
    async () => {
      await bench.locator('[data-answer="shuttle"]').click();
      await bench.locator('[data-part="outcome"]').waitFor();
    },
  ],
  ...['KD 439114', '155000', 'KD 4391I4', 'QQQ 1'].map((serial): [string, () => Promise<void>] => [
    `enquiry-${serial}`,
    async () => {
      await bench.locator('#enquiry-serial').fill(serial);
      await bench.keyboard.press('Enter');
      await bench.locator('.verdict', { hasText: serial }).waitFor();
    },
  ]),
  [
    'packs',
    async () => {
      await bench.locator('[data-part="to-packs"]').click();
      await bench.locator('[data-pack-id]').nth(1).waitFor();
    },
  ],
];

describe.each(STATES)('the room in the state %s', (name, reach) => {
  beforeAll(reach);

  it.each(['light', 'dark'] as const)('is accessible as far as axe-core can tell, %s', async (colorScheme) => {
    await bench.emulateMedia({ colorScheme });
    await bench.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    await bench.evaluate(`${axe}; 0`);
    const { passes, violations } = (await bench.evaluate(RUN)) as { passes: number; violations: string[] };
    expect(violations).toEqual([]);
    expect(passes).toBeGreaterThan(10);
  });

  it.each([360, 1100])('needs no scrolling sideways, %i px', async (width) => {
    mkdirSync('.shots', { recursive: true });
    await bench.setViewportSize({ width, height: 800 });
    await bench.emulateMedia({ colorScheme: width === 360 ? 'dark' : 'light' });
    await bench.screenshot({ path: `.shots/bench-${name}-${width}.png`, fullPage: true });
    const { beyond, small } = await bench.evaluate(() => ({
      beyond: document.documentElement.scrollWidth - innerWidth,
      small: [...document.querySelectorAll('main *')].filter(
        (element) =>
          [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()) &&
          Number.parseFloat(getComputedStyle(element).fontSize) < 15,
      ).length,
    }));
    expect(beyond).toBeLessThanOrEqual(0);
    expect(small).toBe(0);
  });
});
