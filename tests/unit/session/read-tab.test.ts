import { beforeEach, describe, expect, it } from 'vitest';
import { readTab, type TabReach } from '../../../src/session/read-tab';
import { Readings } from '../../../src/session/readings';
import { fakeArea, fakeLock } from './fake-area';
import { sampleHarvest } from './sample-harvest';
import { tabShowing, url, where } from './tab-showing';

const day = '2026-06-01';

const refuses = async () => {
  throw new Error('Cannot access contents of the page');
};

let readings: Readings;
beforeEach(() => {
  readings = new Readings(fakeArea(), fakeLock());
});

async function pressed(reach: TabReach, address: string | undefined = url) {
  await readTab(where, address, day, reach, readings);
  return readings.get(where);
}

describe('one press of the button', () => {
  it('keeps what the reader found, with its document', async () => {
    expect(await pressed(tabShowing())).toMatchObject({
      state: 'read',
      document: 'D1',
      address: url,
      asOf: day,
      harvest: sampleHarvest(),
    });
  });

  it.each([
    ['chrome://settings/', 'browser-page'],
    [undefined, 'browser-page'],
    ['about:blank', 'browser-page'],
    ['file:///home/someone/advert.html', 'file'],
    ['https://shop.example/', 'blocked'],
    ['not an address', 'blocked'],
  ])('says why %s may not be read', async (address, reason) => {
    await readTab(where, address, day, tabShowing({ look: refuses }), readings);
    expect(await readings.get(where)).toMatchObject({ state: 'refused', reason });
  });

  it('asks an ordinary page again that refuses at first', async () => {
    const waits: number[] = [];
    let refusals = 2;
    const reach = tabShowing({
      look: async (tab) => {
        refusals -= 1;
        return refusals >= 0 ? refuses() : tabShowing().look(tab);
      },
      wait: async (milliseconds) => void waits.push(milliseconds),
    });
    expect(await pressed(reach)).toMatchObject({ state: 'read' });
    expect(waits).toEqual([100, 300]);
  });

  it('asks one of the browser’s own pages once', async () => {
    let looks = 0;
    const look = () => {
      looks += 1;
      return refuses();
    };
    await readTab(where, 'chrome://settings/', day, tabShowing({ look }), readings);
    expect(looks).toBe(1);
  });

  it.each(['application/pdf', 'image/png', 'video/mp4'])('does not read a viewer of %s', async (contentType) => {
    const look = async () => ({ document: 'D1', address: url, contentType });
    expect(await pressed(tabShowing({ look }))).toMatchObject({ state: 'refused', reason: 'document' });
  });

  it('drops an answer from another document', async () => {
    const collect = async () => ({ document: 'D2', answer: sampleHarvest({ url: 'https://other.example/' }) });
    expect(await pressed(tabShowing({ collect }))).toEqual({ ...where, number: 1, asOf: day, state: 'left' });
  });

  it('knows a document that went away while it was read', async () => {
    expect(await pressed(tabShowing({ collect: refuses, shows: async () => false }))).toMatchObject({ state: 'left' });
  });

  it('says that the reader failed where the document is still there', async () => {
    expect(await pressed(tabShowing({ collect: refuses }))).toMatchObject({ state: 'failed', reason: 'reader' });
  });

  it.each([
    ['nothing', null],
    ['a text', 'read'],
    ['another schema', { ...sampleHarvest(), schema: 2 }],
    ['a line without text', sampleHarvest({ page: { ...sampleHarvest().page, lines: [{ box: 0 } as never] } })],
    [
      'a box that is no number',
      sampleHarvest({ page: { ...sampleHarvest().page, lines: [{ text: '', box: '0' } as never] } }),
    ],
    ['a harvest of a reader that gave up', sampleHarvest({ url: '' })],
    ['a value beyond all caps', sampleHarvest({ url: 'x'.repeat(500_000) })],
  ])('does not keep %s as an answer', async (_what, answer) => {
    const collect = async (_tab: number, document: string) => ({ document, answer });
    expect(await pressed(tabShowing({ collect }))).toMatchObject({ state: 'failed', reason: 'reader' });
  });

  it('keeps no key that the reader does not have', async () => {
    const answer = JSON.parse(JSON.stringify(sampleHarvest()).replace('{', '{"__proto__":{"x":1},"more":"<img>",'));
    const collect = async (_tab: number, document: string) => ({ document, answer });
    const kept = JSON.stringify(await pressed(tabShowing({ collect })));
    expect(kept).toContain('Corvane');
    expect(kept).not.toContain('more');
    expect(kept).not.toContain('__proto__');
  });
});
