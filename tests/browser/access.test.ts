import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Panel } from '../../src/cli/demo/panel';
import { folderOf, press } from './hands';
import { openRoom, type Room } from './support/browser';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
/** All rules of WCAG 2.0 to 2.2, levels A and AA, and what axe-core counts as good practice. */
const RUN = `axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] })
  .then(({ violations, passes }) => ({ passes: passes.length, violations: violations.map(({ id, nodes }) => id + ': ' + nodes.map((n) => n.html).join(' | ')) }))`;

interface Result {
  passes: number;
  violations: string[];
}

const OPEN_ALL = `for (const details of document.querySelectorAll('details')) details.open = true`;

let room: Room;
let page: Page;
let panel: Panel;
beforeAll(async () => {
  room = await openRoom();
  page = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  panel = await press(room.browser, page, 'audit');
});
afterAll(() => room?.close());

async function violationsIn(where: { evaluate(script: string): Promise<unknown> }): Promise<string[]> {
  await where.evaluate(`${axe}; 0`);
  const { passes, violations } = (await where.evaluate(RUN)) as Result;
  expect(passes).toBeGreaterThan(10);
  return violations;
}

describe('accessible by WCAG 2.2 AA as far as axe-core can tell', () => {
  it.each(['light', 'dark'] as const)('the panel, %s', async (scheme) => {
    await panel.setColourScheme(scheme);
    expect(await violationsIn(panel)).toEqual([]);
    await panel.evaluate(OPEN_ALL);
    expect(await violationsIn(panel)).toEqual([]);
    await panel.setColourScheme('light');
  });

  it.each(['light', 'dark'] as const)('the panel with a question and an answer, %s', async (scheme) => {
    const other = await room.browser.openTab(room.market.addressOf('oxlebarrow-honest/page.html'));
    await press(room.browser, other, 'audit');
    await panel.setColourScheme(scheme);
    await panel.waitForSelector('.asked');
    await panel.evaluate(OPEN_ALL);
    expect(await violationsIn(panel)).toEqual([]);
    await panel.click('.answer');
    await panel.waitForSelector('[data-seen]');
    await panel.evaluate(OPEN_ALL);
    expect(await violationsIn(panel)).toEqual([]);
    await panel.click('[data-seen] button');
    await panel.waitFor(`!document.querySelector('[data-seen]')`);
    await panel.setColourScheme('light');
    await other.close();
    await page.bringToFront();
    await panel.waitFor(`document.querySelector('h1').textContent.includes('Industrial')`);
  });

  it.each(['light', 'dark'] as const)('the workbench with packs and issues, %s', async (colorScheme) => {
    const bench = await room.browser.openTab(room.browser.addressOf('workbench.html'));
    await bench.emulateMedia({ colorScheme });
    await bench.locator('[data-pack-id]').nth(1).waitFor();
    await bench
      .locator('[data-part="pack-file"]')
      .setInputFiles(`${folderOf({ 'bad.json': '{"schema":2}' })}/bad.json`);
    await bench.locator('[data-part="refused-file"]').waitFor();
    await bench.evaluate(OPEN_ALL);
    expect(await violationsIn(bench)).toEqual([]);
    mkdirSync('.shots', { recursive: true });
    for (const width of [360, 1000]) {
      await bench.setViewportSize({ width, height: 800 });
      await bench.screenshot({ path: `.shots/workbench-${width}-${colorScheme}.png`, fullPage: true });
      expect(await bench.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    }
    await bench.close();
  });
});

describe('by keyboard alone', () => {
  /** Presses Tab until the focus is on what the expression names. */
  async function tabTo(selector: string): Promise<void> {
    for (let presses = 0; presses < 200; presses += 1) {
      await panel.press('Tab');
      if (await panel.evaluate(`document.activeElement?.matches(${JSON.stringify(selector)}) ?? false`)) return;
    }
    throw new Error(`the focus never came to ${selector}`);
  }

  it('opens what stands behind a disclosure, with the focus in sight', async () => {
    await panel.evaluate(`for (const details of document.querySelectorAll('details')) details.open = false`);
    await tabTo('[data-part="how"] > summary');
    const outline = await panel.evaluate(() => getComputedStyle(document.activeElement as Element).outlineWidth);
    expect(Number.parseFloat(outline)).toBeGreaterThanOrEqual(2);
    await panel.press('Enter');
    expect(await panel.evaluate(`document.activeElement.parentElement.open`)).toBe(true);
  });

  it('copies the message to the seller', async () => {
    await tabTo('[data-part="copy"]');
    await panel.press('Enter');
    await panel.waitFor(`document.querySelector('[data-part="copy-outcome"]').textContent !== ''`);
    const message = await panel.evaluate(`document.querySelector('[data-part="message"] textarea').value`);
    await room.browser.context.grantPermissions(['clipboard-read'], { origin: room.market.origin });
    await page.bringToFront();
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(message);
  });
});

it('keeps text large, and targets large enough to hit', async () => {
  const { sizes, targets } = (await panel.evaluate(() => ({
    sizes: [...document.querySelectorAll('main *')]
      .filter((element) => [...element.childNodes].some((node) => node.nodeType === 3 && node.textContent?.trim()))
      .map((element) => Number.parseFloat(getComputedStyle(element).fontSize)),
    targets: [...document.querySelectorAll('a, button, summary')].map(
      (element) => element.getBoundingClientRect().height,
    ),
  }))) as { sizes: number[]; targets: number[] };
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(15);
  expect(Math.min(...targets)).toBeGreaterThanOrEqual(24);
});
