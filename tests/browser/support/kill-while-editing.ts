import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { folderOf } from '../hands';
import { growingPack } from './growing-pack';
import { keptRecords, type Records } from './kept-records';
import { killAt, type Met, type Operation, type Ready, type Standing } from './kill-at';
import type { Mortal } from './mortal-browser';

const ID = 'growing';
const NUMBER = 'N00000105';
const ENTRY = 'n|00000101|00000110';
const part = (name: string) => `[data-part="${name}"]`;
const row = (page: Page) => page.locator(`[data-pack-id="${ID}"]`);

/** What stands in the layer, if there is one. */
const layerOf = (records: Records) => records.layers?.[ID];

/**
 * Corrects a run's year, corrects it again, and takes the correction back, in turns, and kills the browser meanwhile. After
 * each the layer is the one before or the new one, all else is as it was, and the pack says what the layer says.
 */
export async function killWhileEditing(mortal: Mortal, points: number): Promise<Met> {
  const files = folderOf({ 'pack.json': JSON.stringify(growingPack(ID, 1, 20_000)) });
  const first = await mortal.bench();
  await first.locator(part('pack-file')).setInputFiles(`${files}/pack.json`);
  await row(first).waitFor();
  const [hash] = Object.values((await keptRecords(first)).packs ?? {}).map((pack) => pack.hash);
  let year = 1850;

  async function corrected(bench: Page): Promise<Ready> {
    const before = await keptRecords(bench);
    year += 1;
    const mine = year;
    await openForm(bench);
    const field = bench.locator('[data-field="year"] input');
    await field.fill(String(mine));
    const change = { do: 'change', part: 'serials.runs', entry: ENTRY, field: ['year'], now: mine };
    const layer = { id: ID, base: { edition: 1, hash }, changes: [change] };
    return {
      begin: () => field.press('Enter'),
      shown: () => bench.locator(part('own-changes')).getByText(String(mine)).waitFor(),
      look: (again) => standing(again, before, layer),
    };
  }

  async function takenBack(bench: Page): Promise<Ready> {
    // The kill of the one before may have left nothing to take back.
    if (layerOf(await keptRecords(bench)) === undefined) {
      const { begin, shown } = await corrected(bench);
      await begin();
      await shown();
    } else await row(bench).locator(part('own-open')).click();
    const before = await keptRecords(bench);
    const back = bench.locator(part('own-back'));
    await back.waitFor();
    return {
      begin: () => back.click(),
      shown: () => back.waitFor({ state: 'detached' }),
      look: (again) => standing(again, before, undefined),
    };
  }

  const operations: Operation[] = [
    { name: 'correcting', ready: corrected },
    { name: 'correcting again', ready: corrected },
    { name: 'taking back', ready: takenBack },
  ];
  await mortal.kill();
  return killAt(mortal, operations, points);
}

async function openForm(bench: Page): Promise<void> {
  await row(bench).locator(part('own-open')).click();
  await bench.locator(part('own-sought')).fill(NUMBER);
  await bench.locator(part('own-entry')).click();
  await bench.locator(part('own-form')).waitFor();
}

async function standing(bench: Page, before: Records, after: unknown): Promise<Standing> {
  const now = await keptRecords(bench);
  const layer = layerOf(now);
  const is = JSON.stringify(layer) === JSON.stringify(layerOf(before)) ? 'before' : 'after';
  if (is === 'before') expect(now).toEqual(before);
  else {
    expect(layer).toEqual(after);
    expect({ ...now, layers: null }).toEqual({ ...before, layers: null });
  }
  await saysWhatIsKept(bench, layer);
  return is;
}

/** The enquiry is answered by pack and layer compiled together. */
async function saysWhatIsKept(bench: Page, layer: Records[string][string] | undefined): Promise<void> {
  await bench.locator(part('to-enquiry')).click();
  await bench.locator('#enquiry-serial').fill(NUMBER);
  await bench.keyboard.press('Enter');
  const answer = bench.locator('[data-part="enquiry"][data-verdict="found"]');
  await answer.waitFor();
  const [change] = (layer?.changes ?? []) as { now: number }[];
  const said = await answer.textContent();
  if (change) expect(said).toContain(String(change.now));
  else expect(said).not.toMatch(/\b18\d\d\b/);
}
