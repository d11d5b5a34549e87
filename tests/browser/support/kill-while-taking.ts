import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { contentHash } from '../../../src/pack/compiled/content-hash';
import type { Pack } from '../../../src/pack/schema/index';
import { founded, sealPack } from '../../../src/sharing/seal/seal';
import { publication } from '../../../src/sharing/subscribe/publication';
import type { PackHost } from '../../support/pack-host';
import { folderOf } from '../hands';
import { growingPack } from './growing-pack';
import { part, rowOf } from './keeper-bench';
import { keptRecords, type Records } from './kept-records';
import { killAt, type Met, type Operation, type Ready, type Standing } from './kill-at';
import type { Mortal } from './mortal-browser';

/** Runs of an edition: their number tells which one is whole. */
const runsOf = (edition: number) => 20_000 + edition;

/**
 * Installs one edition after another from files, and takes one after another from a host, in turns, and kills the browser
 * meanwhile. Afterwards the edition before or the new one stands there with all that goes with it, and all else is as it was.
 */
export async function killWhileTaking(mortal: Mortal, host: PackHost, points: number): Promise<Met> {
  const keys = (await crypto.subtle.generateKey('Ed25519', true, ['sign', 'verify'])) as CryptoKeyPair;
  const own = await founded(growingPack('followed', 1, runsOf(1)), keys);
  const at = (edition: number): Pack => {
    return { ...own, ...growingPack('followed', edition, runsOf(edition)), about: { ...own.about, edition } };
  };
  const publish = async (edition: number) => {
    const files = await publication(await sealPack(at(edition), keys), edition > 1 ? [at(edition - 1)] : []);
    host.put(Object.fromEntries(files.map(({ name, text }) => [name, text])));
  };

  async function installing(bench: Page): Promise<Ready> {
    const edition = (await editionOf(bench, 'chosen')) + 1;
    const files = folderOf({ 'pack.json': JSON.stringify(growingPack('chosen', edition, runsOf(edition))) });
    return ready(bench, 'chosen', edition, () => bench.locator(part('pack-file')).setInputFiles(`${files}/pack.json`));
  }

  async function taking(bench: Page): Promise<Ready> {
    const { id } = own.about;
    const edition = (await editionOf(bench, id)) + 1;
    await publish(edition);
    if (edition === 1) {
      await bench.locator(part('follow-address')).fill(`${host.origin}/followed.notice.json`);
      await bench.locator(part('follow-look')).click();
    } else {
      await rowOf(bench, id).locator(part('check')).click();
      await rowOf(bench, id).locator('[data-checking="false"][data-finding="newer"]').waitFor();
      await rowOf(bench, id).locator(part('see')).click();
    }
    const take = bench.locator(part('offer-take'));
    await take.waitFor();
    return ready(bench, id, edition, () => take.click());
  }

  const operations: Operation[] = [
    { name: 'installing', ready: installing },
    { name: 'taking', ready: taking },
  ];
  return killAt(mortal, operations, points);
}

const editionOf = async (bench: Page, id: string) => Number((await keptRecords(bench)).packs?.[id]?.edition ?? 0);

/** What waits for a yes is thrown away when a browser starts, and left out. */
const without = ({ offers: _, ...others }: Records, ...stores: string[]) =>
  Object.fromEntries(Object.entries(others).filter(([name]) => !stores.includes(name)));

async function ready(bench: Page, id: string, edition: number, begin: () => Promise<unknown>): Promise<Ready> {
  const before = await keptRecords(bench);
  return {
    begin,
    shown: () => rowOf(bench, id).getByText(`edition ${edition}`, { exact: true }).waitFor(),
    async look(again): Promise<Standing> {
      const now = await keptRecords(again);
      const isNew = now.packs?.[id]?.edition === edition;
      if (isNew) await expectWhole(now, before, id, edition);
      else expect(without(now)).toEqual(without(before));
      const standing = isNew ? edition : edition - 1;
      if (standing > 0)
        await rowOf(again, id)
          .getByText(String(runsOf(standing)))
          .waitFor();
      return isNew ? 'after' : 'before';
    },
  };
}

async function expectWhole(now: Records, before: Records, id: string, edition: number): Promise<void> {
  const text = String(now.texts?.[id]?.text);
  const hash = await contentHash(text);
  expect(now.packs?.[id]).toMatchObject({ edition, hash });
  expect(JSON.parse(text).about).toMatchObject({ id, edition });
  const isSealed = id !== 'chosen';
  expect(now.known?.[id]?.hash).toBe(isSealed ? hash : undefined);
  expect(now.subscriptions?.[id]?.file).toEqual(
    isSealed ? { edition, sha256: expect.stringMatching(/^[0-9a-f]{64}$/) } : undefined,
  );
  const touched = ['packs', 'texts', 'known', 'subscriptions'];
  expect(without(now, ...touched)).toEqual(without(before, ...touched));
}
