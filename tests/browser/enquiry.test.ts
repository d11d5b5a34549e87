import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { enquiryTexts as texts } from '../../src/text/catalogue/enquiry';
import { ourRequests, seenErrors } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { keysOf, tabTo } from './support/keyboard';
import { type OwnPage, ownPage } from './support/page';

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html#enquiry')));
});
afterAll(() => room?.close());

const SERIAL = '#enquiry-serial';
const comesTo = (verdict: string) => bench.shows(`[data-part="enquiry"][data-verdict="${verdict}"]`);
async function ask(serial: string): Promise<void> {
  await bench.fill(SERIAL, serial);
  await bench.press('Enter');
}

it('says what to do without tables, and takes a pack right there', async () => {
  await bench.shows('[data-part="no-tables"]');
  await bench.choose('[data-part="pack-file"]', 'fixtures/packs/grindlewade-circle.json');
  await bench.shows('[data-part="ask-form"]');
});

it('finds a number by keyboard alone: from the door to the table of its neighbours', async () => {
  await bench.reload();
  await bench.shows('[data-part="ask-form"]');
  await tabTo(keysOf(bench.tab), SERIAL);
  await bench.tab.keyboard.type('kd 439-114');
  await bench.press('Enter');
  await comesTo('found');
  const run = await bench.text('.run');
  for (const each of ['KD433001', 'KD441000', 'Haddercombe', '1955', 'Brindfold dispatch cards'])
    expect(run).toContain(each);
  await tabTo(keysOf(bench.tab), '[data-part="run-table"] > summary');
  await bench.press('Enter');
  await bench.shows('.ledger tr[data-holds="true"]', 'KD433001');
  expect(await bench.count('.years-holds')).toBe(1);
});

it('offers a misread number as it may be meant, and looks that up', async () => {
  await ask('KD 4391I4');
  await comesTo('misread');
  await bench.click('.suggestions button', texts.tryIt('KD439114'));
  await comesTo('found');
  expect(await bench.valueOf(SERIAL)).toBe('KD439114');
});

it('shows where a number in no block would stand', async () => {
  await ask('155000');
  await comesTo('gap');
  expect(await bench.count('.years-gap')).toBe(1);
});

it('shows the forms that are known for a number of none', async () => {
  await ask('QQQ 1');
  await comesTo('bad-form');
  expect(await bench.text('[data-part="enquiry"]')).toContain('6 digits');
});

it('answers anew when the pack is switched off and on', async () => {
  await ask('KD 439114');
  await comesTo('found');
  const toggle = async () => {
    await bench.click('[data-part="to-packs"]');
    await bench.click('[data-pack-id="grindlewade-circle"] input[type="checkbox"]');
    await bench.click('[data-part="to-enquiry"]');
  };
  await toggle();
  await bench.shows('[data-part="no-tables"]');
  await toggle();
  await comesTo('found');
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
