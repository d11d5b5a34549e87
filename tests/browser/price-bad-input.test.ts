import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { priceFieldTexts as fields } from '../../src/text/catalogue/price-fields';
import { priceRoomTexts as texts } from '../../src/text/catalogue/price-room';
import { ourRequests, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { type OwnPage, ownPage } from './support/page';

// Whatever is written into the room of prices or brought there: a clear word on what is wrong, and nothing lost.

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom();
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html#prices')));
});
afterAll(() => room?.close());

const KEPT = '[data-part="price-kept"] > li';
const BRINGING = '[data-part="price-bringing"]';
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(mkdtempSync(join(tmpdir(), 'prices-')), name);
  writeFileSync(path, content);
  return path;
};
const choose = (...given: Parameters<typeof file>) => bench.choose('[data-part="price-file"]', file(...given));
const HEADINGS = 'Model;Price;Currency;Date;Kind\n';

describe('the form', () => {
  const GOOD = { model: 'Grindlewade Cressiter', amount: '190', currency: 'GBP', date: '2026-05' };
  it.each<[field: keyof typeof GOOD, value: string, wrong: string]>([
    ['amount', '0', 'too-low'],
    ['amount', '-20', 'too-low'],
    ['amount', '1e12', 'too-high'],
    ['amount', '1000000000000', 'too-high'],
    ['amount', 'a lot', 'form'],
    ['currency', 'XYZ', 'unknown'],
    ['date', '2999-01', 'future'],
    ['date', '2026-02-30', 'form'],
    ['model', 'Nowhere 3', 'unknown'],
  ])('%s “%s”', async (field, value, wrong) => {
    await bench.focus('#keep-kind');
    await bench.tab.keyboard.type('paid');
    for (const [name, good] of Object.entries(GOOD)) await bench.fill(`#keep-${name}`, name === field ? value : good);
    await bench.press('Enter');
    await bench.shows('[data-part="keep-problems"]', fields.wrong(field, wrong));
    expect(await bench.count('[data-part="keep-problems"] li')).toBe(1);
    expect(await bench.valueOf(`#keep-${field}`)).toBe(value);
    expect(await bench.attribute(`#keep-${field}`, 'aria-invalid')).toBe('true');
    expect(await bench.count(KEPT)).toBe(0);
  });

  it('a currency for which no rate is known is kept, and the answer says why it isn’t counted', async () => {
    for (const [name, value] of Object.entries({ ...GOOD, currency: 'CHF' })) await bench.fill(`#keep-${name}`, value);
    await bench.press('Enter');
    await bench.shows(KEPT, 'CHF');
    await bench.fill('[data-part="price-model"]', GOOD.model);
    await bench.press('Enter');
    await bench.shows('[data-part="price-answer"]');
    await bench.click('[data-part="price-table"] > summary');
    await bench.shows('.price-table tr', 'not counted: no exchange rate for that currency near that date');
  });
});

describe('the question', () => {
  it.each([
    ['£0', texts.ask.noAmount],
    ['-£20', texts.ask.noAmount],
    ['£1000000000000', texts.ask.noAmount],
    ['a lot', texts.ask.noMoney],
    ['480', texts.ask.noMoney],
  ])('of %s', async (asking, message) => {
    await bench.fill('[data-part="price-model"]', 'Grindlewade Cressiter');
    await bench.fill('[data-part="price-asking"]', asking);
    await bench.press('Enter');
    await bench.shows('[data-part="price-problem"]', message);
    expect(await bench.valueOf('[data-part="price-asking"]')).toBe(asking);
  });
  it('of an unknown model', async () => {
    await bench.fill('[data-part="price-model"]', 'Nowhere 3');
    await bench.press('Enter');
    await bench.shows('[data-part="price-problem"]', texts.ask.noModel);
  });
});

describe('a table', () => {
  it.each<[what: string, name: string, content: string | Uint8Array, message: string]>([
    ['is empty', 'empty.csv', '', fields.table.empty],
    ['has headings alone', 'headings.csv', HEADINGS, fields.table.empty],
    ['is a spreadsheet', 'sheet.csv', Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0, 8, 0), fields.table['not-text']],
  ])('that %s is refused', async (_, name, content, message) => {
    await choose(name, content);
    await bench.shows(`${BRINGING}[data-step="refused"]`, message);
  });

  it('in an old encoding is read, and that it was guessed is said', async () => {
    const row = 'Grindlewade Cressiter;190;GBP;2026-05;paid;Café Müller\n';
    await choose('old.csv', Buffer.from(`Model;Price;Currency;Date;Kind;Place\n${row}`, 'latin1'));
    await bench.shows(`${BRINGING}[data-step="columns"]`, texts.bring.encoding);
    await bench.shows('[data-part="price-preview"]', 'Café Müller');
    await bench.click('[data-part="price-cancel"]');
  });

  it('of 100,000 rows says how far it is and can be cancelled; the focus goes back to where it began', async () => {
    const rows = Array.from({ length: 100_000 }, (_, i) => `Cressiter;${150 + (i % 90)};GBP;2026-01;paid`).join('\n');
    await choose('long.csv', HEADINGS + rows);
    await bench.shows(`${BRINGING}[data-step="columns"]`);
    await bench.focus('[data-part="price-check"]');
    await bench.press('Enter');
    await bench.shows(`${BRINGING}[data-step="checking"] progress`);
    await until('the way to cancel has the focus', () => bench.isFocused('[data-part="price-cancel"]'));
    await bench.press('Enter');
    await bench.shows(`${BRINGING}[data-step="none"]`);
    await until('the way to a file has the focus', () => bench.isFocused('[data-part="price-file"]'));
    expect(await bench.count(KEPT)).toBe(1);
  });

  it('checked by keyboard goes on at what can be pressed next, until it is kept', async () => {
    await choose('two.csv', `${HEADINGS}Cressiter;150;GBP;2026-01;paid\nCressiter;zero;GBP;2026-01;paid`);
    await bench.focus('[data-part="price-check"]');
    await bench.press('Enter');
    await bench.shows('[data-part="price-bad-rows"]', 'Row 3: price: is no price');
    await until('the bad rows have the focus', () => bench.isFocused('[data-part="price-bad-rows"]'));
    expect(await bench.count(KEPT)).toBe(1);
    await choose('two.csv', `${HEADINGS}Cressiter;150;GBP;2026-01;paid\nCressiter;160;GBP;2026-01;paid`);
    await bench.focus('[data-part="price-check"]');
    await bench.press('Enter');
    await until('the way to keep them has the focus', () => bench.isFocused('[data-part="price-take"]'));
    await bench.press('Enter');
    await until('that they were kept has the focus', () => bench.isFocused('[data-part="price-done"]'));
    expect(await bench.count(KEPT)).toBe(3);
  });
});

it('a price that is removed by keyboard leaves the focus on the way back', async () => {
  await bench.focus(`${KEPT} button`);
  await bench.press('Enter');
  await until('the way back has the focus', () => bench.isFocused('[data-part="undo-price"]'));
  await bench.press('Enter');
  await until('the heading has the focus', () => bench.isFocused('#price-kept'));
  expect(await bench.count(KEPT)).toBe(3);
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
