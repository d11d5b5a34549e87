import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../src/session/reading';
import { Readings } from '../../../src/session/readings';
import { fakeArea, fakeLock } from './fake-area';
import { sampleHarvest } from './sample-harvest';

const where = { window: 1, tab: 7 };
const day = '2026-06-01';
const read = {
  state: 'read',
  document: 'D1',
  address: 'https://market.example/advert',
  harvest: sampleHarvest(),
} as const;

function setUp(capacity?: number) {
  const area = fakeArea(capacity);
  return { area, readings: new Readings(area, fakeLock()) };
}

describe('readings in session storage', () => {
  it('begin with a number of their own, also for presses at the same moment', async () => {
    const { readings } = setUp();
    const presses = await Promise.all([readings.begin(where, day), readings.begin(where, day)]);
    expect(presses.map(({ number }) => number)).toEqual([1, 2]);
  });

  it('keep what became of the last press', async () => {
    const { readings } = setUp();
    const press = await readings.begin(where, day);
    expect(await readings.finish(press, read)).toBe(true);
    expect(await readings.get(where)).toEqual({ ...where, number: 1, asOf: day, ...read });
  });

  it('drop the answer to an earlier press', async () => {
    const { readings } = setUp();
    const first = await readings.begin(where, day);
    await readings.begin(where, day);
    expect(await readings.finish(first, read)).toBe(false);
    expect((await readings.get(where))?.state).toBe('reading');
  });

  it('drop an answer that comes after the tab was closed', async () => {
    const { readings, area } = setUp();
    const press = await readings.begin(where, day);
    await readings.forget(where);
    expect(await readings.finish(press, read)).toBe(false);
    expect(area.items.size).toBe(0);
  });

  it('outlive the worker: another one goes on from what is stored', async () => {
    const { area } = setUp();
    const press = await new Readings(area, fakeLock()).begin(where, day);
    const other = new Readings(area, fakeLock());
    expect(await other.finish(press, read)).toBe(true);
    expect((await other.begin(where, day)).number).toBe(2);
  });

  it('are marked as left once, and only the press that is meant', async () => {
    const { readings } = setUp();
    const press = await readings.begin(where, day);
    await readings.finish(press, read);
    const done = (await readings.get(where)) as Reading;
    expect(await readings.leave(done)).toBe(true);
    expect(await readings.leave(done)).toBe(false);
    await readings.begin(where, day);
    expect(await readings.leave(done)).toBe(false);
  });

  it('say that a page was too much for the storage', async () => {
    const { readings } = setUp(500);
    const press = await readings.begin(where, day);
    const large = { ...read, harvest: sampleHarvest({ url: 'x'.repeat(600) }) };
    await readings.finish(press, large);
    expect(await readings.get(where)).toMatchObject({ state: 'failed', reason: 'storage' });
  });

  it('move with their tab into another window', async () => {
    const { readings } = setUp();
    const press = await readings.begin(where, day);
    await readings.finish(press, read);
    await readings.move(where.tab, { window: 2, tab: where.tab });
    expect(await readings.get(where)).toBeNull();
    expect((await readings.get({ window: 2, tab: 7 }))?.state).toBe('read');
  });

  it('do not grow without end', async () => {
    const { readings, area } = setUp();
    for (let tab = 1; tab <= 50; tab += 1) {
      const press = await readings.begin({ window: 1, tab }, day);
      await readings.finish(press, read);
    }
    expect(area.items.size).toBeLessThanOrEqual(21);
    expect(await readings.get({ window: 1, tab: 50 })).not.toBeNull();
  });

  it('take nothing from the storage that is not a reading', async () => {
    const { readings, area } = setUp();
    area.items.set('reading/1/7', JSON.stringify({ state: 'read', window: 1, tab: 7, number: 1, harvest: 'no' }));
    expect(await readings.get(where)).toBeNull();
  });
});
