import { setTimeout as sleep } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { folderOf } from '../hands';
import type { Room } from './browser';
import { growingPack } from './growing-pack';

/** Runs of an edition: their number tells which one is whole. */
const runsOf = (edition: number) => 20_000 + edition;

const row = (page: Page) => page.locator('[data-pack-id="growing"]');

async function openBench(room: Room): Promise<Page> {
  const page = await room.browser.openTab(room.browser.addressOf('workbench.html'));
  await page.locator('[data-pack-id="trade"]').waitFor();
  return page;
}

/** Which edition is kept, or 0; that its text is that of its hash, whatever was cut off. */
async function kept(page: Page): Promise<{ edition: number; isWhole: boolean }> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('bedplate');
      opening.onsuccess = () => resolve(opening.result);
    });
    const get = (store: string) =>
      new Promise<{ edition: number; hash: string; text: string } | undefined>((resolve) => {
        const asking = db.transaction(store).objectStore(store).get('growing');
        asking.onsuccess = () => resolve(asking.result);
      });
    const [pack, text] = [await get('packs'), await get('texts')];
    db.close();
    if (!pack || !text) return { edition: 0, isWhole: pack === undefined && text === undefined };
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text.text)));
    const hash = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
    return { edition: pack.edition, isWhole: hash === pack.hash };
  });
}

/** Ends the process of our pages at once, with all its threads, as the browser does when it runs out of memory. */
export async function crash(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  // It never answers: there is nobody left to.
  void session.send('Page.crash').catch(() => {});
  await crashed;
  await page.close();
}

/**
 * Installs one edition after another, and each time kills the background and the process of all our pages at another
 * moment, from the choice of the file on. Afterwards the edition before or the new one stands there, whole, and answers.
 * @param points how many moments, spread over the time that an installation takes undisturbed
 */
export async function killWhileInstalling(room: Room, points: number): Promise<{ before: number; after: number }> {
  const files = folderOf(
    Object.fromEntries(
      Array.from({ length: points + 1 }, (_, i) => [
        `${i + 1}.json`,
        JSON.stringify(growingPack('growing', i + 1, runsOf(i + 1))),
      ]),
    ),
  );
  const choose = (page: Page, edition: number) =>
    page.locator('[data-part="pack-file"]').setInputFiles(`${files}/${edition}.json`);
  let bench = await openBench(room);
  const begun = Date.now();
  await choose(bench, 1);
  await row(bench).waitFor();
  const whole = Date.now() - begun;
  const met = { before: 0, after: 0 };
  let standing = 1;
  for (let point = 0; point < points; point++) {
    const edition = point + 2;
    await choose(bench, edition);
    await sleep((whole * point) / points);
    await room.browser.stopWorker();
    await crash(bench);
    bench = await openBench(room);
    const { edition: now, isWhole } = await kept(bench);
    expect({ edition: now, isWhole }).toEqual({ edition: now === edition ? edition : standing, isWhole: true });
    expect(await row(bench).textContent()).toContain(String(runsOf(now)));
    met[now === edition ? 'after' : 'before'] += 1;
    standing = now;
  }
  await bench.locator('[data-part="to-enquiry"]').click();
  await bench.locator('#enquiry-serial').fill('N00000105');
  await bench.keyboard.press('Enter');
  await bench.locator('[data-part="enquiry"][data-verdict="found"]').waitFor();
  await bench.close();
  return met;
}
