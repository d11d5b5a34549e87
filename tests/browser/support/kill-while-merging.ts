import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { atDesk, bring, deskWith, installed, PASSPHRASE, part, proposed, rowOf, showsRows } from './keeper-bench';
import { keptRecords, type Records } from './kept-records';
import { killAt, type Met, type Operation, type Ready, type Standing } from './kill-at';
import type { Mortal } from './mortal-browser';
import { expectWholeEdition } from './whole-edition';

const RUNS = 5_000;

/**
 * Brings proposals to a desk, decides, seals the next edition, and seals a pack for the first time, in turns, and kills the
 * browser meanwhile. After each, all that is kept is what was kept before, or what the whole operation makes of it.
 */
export async function killWhileMerging(mortal: Mortal, points: number): Promise<Met> {
  const first = await mortal.bench();
  await installed(first, 'kept', RUNS);
  await deskWith(first, 'kept', 0, true);
  const id = await firstSealed(first, 'kept');
  await mortal.kill();
  let turn = 0;

  /** A desk at which nothing lies: what a kill has left there is put away. */
  async function bringing(bench: Page): Promise<Ready> {
    turn += 1;
    await atDesk(bench, id);
    const clear = bench.locator(part('desk-clear'));
    if (await clear.isVisible()) await clear.click();
    await clear.waitFor({ state: 'detached' });
    const files = await proposed(bench, id, turn);
    return ready(bench, {
      begin: () => bring(bench, files),
      shown: () => showsRows(bench, 'no'),
      after: (now) => expect(deskOf(now, id)).toMatchObject({ proposals: { length: files.length }, decisions: [] }),
    });
  }

  async function deciding(bench: Page): Promise<Ready> {
    turn += 1;
    await deskWith(bench, id, turn, false);
    const again = bench.locator(part('decide-again'));
    for (let left = await again.count(); left > 0; left -= 1) {
      await again.first().click();
      await expect.poll(() => again.count()).toBe(left - 1);
    }
    const proposals = deskOf(await keptRecords(bench), id)?.proposals;
    return ready(bench, {
      begin: () => bench.locator(part('accept-all')).click(),
      shown: () => showsRows(bench, 'accept'),
      after: (now) => expect(deskOf(now, id)).toMatchObject({ proposals, decisions: { length: 2 } }),
    });
  }

  async function sealing(bench: Page): Promise<Ready> {
    turn += 1;
    await deskWith(bench, id, turn, true);
    const next = Number((await keptRecords(bench)).packs?.[id]?.edition) + 1;
    return ready(bench, {
      begin: () => bench.locator(part('publish-make')).click(),
      shown: () => rowOf(bench, id).getByText(`edition ${next}`, { exact: true }).waitFor(),
      after: (now) => expectWholeEdition(now, id, next, null),
    });
  }

  async function sealingFirst(bench: Page): Promise<Ready> {
    turn += 1;
    const old = `fresh-${turn}`;
    await installed(bench, old, 50);
    await deskWith(bench, old, turn, true);
    await bench.locator('#passphrase').fill(PASSPHRASE);
    return ready(bench, {
      begin: () => bench.locator(part('publish-make')).click(),
      shown: () => bench.locator(part('published')).waitFor(),
      after: (now) => expectWholeEdition(now, newId(now, old), 2, old),
    });
  }

  const operations: Operation[] = [
    { name: 'bringing', ready: bringing },
    { name: 'deciding', ready: deciding },
    { name: 'sealing the next', ready: sealing },
    { name: 'sealing the first', ready: sealingFirst },
  ];
  return killAt(mortal, operations, points);
}

interface Steps extends Omit<Ready, 'look'> {
  /** Holds what is kept to what the whole operation makes of it. */
  after(now: Records): Promise<void> | void;
}

async function ready(bench: Page, { begin, shown, after }: Steps): Promise<Ready> {
  const before = await keptRecords(bench);
  return {
    begin,
    shown,
    async look(again): Promise<Standing> {
      const now = await keptRecords(again);
      if (JSON.stringify(now) === JSON.stringify(before)) return 'before';
      await after(now);
      for (const [id, { edition }] of Object.entries(now.packs ?? {}))
        await rowOf(again, id).getByText(`edition ${edition}`, { exact: true }).waitFor();
      return 'after';
    },
  };
}

async function firstSealed(bench: Page, old: string): Promise<string> {
  await bench.locator('#passphrase').fill(PASSPHRASE);
  await bench.locator(part('publish-make')).click();
  await bench.locator(part('published')).waitFor();
  return newId(await keptRecords(bench), old);
}

const newId = ({ packs }: Records, old: string) =>
  Object.keys(packs ?? {}).find((id) => id.startsWith(`${old}-`)) ?? '';

const deskOf = ({ desks }: Records, id: string) => desks?.[id];
