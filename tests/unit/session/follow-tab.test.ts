import { beforeEach, describe, expect, it } from 'vitest';
import { followTab, resumeReadings } from '../../../src/session/follow-tab';
import { readTab, type TabReach } from '../../../src/session/read-tab';
import { Readings } from '../../../src/session/readings';
import { fakeArea, fakeLock } from './fake-area';
import { sampleHarvest } from './sample-harvest';
import { tabShowing, url, where } from './tab-showing';

const day = '2026-06-01';
const tomorrow = '2026-06-02';
const refuses = async () => {
  throw new Error('Cannot access contents of the page');
};

let readings: Readings;
let changes: number;
beforeEach(() => {
  readings = new Readings(fakeArea(), fakeLock());
  changes = 0;
});

async function followed(reach: TabReach) {
  await followTab(where, tomorrow, reach, readings, async () => {
    changes += 1;
  });
  return readings.get(where);
}

/** A tab whose document can take another address, or give way to another document. */
function movingTab() {
  const now = { document: 'D1', address: url };
  const order: string[] = [];
  const reach = tabShowing({
    look: async () => ({ ...now, contentType: 'text/html' }),
    shows: async (_tab, { document, address }) => document === now.document && address === now.address,
    settled: async () => void order.push('settled'),
    collect: async (_tab, document) => {
      order.push('collect');
      return { document, answer: sampleHarvest({ url: now.address }) };
    },
  });
  return { now, order, reach };
}

describe('a tab in which something happens', () => {
  it('keeps its reading while it shows the same document at the same address', async () => {
    const { reach } = movingTab();
    await readTab(where, url, day, reach, readings);
    expect(await followed(reach)).toMatchObject({ state: 'read', number: 1, asOf: day });
    expect(changes).toBe(0);
  });

  it('is read anew, at rest, where its document has taken another address of its site', async () => {
    const { now, order, reach } = movingTab();
    await readTab(where, url, day, reach, readings);
    now.address = 'https://market.example/other';
    expect(await followed(reach)).toMatchObject({
      state: 'read',
      number: 2,
      asOf: tomorrow,
      address: now.address,
      harvest: { url: now.address },
    });
    expect(order).toEqual(['collect', 'settled', 'collect']);
    expect(changes).toBe(1);
  });

  it.each([
    ['another document', { document: 'D2', address: url }],
    ['another document at another address', { document: 'D2', address: 'https://market.example/other' }],
    ['another site', { document: 'D1', address: 'https://elsewhere.example/advert' }],
  ])('has left what was read where it shows %s', async (_what, change) => {
    const { now, reach } = movingTab();
    await readTab(where, url, day, reach, readings);
    Object.assign(now, change);
    expect(await followed(reach)).toEqual({ ...where, number: 1, asOf: day, state: 'left' });
    expect(changes).toBe(1);
  });

  it('has left what was read where the browser no longer lets us look', async () => {
    const { now, reach } = movingTab();
    await readTab(where, url, day, reach, readings);
    now.address = 'https://market.example/other';
    expect(await followed({ ...reach, look: refuses })).toMatchObject({ state: 'left' });
  });

  it('is read once more where it moves on while it is read', async () => {
    const { now, reach } = movingTab();
    await readTab(where, url, day, reach, readings);
    now.address = 'https://market.example/2';
    let moves = 2;
    const settled = async () => {
      moves -= 1;
      if (moves > 0) now.address = 'https://market.example/3';
    };
    const collect: TabReach['collect'] = async (tab, document) => {
      const answered = await reach.collect(tab, document);
      if (moves === 1) now.address = 'https://market.example/4';
      return answered;
    };
    expect(await followed({ ...reach, settled, collect })).toMatchObject({ state: 'read', address: now.address });
    expect(now.address).toBe('https://market.example/4');
  });

  it('is given up where it never keeps still', async () => {
    const { now, reach } = movingTab();
    await readTab(where, url, day, reach, readings);
    let moves = 0;
    const shows = async () => {
      moves += 1;
      now.address = `https://market.example/${moves}`;
      return false;
    };
    expect(await followed({ ...reach, shows })).toMatchObject({ state: 'left' });
    expect(moves).toBeLessThan(10);
  });

  it('is read once, however many events tell of one move', async () => {
    const { now, order, reach } = movingTab();
    await readTab(where, url, day, reach, readings);
    now.address = 'https://market.example/other';
    await Promise.all([followed(reach), followed(reach), followed(reach)]);
    expect(order.filter((step) => step === 'collect')).toHaveLength(2);
    expect(await readings.get(where)).toMatchObject({ state: 'read', number: 2 });
  });

  it('keeps nothing of a tab that was closed meanwhile', async () => {
    const { now, reach } = movingTab();
    await readTab(where, url, day, reach, readings);
    now.address = 'https://market.example/other';
    expect(await followed({ ...reach, settled: () => readings.forget(where) })).toBeNull();
  });

  it('ends a refusal too: another page may be read', async () => {
    await readTab(where, url, day, tabShowing({ look: refuses }), readings);
    expect(await followed(tabShowing())).toMatchObject({ state: 'left' });
  });

  it('has nothing to follow where nothing was read, or a reading is under way', async () => {
    expect(await followed(tabShowing())).toBeNull();
    await readings.begin(where, day);
    expect(await followed(tabShowing({ shows: async () => false }))).toMatchObject({ state: 'reading' });
  });
});

describe('a worker that begins', () => {
  it('brings to its end what the one before has left undone', async () => {
    await readings.begin(where, day);
    await resumeReadings(async () => url, tabShowing(), readings);
    expect(await readings.get(where)).toMatchObject({ state: 'read', number: 1, asOf: day });
  });

  it('says what it may not read, by the tab’s address', async () => {
    await readings.begin(where, day);
    await resumeReadings(async () => 'file:///advert.html', tabShowing({ look: refuses }), readings);
    expect(await readings.get(where)).toMatchObject({ state: 'refused', reason: 'file' });
  });

  it('touches nothing that has come to its end', async () => {
    await readTab(where, url, day, tabShowing(), readings);
    await resumeReadings(async () => url, tabShowing({ collect: refuses }), readings);
    expect(await readings.get(where)).toMatchObject({ state: 'read' });
  });
});
