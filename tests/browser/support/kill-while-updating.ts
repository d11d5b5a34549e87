import { setTimeout as sleep } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Pack } from '../../../src/pack/schema/index';
import { founded, sealPack } from '../../../src/sharing/seal/seal';
import { publication } from '../../../src/sharing/subscribe/publication';
import type { PackHost } from '../../support/pack-host';
import type { Room } from './browser';
import { growingPack } from './growing-pack';
import { crash } from './kill-while-installing';

/** Runs of an edition: their number tells which one is whole. */
const runsOf = (edition: number) => 20_000 + edition;

const editionOf = (edition: number) => growingPack('growing', edition, runsOf(edition));

interface KeptAll {
  /** The edition on the shelf; whether its text is that of its hash. */
  edition: number;
  isWhole: boolean;
  /** The edition that is remembered, and the one that was taken from where it is followed. */
  known: number;
  followed: number;
}

/** What is kept of the pack, each store by itself. */
function kept(page: Page, id: string): Promise<KeptAll> {
  return page.evaluate(async (pack) => {
    const db = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('bedplate');
      opening.onsuccess = () => resolve(opening.result);
    });
    const get = (store: string) =>
      new Promise<Record<string, unknown> | undefined>((resolve) => {
        const asking = db.transaction(store).objectStore(store).get(pack);
        asking.onsuccess = () => resolve(asking.result);
      });
    const [head, text, known, followed] = [
      await get('packs'),
      await get('texts'),
      await get('known'),
      await get('subscriptions'),
    ];
    db.close();
    const bytes = new TextEncoder().encode(String(text?.text));
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    const hash = [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
    const file = followed?.file as { edition: number } | undefined;
    return {
      ...{ edition: Number(head?.edition ?? 0), isWhole: head?.hash === hash },
      ...{ known: Number(known?.edition ?? 0), followed: file?.edition ?? 0 },
    };
  }, id);
}

/**
 * Takes one edition after another from a host, and each time kills the background and the process of all our pages at
 * another moment: while the edition is fetched and proved, or after the yes. Afterwards the edition before or the new one
 * stands there, whole, and what is remembered and followed goes with it.
 * @param points how many moments: every other one after the yes
 */
export async function killWhileUpdating(
  room: Room,
  host: PackHost,
  points: number,
): Promise<{ before: number; after: number }> {
  const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  const own = await founded(editionOf(1), keys);
  const { id } = own.about;
  const at = (edition: number): Pack => ({ ...editionOf(edition), about: { ...own.about, edition } });
  const publish = async (edition: number) => {
    const files = await publication(await sealPack(at(edition), keys), edition > 1 ? [at(edition - 1)] : []);
    host.put(Object.fromEntries(files.map(({ name, text }) => [name, text])));
  };
  const part = (page: Page, name: string) => page.locator(`[data-part="${name}"]`);
  const row = (page: Page) => page.locator(`[data-pack-id="${id}"]`);
  const openBench = async () => {
    const page = await room.browser.openTab(room.browser.addressOf('workbench.html'));
    await page.locator('[data-pack-id="trade"]').waitFor();
    return page;
  };

  let bench = await openBench();
  await publish(1);
  await part(bench, 'follow-address').fill(`${host.origin}/growing.notice.json`);
  await part(bench, 'follow-look').click();
  await part(bench, 'offer-take').click();
  await row(bench).locator('[data-part="followed"]').waitFor();
  const met = { before: 0, after: 0 };
  let standing = 1;
  /** Milliseconds that each half takes undisturbed. */
  const whole = { look: 0, take: 0 };
  for (let point = -1; point < points; point++) {
    const edition = standing + 1;
    const isTaking = point % 2 !== 0;
    // The first one is let through, and measured.
    const share = point < 0 ? null : point / points;
    await publish(edition);
    await part(bench, 'check').click();
    await row(bench).locator('[data-checking="false"][data-finding="newer"]').waitFor();
    let begun = Date.now();
    await part(bench, 'see').click();
    if (share === null || isTaking) {
      const ended = ['offered', 'nothing-new', 'failed', 'refused'].map((state) => `[data-state="${state}"]`).join();
      await row(bench).locator(ended).waitFor();
      expect(await row(bench).locator('[data-part="looked"]').getAttribute('data-state')).toBe('offered');
      whole.look ||= Date.now() - begun;
      begun = Date.now();
      await part(bench, 'offer-take').click();
      if (share === null) {
        await row(bench).getByText(`edition ${edition}`, { exact: true }).waitFor();
        whole.take = Date.now() - begun;
        standing = edition;
        continue;
      }
    }
    await sleep((isTaking ? whole.take : whole.look) * share);
    // The process first: stopping the background takes longer than a yes does.
    await crash(bench);
    await room.browser.stopWorker();
    bench = await openBench();
    await row(bench).waitFor();
    const now = await kept(bench, id);
    const is = now.edition === edition ? edition : standing;
    expect(now).toEqual({ edition: is, isWhole: true, known: is, followed: is });
    expect(await row(bench).textContent()).toContain(String(runsOf(is)));
    met[is === edition ? 'after' : 'before'] += 1;
    standing = is;
  }
  await bench.close();
  return met;
}
