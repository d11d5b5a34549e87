import { jsonLd, type Page, price } from './page';

const graph = jsonLd({
  '@context': 'https://schema.org',
  '@graph': [
    { '@type': 'WebPage', '@id': 'https://market.example/ad/417', name: 'Advert', mainEntity: { '@id': '#thing' } },
    {
      '@type': 'BreadcrumbList',
      itemListElement: [{ '@type': 'ListItem', item: { '@type': 'Thing', name: 'Machines' } }],
    },
    {
      '@type': ['Product', 'Thing'],
      '@id': '#thing',
      name: 'Treadle machine with coffin lid',
      description: 'Turns freely &amp; stitches.\nThe lid has a crack.',
      serialNumber: 'HB 20417',
      image: [{ '@type': 'ImageObject', contentUrl: '/photos/1.jpg' }, 'https://market.example/photos/2.jpg'],
      offers: [
        {
          '@type': 'Offer',
          price: 120,
          priceCurrency: 'GBP',
          itemCondition: 'https://schema.org/UsedCondition',
          availableAtOrFrom: {
            '@type': 'Place',
            address: { '@type': 'PostalAddress', addressLocality: 'Netherholme' },
          },
        },
      ],
      isSimilarTo: { '@type': 'Product', name: 'Another', offers: { price: '9', priceCurrency: 'GBP' } },
    },
  ],
});

