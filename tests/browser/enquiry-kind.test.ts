import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { likelyTexts } from '../../src/text/catalogue/likely';
import { ourRequests, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { keysOf, tabTo } from './support/keyboard';
import { type OwnPage, ownPage } from './support/page';

// A shopper without any pack of a club, at the keyboard alone: from the panel's first screen's address to a kind of
// machine with what follows from it.

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom({ packs: false });
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html#enquiry')));
  await bench.shows('.question');
});
afterAll(() => room?.close());

const goTo = (selector: string) => tabTo(keysOf(bench.tab), selector);
const settled = () => bench.shows('[data-part="machine"][data-pending="false"]');
const likely = () => bench.text('[data-part="likely"]');
const asked = () => bench.attribute('.asked', 'data-question');
/** The number beside an answer's words is its key. */
const keyOf = async (answer: string) => (await bench.attribute(`[data-answer="${answer}"]`, 'aria-keyshortcuts')) ?? '';
const WRITTEN = '[data-part="written-text"] textarea';

it('begins with one drawn question, and makes nothing of nothing', async () => {
  expect(await bench.text('.question')).toBe('Where does the bobbin go in?');
  await until('its drawing', async () => (await bench.count('svg.outline [data-part="mark"]')) === 1);
  await bench.shows('.answer svg[data-drawn="own"]');
  expect(await bench.count('.answer svg[data-drawn="own"]')).toBeGreaterThanOrEqual(4);
  expect(await bench.count('[data-part="outcome"]')).toBe(0);
});

it('answers it by one key, and goes on at the next question', async () => {
  await goTo('[data-answer]');
  await bench.press(await keyOf('shuttle'));
  await bench.shows('[data-seen="trade/loading"]');
  await settled();
  await until('the question has the focus', () => bench.isFocused('.question'));
  expect(await asked()).not.toBe('trade/loading');
  expect(await likely()).toContain('long bobbin');
});

it('comes to a kind, what follows, what fits, what to ask and what to mind', async () => {
  const size = async () => (await asked()) === 'trade/size';
  for (let question = 0; question < 8 && !(await size()); question += 1) {
    const before = await asked();
    if (before === null) break;
    const drive = before === 'trade/drive' ? await keyOf('treadle') : '';
    const mechanism = before === 'trade/mechanism' ? await keyOf('vibrating-shuttle') : '';
    await bench.press(drive || mechanism || '0');
    await until('the next question', async () => (await asked()) !== before);
    await settled();
  }
  if (await size()) {
    await bench.press(await keyOf('full-size'));
    await bench.shows('[data-seen="trade/size"]');
    await settled();
  }
  expect(await bench.text('.likely-name')).toBe('Full size, cast iron, vibrating shuttle');
  const text = await bench.text('[data-part="outcome"]');
  for (const each of ['cast iron', 'long bobbin', 'usually 10 to 16 kg', 'low-shank feet', 'industrial', 'Lift it'])
    expect(text).toContain(each);
  expect(await bench.count('[data-part="questions"] li')).toBeGreaterThan(0);
});

it('explains a term on demand', async () => {
  await goTo('[data-follows="trade/shank"] summary');
  await bench.press('Enter');
  await bench.shows('[data-follows="trade/shank"] details[open] p');
});

it('shows its numbers behind "how do we know?" alone', async () => {
  const numbers = '[data-part="how-likely"] .numbers';
  expect(await bench.isShown(numbers)).toBe(false);
  await goTo('[data-part="how-likely"] > summary');
  await bench.press('Enter');
  await bench.shows(numbers);
  expect(await bench.text(numbers)).toMatch(/\d in 100/);
});

it('has the whole answer as text, and copies it', async () => {
  await goTo('[data-part="copy-answer"]');
  await bench.press('Enter');
  await until('said to be copied', async () => (await bench.text('[data-part="copy-answer-outcome"]')) !== '');
  const text = await bench.valueOf(WRITTEN);
  for (const each of ['Full size, cast iron, vibrating shuttle', likelyTexts.kinds.type, 'bobbin: long bobbin'])
    expect(text).toContain(each);
  expect(await room.browser.copied()).toBe(text);
});

it('takes an answer back, and begins again', async () => {
  await bench.focus('.question');
  await goTo('[data-seen="trade/loading"] button');
  await bench.press('Enter');
  await bench.lacks('[data-seen="trade/loading"]');
  await settled();
  await until('the question has the focus', () => bench.isFocused('.question'));
  await goTo('[data-part="start-again"]');
  await bench.press('Enter');
  await bench.lacks('[data-part="outcome"]');
  await settled();
  expect(await asked()).toBe('trade/loading');
  await until('the question has the focus', () => bench.isFocused('.question'));
  expect(await bench.count('[data-seen]')).toBe(0);
});

it('goes on with a number in the same answer, once a club’s pack is there', async () => {
  await bench.choose('[data-part="pack-file"]', 'fixtures/packs/grindlewade-circle.json');
  await bench.shows('[data-part="ask-form"]');
  await bench.fill('#enquiry-serial', 'KD 439114');
  await bench.press('Enter');
  await bench.shows('[data-part="enquiry"][data-verdict="found"]');
  // A number alone doesn't say who made it: the name does.
  await bench.click('[data-maker="Grindlewade"]');
  await bench.shows('[data-part="outcome"]', 'Haddercombe');
  await settled();
  const text = await bench.valueOf(WRITTEN);
  for (const each of ['Haddercombe', 'KD439114', 'KD433001']) expect(text).toContain(each);
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
