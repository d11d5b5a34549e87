import { type Page, price } from './page';

const WORDS =
  'It has been in my family for as long as I can remember; it still turns freely, and the case has its key and its handle.';
const tile = (name: string, cost: string) => `<div class="tile"><p>${name}</p><p>${cost}</p></div>`;

/** What is told by what stands around a value, not by its own form. */
export const aroundPages: Page[] = [
  {
    name: 'neighbours that lead nowhere',
    html: `<title>Hand crank with key</title><div>${tile('Oak desk', '£40')}${tile('Garden chairs', '£10')}${tile('Piano, upright', '£120')}</div><h1>Hand crank with key</h1><p>£45</p><p>${WORDS}</p>`,
    expected: { title: 'Hand crank with key', price: price('45', 'GBP'), offers: 1 },
    absent: ['£120', 'Piano'],
  },
  {
    name: 'small adverts one to a line',
    html: `<h1>Small adverts</h1>${['Baby bath, blue', 'Bicycle with basket', 'Mantel clock', 'Dining table', 'Chest freezer', 'Wood lathe'].map((name, n) => `<p>${name}, £${n + 1}0. Ring after six.</p>`).join('')}`,
    expected: { offers: 6, price: null },
  },
  {
    name: 'the price and the place in the heading, a tag before it',
    html: `<title>Hand crank with key</title><h1><span class="badge">Used</span> <span class="t">Hand crank with key</span> <span class="price">$45</span> <small>(Netherholme)</small></h1><p>${WORDS}</p><button>Contact the seller</button>`,
    expected: { title: 'Hand crank with key', place: 'Netherholme', price: price('45', null) },
  },
  {
    name: 'no heading at all, and a banner before it',
    html: `<title>The Valley Trader</title><table><tr><td><b>THE VALLEY TRADER</b></td></tr><tr><td><b>HAND CRANK WITH KEY AND CASE</b><br>It is a hand crank with its key: ${WORDS}<br>Price: £45</td></tr></table>`,
    expected: { title: 'HAND CRANK WITH KEY AND CASE', price: price('45', 'GBP') },
  },
  {
    name: 'pages of consent in boxes without a name',
    html: `<div>${Array.from({ length: 8 }, (_, n) => `<p>We and our ${n + 100} partners store cookies, and rely on your consent or on their legitimate interest, for personalised ads.</p>`).join('')}</div><div><h1>Hand crank</h1><p>£45</p><p>${WORDS}</p></div>`,
    expected: { description: WORDS, price: price('45', 'GBP') },
  },
  {
    name: 'a country behind the amount',
    html: `<h1>Hand crank</h1><p>Price</p><p>$1,850.00 US</p><p>${WORDS}</p>`,
    expected: { price: price('1850.00', 'USD') },
  },
  {
    name: 'with the tax named, and without it',
    html: `<h1>Hand crank</h1><div>EUR15.99 inc. VAT</div><div>EUR13.00 ex. VAT</div><div>Approximately GBP13.60</div><p>${WORDS}</p>`,
    expected: { price: price('15.99', 'EUR') },
  },
  {
    name: 'an empty basket before all',
    html: `<div>Basket (0) £0.00</div><h1>Hand crank</h1><p>Price on request</p><p>${WORDS}</p>`,
    expected: { price: null, offers: 1 },
  },
  {
    name: 'sold, by a private seller',
    html: `<title>Hand crank</title><h1>SOLD - Hand crank with key</h1><p>Was £45</p><dl><dt>Seller type</dt><dd>Private seller</dd></dl><p>${WORDS}</p>`,
    expected: { title: 'Hand crank with key', sale: 'sold', seller: 'private', offers: 1 },
  },
  {
    name: 'a template for what is sold, hidden, and one for what is reserved, shown',
    html: `<h1>Hand crank</h1><p style="display:none">Sold</p><span class="badge">Reserved</span><p>£45</p><p>${WORDS}</p>`,
    expected: { sale: 'reserved', seller: null },
  },
];