export const english: Page[] = [
  {
    name: 'a JSON-LD graph with nothing but scripts on the page',
    html: `<html lang="en-GB"><title>Treadle machine with coffin lid</title>${graph}<body><div id="app"></div>`,
    expected: {
      title: 'Treadle machine with coffin lid',
      description: 'Turns freely & stitches.\nThe lid has a crack.',
      price: price('120', 'GBP'),
      priceText: '120 GBP',
      serials: ['HB 20417'],
      condition: 'Used',
      place: 'Netherholme',
      photos: ['https://market.example/photos/1.jpg', 'https://market.example/photos/2.jpg'],
      language: 'en-gb',
      offers: 1,
    },
  },
  {
    name: 'microdata over two parts of the page',
    html: `<html lang="en"><body><div itemscope itemtype="https://schema.org/Product" itemref="words">
      <h1 itemprop="name">Hand crank in a bentwood case</h1>
      <div itemprop="offers" itemscope itemtype="https://schema.org/Offer">
        <span itemprop="priceCurrency" content="EUR">€</span><span itemprop="price" content="85.00">85</span>
        <link itemprop="itemCondition" href="https://schema.org/UsedCondition">
      </div></div>
      <div id="words"><div itemprop="description">Small machine.<br>The key is lost.</div></div>`,
    expected: {
      title: 'Hand crank in a bentwood case',
      description: 'Small machine.\nThe key is lost.',
      price: price('85', 'EUR'),
      condition: 'Used',
      offers: 1,
    },
  },
  {
    name: 'headings and paragraphs, no mark-up for machines',
    html: `<html lang="en"><head><title>Portable in grey crackle paint - Fettle and Find</title></head><body>
      <header><a href="/">Fettle and Find</a></header>
      <main><h1>Portable in grey crackle paint</h1>
      <p>£1,150 ono</p><p>Delivery: £18.50</p><p>or £95.84 per month with Lendable Terms</p>
      <h2>Description</h2><p>Bought by my aunt in 1958.</p><p>Sews   a fine
      straight stitch.</p>
      <h2>Details</h2><table><tr><th>Material</th><td>Aluminium</td></tr><tr><th>Condition</th><td>Good, one chip</td></tr>
      <tr><th>Serial number</th><td>K 20-417</td></tr><tr><th>Item number</th><td>9981</td></tr></table>
      <h2>You may also like</h2><ul><li><a href="/1">A cabinet with no machine</a> £12</li><li><a href="/2">A box of feet</a> £9</li></ul>
      <h2>Safety tips</h2><p>Never pay ahead. Meet in a public place, and take somebody with you when you go.</p></main>
      <footer>Fees from £3</footer>`,
    expected: {
      title: 'Portable in grey crackle paint',
      description: 'Bought by my aunt in 1958.\nSews a fine straight stitch.',
      details: 'Material: Aluminium',
      price: price('1150', 'GBP'),
      priceText: '£1,150 ono',
      serials: ['K 20-417'],
      condition: 'Good, one chip',
      offers: 1,
    },
    absent: ['9981', 'cabinet', 'Never pay', '18.50', '95.84'],
  },
  {
    name: 'old and new price in one line',
    html: `<body><h1>Cabinet model, oak</h1><div class="product-price"><s>$300</s> $225</div><p>You save $75</p><p>Oak cabinet, three drawers, one of them sticks a little.</p>`,
    expected: {
      price: price('225', null),
      priceText: '$225',
      description: 'Oak cabinet, three drawers, one of them sticks a little.',
    },
  },
  {
    name: 'an auction with a bid and postage',
    html: `<body><h1>Boat shuttle machine for parts</h1><dl><dt>Current bid</dt><dd>£22.00</dd><dt>Postage</dt><dd>£14.90</dd><dt>Ends</dt><dd>Sunday</dd></dl>
      <div class="item-description"><p>For parts only: the arm is cracked.</p></div>`,
    expected: { price: price('22.00', 'GBP', 'bid'), description: 'For parts only: the arm is cracked.', offers: 1 },
    absent: ['14.90', 'Sunday'],
  },
  {
    name: 'an aggregate offer means "from"',
    html: `${jsonLd({ '@type': 'Product', name: 'Needles, class 15', offers: { '@type': 'AggregateOffer', lowPrice: '4.50', highPrice: '9', priceCurrency: 'USD', offerCount: 3 } })}<h1>Needles, class 15</h1>`,
    expected: { price: price('4.50', 'USD', 'from'), title: 'Needles, class 15' },
  },
  {
    name: 'cents set high, no point between',
    html: `<body><h1>Gear-driven zigzag machine</h1><div class="price">$149<sup>95</sup></div><p>Serviced last month by a repairer in town, sews well.</p>`,
    expected: { price: price('149.95', null), priceText: '$149.95' },
  },
  {
    name: 'labels in spans, a description that keeps its own words',
    html: `<body><h1>Three-quarter size hand crank</h1><ul class="facts"><li><span>Condition</span><span>Worn decals</span></li><li><span>Location</span><span>Upper Marl</span></li></ul>
      <p>Price: £60</p><h3>About this item</h3><div>Weight: about 9 kg<br>Serial number: 77120<br>Runs like a watch.</div>`,
    expected: {
      condition: 'Worn decals',
      place: 'Upper Marl',
      description: 'Weight: about 9 kg\nSerial number: 77120\nRuns like a watch.',
      details: '',
      serials: [],
      price: price('60', 'GBP'),
    },
  },
  {
    name: 'a list of adverts',
    html: `<body><h1>Sewing machines</h1>${[1, 2, 3, 4].map((n) => `<div class="card"><a href="/ad/${n}">Machine number ${n}, with case</a><p>£${n}5</p></div>`).join('')}`,
    expected: { title: 'Sewing machines', description: '', price: null, offers: 4 },
  },
  {
    name: 'a list of adverts that machines are told of',
    html: `${jsonLd({ '@type': 'ItemList', itemListElement: [1, 2, 3].map((n) => ({ '@type': 'ListItem', item: { '@type': 'Product', name: `Machine ${n}`, offers: { price: n, priceCurrency: 'EUR' } } })) })}<h1>Machines near you</h1>`,
    expected: { title: 'Machines near you', description: '', price: null, offers: 3 },
  },
  {
    name: 'a page with nothing for sale',
    html: `<html lang="en"><body><h1>How a lockstitch is made</h1><p>Two threads meet in the middle of the cloth, and a hook carries one round the other.</p>`,
    expected: { title: '', description: '', price: null, offers: 0 },
  },
  {
    name: 'an empty page',
    html: '',
    expected: {
      title: '',
      description: '',
      details: '',
      price: null,
      photos: [],
      serials: [],
      offers: 0,
      language: null,
    },
  },
  {
    name: 'several products, the page is about the one in its heading',
    html: `${['Belt lace, 2 m', 'Spool pin doily, red', 'Treadle belt hook'].map((name, n) => jsonLd({ '@type': 'Product', name, offers: { price: n + 1, priceCurrency: 'GBP' } })).join('')}<h1>Spool pin doily, red</h1>`,
    expected: { title: 'Spool pin doily, red', price: price('2', 'GBP'), offers: 1 },
  },
  {
    name: 'pictures that load late',
    html: `<body><img class="logo" src="/logo.png"><main><h1>Free arm, pale green</h1><p>£70</p>
      <a href="/big/1.jpg"><img src="/thumb/1.jpg"></a><img src="data:image/gif;base64,R0lGOD" data-src="/late/2.jpg">
      <picture><source srcset="/x.webp"><img srcset="/s.jpg 400w, /l.jpg 1600w, /m.jpg 800w"></picture><img src="/dot.gif" width="1" height="1">
      </main><h2>Similar items</h2><div><img src="/other.jpg"></div>`,
    expected: {
      photos: ['https://market.example/big/1.jpg', 'https://market.example/late/2.jpg', 'https://market.example/l.jpg'],
    },
  },
];
