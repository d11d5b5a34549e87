import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { ourRequests, seenErrors, until } from './hands';
import { expectAccessible, expectReadable, looksOfTab } from './support/accessible';
import { openTestedRoom, type Room } from './support/browser';
import { PICTURES } from './support/differences';
import { holdTimers, letTimersGo } from './support/held-timers';
import { type OwnPage, ownPage } from './support/page';

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom();
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html#prices')));
});
afterAll(() => room?.close());

const ANSWER = '[data-part="price-answer"]';
/** Amounts and dates of the table that break in the middle. */
const AMOUNTS_IN_TWO = `[...document.querySelectorAll('.price-table .whole')].filter((each) => {
  const text = document.createRange();
  text.selectNodeContents(each);
  return text.getClientRects().length !== 1;
}).map((each) => each.textContent)`;
const table = (name: string, rows: string[]): string => {
  const file = join(mkdtempSync(join(tmpdir(), 'prices-')), name);
  writeFileSync(file, `Machine;Price;Currency;Date;Kind\n${rows.join('\n')}\n`);
  return file;
};

it('tells where an asking price stands, with every price behind it', async () => {
  await bench.shows('[data-part="price-model"]');
  await bench.fill('[data-part="price-model"]', 'Grindlewade Cressiter');
  await bench.fill('[data-part="price-asking"]', '£480');
  await bench.press('Enter');
  await bench.shows(`${ANSWER}[data-standing="above"]`);
  expect(await bench.count('.scale [data-kind="paid"]')).toBeGreaterThan(5);
  expect(await bench.count('.scale [data-kind="asked"]')).toBeGreaterThan(0);
  expect(await bench.count('[data-part="price-alternatives"] > li')).toBeGreaterThan(1);
  expect(await bench.text('[data-part="price-launch"]')).toContain('1949');
});

it('keeps a price that was seen, names what is wrong with one, and takes one back', async () => {
  await bench.fill('#keep-model', 'Cressiter');
  await bench.fill('#keep-amount', '0');
  await bench.click('[data-part="price-keep"]');
  await bench.shows('[data-part="keep-problems"]', 'must be above 0');
  await bench.focus('#keep-kind');
  await bench.tab.keyboard.type('paid');
  await bench.fill('#keep-amount', '190');
  await bench.fill('#keep-currency', 'GBP');
  await bench.fill('#keep-date', '2026-05');
  await bench.click('[data-part="price-keep"]');
  await bench.shows('[data-part="price-kept"] > li', '£190');
  await bench.click('[data-part="price-kept"] button');
  await bench.shows('[data-part="undo-price"]');
  await bench.click('[data-part="undo-price"]');
  await bench.shows('[data-part="price-kept"] > li', '£190');
});

it('takes a table whole or not at all', async () => {
  const good = Array.from({ length: 30 }, (_, i) => `Cressiter;${180 + i};GBP;2026-0${1 + (i % 5)};paid`);
  await bench.choose('[data-part="price-file"]', table('bad.csv', [...good, 'Nowhere;12;GBP;2026;paid']));
  await bench.shows('[data-part="price-bringing"][data-step="columns"]');
  await bench.click('[data-part="price-check"]');
  await bench.shows('[data-part="price-bad-rows"]', 'Row 32');
  expect(await bench.count('[data-part="price-kept"] > li')).toBe(1);
  await bench.choose('[data-part="price-file"]', table('good.csv', good));
  await bench.shows('[data-part="price-bringing"][data-step="columns"]');
  await bench.click('[data-part="price-check"]');
  await bench.shows('[data-part="price-take"]', '30');
  await bench.click('[data-part="price-take"]');
  await bench.shows('[data-part="price-bringing"][data-step="done"]');
  expect(await bench.count('[data-part="price-kept"] > li')).toBe(31);
});

it('from ten prices on tells how they went over the years', async () => {
  await bench.click('[data-part="price-years"] > summary');
  await bench.shows('.price-years tbody tr', '2026');
  expect(await bench.text('.price-years caption')).toContain('of prices paid, with those asked brought to that');
});

it('a wild price counts for next to nothing, unless that step is switched off', async () => {
  await bench.focus('#keep-kind');
  await bench.tab.keyboard.type('paid');
  for (const [field, value] of Object.entries({ amount: '90000', currency: 'GBP', date: '2026-06' }))
    await bench.fill(`#keep-${field}`, value);
  await bench.press('Enter');
  await bench.shows('[data-part="price-kept"] > li', '£90,000');
  await bench.click('[data-part="price-table"] > summary');
  const counted = async () => {
    const rows = await bench.texts('.price-table tbody tr');
    return Number(/£90,000(\d\.\d\d)/.exec(rows.find((row) => row.startsWith('£90,000')) ?? '')?.[1] ?? Number.NaN);
  };
  await until('it counts for next to nothing', async () => (await counted()) < 0.05);
  await bench.shows('.price-scale', 'further out');
  await bench.click('[data-part="hold-wild"]');
  await until('it counts like any other', async () => (await counted()) > 0.5);
  await bench.click('[data-part="hold-wild"]');
  await until('it counts for next to nothing again', async () => (await counted()) < 0.05);
  await bench.click('[data-part="price-kept"] > li button');
  await bench.lacks('[data-part="price-kept"] > li', '£90,000');
});

