import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import { priceRoomTexts as texts } from '../../src/text/catalogue/price-room';
import { ourRequests, press, seenErrors, until } from './hands';
import { openTestedRoom, type Room } from './support/browser';
import { type OwnPage, ownPage } from './support/page';

// Money of other currencies and of other times, in the workbench's room of prices.

let room: Room<Driven>;
let bench: OwnPage;
beforeAll(async () => {
  room = await openTestedRoom();
  bench = ownPage(await room.browser.openTab(room.browser.addressOf('workbench.html#prices')));
});
afterAll(() => room?.close());

const ANSWER = '[data-part="price-answer"]';
const RATES = '[data-part="rates-kept"] > li';
const ask = async (asking: string) => {
  await bench.fill('[data-part="price-model"]', 'Grindlewade Cressiter');
  await bench.fill('[data-part="price-asking"]', asking);
  await bench.press('Enter');
};

it('a price in a currency without a rate leads to where one is typed in, which then speaks at once', async () => {
  await ask('CHF 150');
  await bench.shows(`${ANSWER}[data-standing="not-comparable"]`, 'none was typed in');
  await bench.focus('[data-part="type-rate"]');
  await bench.press('Enter');
  await until('the rate’s field has the focus', () => bench.isFocused('#rate-rate'));
  expect([await bench.valueOf('#rate-from'), await bench.valueOf('#rate-to')]).toEqual(['CHF', 'GBP']);
  await bench.fill('#rate-rate', '0');
  await bench.press('Enter');
  await bench.shows('[data-part="rate-problems"]', texts.rates.wrong('rate', 'too-low'));
  expect(await bench.valueOf('#rate-from')).toBe('CHF');
  await bench.fill('#rate-rate', '0.8');
  await bench.fill('#rate-date', '2026-06');
  await bench.press('Enter');
  await bench.shows(RATES, texts.rates.line('CHF', '0.8', 'GBP', '2026-06'));
  await bench.shows(`${ANSWER}[data-standing="within"]`, '0.8 GBP for 1 CHF (typed in by you), that is £120');
});

it.each([
  ['rate-from', 'CHFX', texts.rates.wrong('from', 'unknown')],
  ['rate-to', 'XXX', texts.rates.wrong('to', 'unknown')],
  ['rate-rate', '1e12', texts.rates.wrong('rate', 'form')],
  ['rate-rate', '1000000000000', texts.rates.wrong('rate', 'too-high')],
  ['rate-rate', '-0.8', texts.rates.wrong('rate', 'too-low')],
  ['rate-date', '2999', texts.rates.wrong('date', 'future')],
  ['rate-date', 'May', texts.rates.wrong('date', 'form')],
])('%s of “%s” is refused in words, and nothing that was written is lost', async (field, value, message) => {
  for (const [part, good] of Object.entries({ from: 'CHF', rate: '0.8', to: 'GBP', date: '2026-06' }))
    await bench.fill(`#rate-${part}`, field === `rate-${part}` ? value : good);
  await bench.press('Enter');
  await bench.shows('[data-part="rate-problems"]', message);
  expect(await bench.count('[data-part="rate-problems"] li')).toBe(1);
  expect(await bench.valueOf(`#${field}`)).toBe(value);
  expect(await bench.count(RATES)).toBe(1);
});

it('is taken back and put back, the focus never lost', async () => {
  await bench.focus(`${RATES} button`);
  await bench.press('Enter');
  await bench.lacks(RATES);
  await until('the way back has the focus', () => bench.isFocused('[data-part="undo-rate"]'));
  await bench.shows(`${ANSWER}[data-standing="not-comparable"]`);
  await bench.press('Enter');
  await bench.shows(RATES);
  await until('the heading has the focus', () => bench.isFocused('#price-rates'));
  await bench.shows(`${ANSWER}[data-standing="within"]`);
});

it('is there when the page opens again, and speaks in the panel’s audit of a page', async () => {
  await bench.reload();
  await bench.shows(RATES, '0.8');
  const page = await room.browser.openTab(room.market.addressOf('cressiter-drop-feed-claimed/page.html'));
  await page.evaluate(`for (const each of document.querySelectorAll('script[type="application/ld+json"], meta[property*="price"]')) each.remove();
    document.body.innerHTML = '<h1>Grindlewade Cressiter sewing machine</h1><p>Price: CHF 150</p><p>Sewing machine in good working order.</p>';
    document.title = 'Grindlewade Cressiter sewing machine'`);
  const panel = await press(room.browser, page, 'audit');
  await panel.waitForSelector('[data-part="price"]');
  expect(String(await panel.evaluate(`document.querySelector('[data-part="price"]').textContent`))).toContain(
    '0.8 GBP for 1 CHF (typed in by you)',
  );
});

it('a price of the past is told in today’s money and in weeks of a wage, each with its source and last year', async () => {
  await bench.fill('[data-part="past-amount"]', '£34');
  await bench.fill('[data-part="past-date"]', '1949');
  await bench.press('Enter');
  await bench.shows('[data-part="past-told"]', 'in today’s money, by an index that ends in 2025 (Prices and wages');
  expect(await bench.text('[data-part="past-told"]')).toMatch(/5\.1 weeks of an average wage of that time/);
});

it.each([
  ['34', '1949', texts.past.problems.money],
  ['£0', '1949', texts.past.problems.money],
  ['£-34', '1949', texts.past.problems.money],
  ['£1000000000000', '1949', texts.past.problems.money],
  ['£34', 'long ago', texts.past.problems.date],
  ['£34', '2999', texts.past.problems.future],
])('“%s” of “%s” is refused in words', async (amount, date, message) => {
  await bench.fill('[data-part="past-amount"]', amount);
  await bench.fill('[data-part="past-date"]', date);
  await bench.press('Enter');
  await bench.shows('[data-part="past-problem"]', message);
  expect(await bench.count('[data-part="past-told"]')).toBe(0);
});

it('where no pack has a series in that currency, that is said', async () => {
  await bench.fill('[data-part="past-amount"]', '1200 JPY');
  await bench.fill('[data-part="past-date"]', '1949');
  await bench.press('Enter');
  await bench.shows('[data-part="past-told"]', texts.past.nothing('JPY'));
});

it('none of this made a request or an error', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
});
