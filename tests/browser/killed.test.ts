import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven, Tab } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { panelTexts as texts } from '../../src/text/catalogue/panel';
import { press, seenErrors, waitForScreen } from './hands';
import { openTestedRoom, type Room } from './support/browser';

// What a browser may end while the panel is open: the background, and the engine's thread. The panel goes on or says what
// is so, and the next press works. (Whoever ends the whole process of our pages takes the panel with it: Chromium closes
// it and turns the extension off until its user turns it on again; Firefox leaves an empty side bar to be closed.)

let room: Room<Driven>;
let page: Tab;
let panel: Panel;
beforeAll(async () => {
  room = await openTestedRoom();
  page = await room.browser.openTab(room.market.addressOf('oxlebarrow-honest/page.html'));
  panel = await press(room.browser, page, 'audit');
  await panel.waitForSelector('.asked');
});
afterAll(() => room?.close());

const settled = () => panel.waitForSelector('[data-part="settle"][aria-busy="false"]');
const seen = (count: number) => panel.waitFor(`document.querySelectorAll('[data-seen]').length === ${count}`);

async function answer(): Promise<void> {
  await panel.click('.answer');
  await seen(1);
  await settled();
}
async function takeBack(): Promise<void> {
  await panel.click('[data-seen] button');
  await seen(0);
  await settled();
}

/** Another advert is read by a press, and the first one is still there behind it. */
async function nextPressWorks(): Promise<void> {
  const other = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
  await press(room.browser, other, 'audit');
  await panel.waitFor(`document.querySelector('h1').textContent.includes('Industrial')`);
  await other.close();
  await page.bringToFront();
  await panel.waitFor(`document.querySelector('h1').textContent.includes('Oxlebarrow')`);
}

describe('the background is stopped under an open panel', () => {
  it('which takes answers and follows its packs without it', async () => {
    await room.browser.stopWorker();
    await page.bringToFront();
    await waitForScreen(panel, 'audit');
    await answer();
    const bench = await room.browser.openTab(room.browser.addressOf('workbench.html'));
    await bench.waitForSelector('[data-pack-id="trade"]', { state: 'attached' });
    const speaks = (pack: string) => `document.querySelector('[data-part="packs"] [data-pack-id="${pack}"]')`;
    await bench.click('[data-pack-id="trade"] input[type="checkbox"]');
    await bench.waitForSelector('[data-pack-id="trade"][data-on="false"]', { state: 'attached' });
    await bench.click('[data-pack-id="trade"] input[type="checkbox"]');
    await bench.waitForSelector('[data-pack-id="trade"][data-on="true"]', { state: 'attached' });
    await bench.close();
    await page.bringToFront();
    await panel.waitFor(speaks('trade'));
    await seen(1);
  });

  it('and starts again with the next press', async () => {
    await room.browser.stopWorker();
    await page.bringToFront();
    await nextPressWorks();
  });
});

describe('the thread of the engine ends under an open panel', () => {
  /** From now on the panel's thread is in reach, and ends as one does that has run out of memory. */
  const CATCH = `{
    const send = Worker.prototype.postMessage;
    globalThis.endsOver = 0;
    Worker.prototype.postMessage = function (message, ...rest) {
      globalThis.thread = this;
      send.call(this, message, ...rest);
      if (message.type === 'audit' && globalThis.endsOver > 0) {
        globalThis.endsOver -= 1;
        this.terminate();
        setTimeout(() => this.dispatchEvent(new ErrorEvent('error')));
      }
    };
  } 0`;

  it('which goes on in another one', async () => {
    await panel.evaluate(CATCH);
    await takeBack();
    await panel.evaluate(`thread.terminate(); thread.dispatchEvent(new ErrorEvent('error')); 0`);
    await answer();
    await nextPressWorks();
    await seen(1);
  });

  it('in the middle of an audit, which is made by the next one', async () => {
    await panel.evaluate('globalThis.endsOver = 1; 0');
    await takeBack();
    expect(await panel.evaluate('globalThis.endsOver')).toBe(0);
  });

  it('and ends again over the same audit: it says so, and reads the next advert', async () => {
    await panel.evaluate('globalThis.endsOver = 2; 0');
    await panel.click('.answer');
    await waitForScreen(panel, 'broken');
    expect(await panel.text()).toContain(texts.broken.text);
    expect(await panel.evaluate('globalThis.endsOver')).toBe(0);
    const other = await room.browser.openTab(room.market.addressOf('wendelow-industrial-zigzag/page.html'));
    await press(room.browser, other, 'audit');
    await other.close();
    await page.bringToFront();
    await waitForScreen(panel, 'broken');
    await press(room.browser, page, 'audit');
  });
});

it('none of this made an error, save what was told of an audit that can’t be made', async () => {
  const errors = await seenErrors(room.browser);
  expect(errors.filter(({ text }) => !text.includes('thread ended'))).toEqual([]);
});