it('refinished ones are asked for apart, and that none are known is said', async () => {
  await bench.focus('[data-part="price-finish"]');
  await bench.tab.keyboard.type('repainted');
  await bench.focus('[data-part="price-asking"]');
  await bench.press('Enter');
  await bench.shows(`${ANSWER}[data-standing="no-band"]`);
  await bench.focus('[data-part="price-finish"]');
  // What was typed just now would count with what is typed next.
  await bench.press('ArrowUp');
  await bench.focus('[data-part="price-asking"]');
  await bench.press('Enter');
  await bench.shows(`${ANSWER}[data-standing="above"]`);
});

it('an alternative is asked for by its button, and the focus goes on at its answer', async () => {
  await bench.focus('[data-part="price-alternatives"] button');
  const label = await bench.text('[data-part="price-alternatives"] button');
  await bench.press('Enter');
  await bench.shows(`${ANSWER} h2`, label);
  await until('the heading has the focus', () => bench.isFocused('#price-of'));
  await bench.fill('[data-part="price-model"]', 'Grindlewade Cressiter');
  await bench.press('Enter');
  await bench.shows(`${ANSWER} h2`, 'Grindlewade Cressiter');
});

it('a check of a table can be cancelled while it runs; nothing is kept of it', async () => {
  const rows = Array.from({ length: 5_000 }, (_, i) => `Cressiter;${180 + (i % 50)};GBP;2026-01;paid`);
  await bench.choose('[data-part="price-file"]', table('long.csv', rows));
  await bench.shows('[data-part="price-bringing"][data-step="columns"]');
  // Between two slices of the work, however fast it goes.
  await holdTimers(bench.tab, 0);
  await bench.focus('[data-part="price-check"]');
  await bench.press('Enter');
  await bench.shows('[data-part="price-bringing"][data-step="checking"]', 'of 5000 rows checked');
  await bench.focus('[data-part="price-cancel"]');
  await bench.press('Enter');
  await bench.shows('[data-part="price-bringing"][data-step="none"]');
  await letTimersGo(bench.tab);
  expect(await bench.attribute('[data-part="price-bringing"]', 'data-step')).toBe('none');
  expect(await bench.count('[data-part="price-take"]')).toBe(0);
  expect(await bench.count('[data-part="price-kept"] > li')).toBe(31);

  await bench.choose('[data-part="price-file"]', table('long.csv', rows));
  await bench.click('[data-part="price-check"]');
  await bench.shows('[data-part="price-take"]', '5000');
  await bench.click('[data-part="price-cancel"]');
  await bench.lacks('[data-part="price-take"]');
  expect(await bench.count('[data-part="price-kept"] > li')).toBe(31);
});

it('an advert’s price comes in filled out, to be looked over and kept', async () => {
  const anchor =
    '#prices?model=grindlewade-circle%2Fcressiter&kind=asked&amount=135&currency=GBP&grade=good&place=Oberwarding&note=With+its+case&link=https%3A%2F%2Fmarket.example%2F135';
  await bench.tab.evaluate(`void (location.hash = ${JSON.stringify(anchor)})`);
  await bench.shows('#keep-model');
  await until('the form is filled', async () => (await bench.valueOf('#keep-amount')) === '135');
  expect(await bench.valueOf('#keep-model')).toBe('Grindlewade Cressiter');
  await bench.click('[data-part="price-keep"]');
  await bench.shows('[data-part="price-kept"] > li[data-kind="asked"]', '£135');
  if (!(await bench.isShown('.price-table table'))) await bench.click('[data-part="price-table"] > summary');
  const row = '.price-table tr:has([href="https://market.example/135"])';
  await until('the price is in the table', async () => (await bench.count(row)) === 1);
  for (const [part, words] of [
    ['place', 'Oberwarding'],
    ['note', 'With its case'],
    ['link', 'https://market.example/135'],
  ]) {
    expect(await bench.text(`${row} [data-part="seen-${part}"]`)).toBe(words);
    expect(await bench.text(`[data-kind="asked"].price-kept [data-part="seen-${part}"]`)).toBe(words);
  }
  await bench.click('[data-part="price-kept"] > li[data-kind="asked"] button');
  await bench.lacks('[data-part="price-kept"] > li[data-kind="asked"]');
});

it('what was kept is there when the page opens again', async () => {
  await bench.reload();
  await bench.shows('[data-part="price-kept"] > li:nth-child(31)');
});

it.each(['light', 'dark'] as const)('is accessible as far as axe-core can tell, %s', async (scheme) => {
  await bench.fill('[data-part="price-model"]', 'Grindlewade Cressiter');
  await bench.fill('[data-part="price-asking"]', '£480');
  await bench.press('Enter');
  await bench.shows(ANSWER);
  await bench.choose('[data-part="price-file"]', table('one.csv', ['Cressiter;180;GBP;2026-01;paid']));
  await bench.shows('[data-part="price-bringing"][data-step="columns"]');
  for (const width of [1280, 360]) {
    await bench.tab.setViewportSize({ width, height: 800 });
    await expectAccessible(looksOfTab(bench.tab), scheme);
    await expectReadable(looksOfTab(bench.tab));
    expect(await bench.tab.evaluate(AMOUNTS_IN_TWO)).toEqual([]);
    if (!PICTURES) continue;
    mkdirSync(PICTURES, { recursive: true });
    await bench.tab.screenshot({ path: `${PICTURES}/bench-prices-${scheme}-${width}.png`, fullPage: true });
  }
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
