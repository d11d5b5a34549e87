import { jsonLd, type Page, price } from './page';

const WORDS = 'It has been in my family for as long as I can remember, and it still turns freely.';
const page = (name: string, html: string, expected: Page['expected'], absent?: string[]): Page => ({
  name,
  html: `<h1>Hand crank</h1>${html}<p>${WORDS}</p>`,
  expected: { title: 'Hand crank', description: WORDS, ...expected },
  ...(absent ? { absent } : {}),
});
const product = (offers: unknown) => jsonLd({ '@type': 'Product', name: 'Hand crank', offers });

/** Ways of writing, marking up and hiding a price. */
export const prices: Page[] = [
  page('sold', '<p>Sold for £45.00</p>', { price: price('45.00', 'GBP', 'sold') }),
  page('a range', '<p>Price: £40 - £50</p>', { price: price('40', 'GBP', 'from'), priceText: '£40 - £50' }),
  page('thousands by letter', '<p>Price: £1.2k</p>', { price: price('1200', 'GBP') }),
  page('no sign', '<p class="preis">450,- VB</p>', { price: price('450', null), priceText: '450,- VB' }),
  page('Swiss', "<p>CHF 1'340.–</p>", { price: price('1340', 'CHF') }),
  page('a decimal comma told to machines', product({ price: '45,00', priceCurrency: 'EUR' }), {
    price: price('45.00', 'EUR'),
  }),
  page('a sign told to machines', product({ price: '$1,045.00', priceCurrency: 'AUD' }), {
    price: price('1045.00', 'AUD'),
  }),
  page(
    'a list price told to machines',
    product({
      '@type': 'Offer',
      priceSpecification: [
        {
          '@type': 'UnitPriceSpecification',
          priceType: 'https://schema.org/ListPrice',
          price: 99,
          priceCurrency: 'EUR',
        },
        { '@type': 'DeliveryChargeSpecification', price: 12, priceCurrency: 'EUR' },
        { '@type': 'UnitPriceSpecification', price: 8, priceCurrency: 'EUR', billingDuration: 12 },
        { '@type': 'UnitPriceSpecification', price: 45, priceCurrency: 'EUR' },
      ],
    }),
    { price: price('45', 'EUR') },
  ),
  page('zero told to machines', `${product({ price: '0', priceCurrency: 'GBP' })}<p>£45</p>`, {
    price: price('45', 'GBP'),
  }),
  page('was and now', '<p>Was £60, now £45</p>', { price: price('45', 'GBP'), priceText: '£45' }),
  page('free', '<p class="price">Free</p>', { price: price('0', null), priceText: 'Free' }),
  page('offers only', '<p class="preis">VB</p>', { price: null, priceText: '', offers: 1 }),
  page('in parts', '<div><span>£</span><span>45</span><span>.00</span></div>', { price: price('45.00', 'GBP') }),
  page('beside the main part', '<aside><div>£45</div><div>Delivery £9</div></aside>', { price: price('45', 'GBP') }, [
    '£9',
  ]),
  page(
    'a bid and a price',
    '<div><div>Starting bid</div><div>£20.00</div></div><div><div>Buy it now</div><div>£45.00</div></div>',
    { price: price('45.00', 'GBP') },
  ),
  page(
    'postage in a table',
    '<span class="amount">£45.00</span><table><tr><th>Service</th><th>Price</th></tr><tr><td>Courier</td><td>£12.00</td></tr><tr><td>Pallet</td><td>£40.00</td></tr></table>',
    { price: price('45.00', 'GBP'), details: '' },
  ),
  page('postage in the same line', '<p>£45 (plus £6 postage)</p>', { price: price('45', 'GBP') }),
  page('postage included', '<p>£45 including postage</p>', { price: price('45', 'GBP') }),
  page(
    'a sign that the head explains',
    '<meta property="og:price:amount" content="45"><meta property="og:price:currency" content="USD"><p>$45</p>',
    { price: price('45', 'USD'), priceText: '$45' },
  ),
  page(
    'other things beside it, without a heading',
    `<p class="price">£45</p><div>${[1, 2, 3].map((n) => `<a class="tile" href="/x${n}"><div>Machine number ${n}</div><div>£${n}0</div></a>`).join('')}</div>`,
    { price: price('45', 'GBP'), offers: 1 },
  ),
  page(
    'on request, with other things beside it',
    `<p>Price on request</p><div>${[1, 2, 3].map((n) => `<div><a href="/x${n}">Machine number ${n}</a><div>£${n}0</div></div>`).join('')}</div>`,
    { price: null, offers: 1 },
  ),
  {
    name: 'in the title',
    html: `<h1>Hand crank £45</h1><p>${WORDS}</p>`,
    expected: { title: 'Hand crank £45', price: price('45', 'GBP'), priceText: '£45', description: WORDS },
  },
  {
    name: 'told among other amounts',
    html: '<h1>Hand crank</h1><p>I paid £90 for it two years ago and had it serviced for £60; I would like £45 for it now.</p>',
    expected: { price: price('45', 'GBP'), priceText: '£45', offers: 1 },
  },
  {
    name: 'told in an article, for sale nowhere',
    html: `<h1>About lockstitch</h1><p>Published: 3 March 2024</p><p>${WORDS}</p><p>A set of needles costs about £5, which is not much.</p>`,
    expected: { title: '', price: null, offers: 0 },
  },
  {
    name: 'a table of two adverts',
    html: '<h1>Machines</h1><table><tr><td><a href="1">Old hand crank one</a></td><td>£40</td></tr><tr><td><a href="2">Old hand crank two</a></td><td>£50</td></tr></table>',
    expected: { title: 'Machines', price: null, description: '', offers: 2 },
  },
];
