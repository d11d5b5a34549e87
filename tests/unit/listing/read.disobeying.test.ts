import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { documentOf } from './dom';

const WORDS =
  'Oak stand with two drawers, one knob was turned new. The treadle runs without a sound and the belt is of leather.';
const TITLE = 'Oak stand with a treadle';
const read = (html: string) => readListing(documentOf(html));
/** An advert with a price as a page writes it. */
const priced = (price: string, more = '') =>
  read(`<html lang="en"><title>${TITLE}</title><h1>${TITLE}</h1>${price}<p>${WORDS}</p>${more}`).price;
const ld = (json: string) =>
  `<title>${TITLE}</title><script type="application/ld+json">${json}</script><h1>${TITLE}</h1><p>${WORDS}</p>`;

describe('linked data as pages write it', () => {
  const product = `{"@context":"https://schema.org","@type":["Product","Thing"],"name":"${TITLE}","offers":{"@type":["Offer"],"price":"45.00","priceCurrency":"GBP","seller":"R. Thackeroyd"}}`;
  it.each([
    ['in a comment', `<!-- ${product} -->`],
    ['in a section of characters', `//<![CDATA[\n${product}\n//]]>`],
    ['with several types and a seller without one', product],
    [
      'with a price specification alone',
      `{"@context":"https://schema.org","@type":"Product","name":"${TITLE}","offers":{"@type":"Offer","priceSpecification":{"@type":"UnitPriceSpecification","price":45,"priceCurrency":"GBP"}}}`,
    ],
    [
      'with a code in small letters',
      `{"@context":"http://schema.org/","@type":"Product","name":"${TITLE}","offers":{"@type":"Offer","price":"45","priceCurrency":"gbp"}}`,
    ],
  ])('%s', (_, json) => {
    expect(read(ld(json)).price).toMatchObject({ amount: expect.stringMatching(/^45/), currency: 'GBP' });
  });
});

describe('properties of old and of none', () => {
  it.each([
    [
      'a vocabulary of before',
      `<div itemscope itemtype="http://data-vocabulary.org/Product"><h1 itemprop="name">${TITLE}</h1><div itemprop="offerDetails" itemscope itemtype="http://data-vocabulary.org/Offer"><meta itemprop="currency" content="GBP"><span itemprop="price">45.00</span></div></div>`,
    ],
    [
      'a sign inside of the value',
      `<div itemscope itemtype="https://schema.org/Product"><h1 itemprop="name">${TITLE}</h1><div itemprop="offers" itemscope itemtype="https://schema.org/Offer"><span itemprop="price" content="£45.00">forty-five</span></div></div>`,
    ],
    ['no item around them', `<h1>${TITLE}</h1><span itemprop="price">£45.00</span>`],
  ])('%s', (_, html) => {
    expect(read(`<title>${TITLE}</title>${html}<p>${WORDS}</p>`).price).toMatchObject({
      amount: expect.stringMatching(/^45/),
      currency: 'GBP',
    });
  });
});

describe('a price', () => {
  it.each([
    ['with cents set high', '<p class="price">£45<sup>50</sup></p>', '45.50'],
    [
      'with a copy for readers of screens',
      '<p><span class="visually-hidden">£45.50</span><span aria-hidden="true">£45.50</span></p>',
      '45.50',
    ],
    ['with the old one first', '<p><s>£60</s> £45</p>', '45'],
    ['with the old one last', '<p>£45 <del>£60</del></p>', '45'],
    ['with a share off behind it', '<p class="now">£45 <span>25% OFF</span></p>', '45'],
    ['with instalments under it', '<p>£45</p><p>or 3 x £15.00 without interest</p>', '45'],
    ['with instalments in a word that no list has', '<p>£45</p><p>3 zahlki £15.00</p>', '45'],
    ['with what others pay for sending', '<p>£45</p><p>Postage £12.50</p>', '45'],
    ['with an estimate', '<p>Estimate £80 - £120</p><p class="price">£45</p>', '45'],
    ['with a price when new', '<p>£45</p><p>RRP £399</p>', '45'],
    ['with its currency on the next line', '<div><p>27,50</p><p>euro, or two stamps</p></div>', '27.50'],
    ['with its currency on the line before', '<div><p>CHF</p><p>1’450.–</p></div>', '1450'],
    ['with the cents behind the sign', '<p>429€<span>90</span></p>', '429.90'],
    ['as a whole sum', '<p>20,-</p>', '20'],
    ['with its code glued to it', '<p>EUR15.99</p>', '15.99'],
  ])('%s', (_, html, amount) => {
    expect(Number(priced(html)?.amount)).toBe(Number(amount));
  });

  it('is none of several sums on buttons, to offer', () => {
    expect(priced('', '<form><button>£50</button><button>£75</button></form>')).toBeNull();
  });

  it('is none where its own row says that it is not named, whatever else the page offers', () => {
    const row = '<table><tr><td>Price</td><td>P.O.A.</td></tr><tr><td>Condition</td><td>Used</td></tr></table>';
    expect(priced(row, '<p>Offer of the week</p><p>Guillotine</p><p><b>£7,950</b></p>')).toBeNull();
  });

  it('is none that the words only name', () => {
    expect(priced('', '<p>The motor was rewound for £325 last year, and it has stood since.</p>')).toBeNull();
  });

  it('stands beside a title that has a word of postage in it', () => {
    const title = 'Ship’s lantern, port side';
    expect(
      read(`<title>${title}</title><div><p class="itemname">${title}</p><p>£145.00</p></div><p>${WORDS}</p>`).price,
    ).toMatchObject({ amount: '145.00' });
  });
});

describe('a title', () => {
  const titled = (title: string, html: string) => read(`<title>${title}</title>${html}<p>£45</p><p>${WORDS}</p>`).title;

  it.each([
    ['under the site’s name', `${TITLE} - Market - Board The Idle Bobbin`, `<h1>The Idle Bobbin</h1><h2>${TITLE}</h2>`],
    ['under the site’s mark', 'Idle Bobbin - second-hand things', `<h1 class="logo">Idle Bobbin</h1><h2>${TITLE}</h2>`],
    ['under the name of a part that nothing else speaks of', 'Everything', `<h1>Everything</h1><h2>${TITLE}</h2>`],
    ['with the kind of advert before it', `Offer 12: ${TITLE}`, `<div><span>Offer</span> <span>${TITLE}</span></div>`],
    [
      'with a line under it in the same heading',
      `${TITLE} for £45`,
      `<h2>${TITLE}<div>Second owner, leather belt</div></h2>`,
    ],
    ['with a bracket and numbers of its own', `${TITLE} (1931) | Idle`, `<h1>${TITLE} (1931)</h1>`],
    ['with a stroke of its own', `${TITLE} / two drawers | Idle`, `<h1>${TITLE} / two drawers</h1>`],
  ])('%s', (_, title, html) => {
    expect(titled(title, html).replace(/ \(1931\)| \/ two drawers/, '')).toBe(TITLE);
  });

  it('keeps what belongs to it', () => {
    expect(titled(`${TITLE} (1931) | Idle`, `<h1>${TITLE} (1931)</h1>`)).toBe(`${TITLE} (1931)`);
    expect(titled(`${TITLE} | two drawers – Idle`, `<h1>${TITLE} | two drawers</h1>`)).toBe(`${TITLE} | two drawers`);
  });
});

describe('the seller’s words', () => {
  const advert = (html: string) => read(`<title>${TITLE}</title><h1>${TITLE}</h1><p>£45</p>${html}`).description;

  it('are not what a text about consent says, part by part', () => {
    const sentence =
      'Some of them rely on a legitimate interest and ask nobody, to which you may object further below.';
    const others = 'You can accept each purpose, refuse it or set it apart, and what you choose is kept for a year.';
    const parts = Array.from(
      { length: 40 },
      (_, index) =>
        `<div class="c${index}"><span>Partner ${index}</span><div class="d${index}">${index % 2 ? sentence : `${others} ${sentence}`}</div></div>`,
    ).join('');
    expect(advert(`<div>${parts}</div><div class="x">${WORDS}</div>`)).toBe(WORDS);
  });

  it('stand under a label of comments where nobody else speaks', () => {
    expect(
      advert(
        `<h3>Equipment</h3><ul><li>Two drawers with turned knobs of oak.</li><li>Belt of leather, glued in one place.</li></ul><h3>Comments</h3><div>${WORDS}</div>`,
      ),
    ).toBe(WORDS);
  });

  it('stand under a label that says whose they are', () => {
    expect(
      advert(`<h3>Maschinenbeschreibung laut Anbieter</h3><div>${WORDS}</div><p>Another paragraph of the site.</p>`),
    ).toContain(WORDS);
  });

  it('go on where machines are told the first sentence alone', () => {
    const [first] = WORDS.split('. ');
    const told = `<script type="application/ld+json">{"@context":"https://schema.org","@type":"Product","name":"${TITLE}","description":"${first}.","offers":{"@type":"Offer","price":"45","priceCurrency":"GBP"}}</script>`;
    expect(advert(`${told}<p>${WORDS}</p>`)).toBe(WORDS);
  });

  it('are no two short facts in a box of that name', () => {
    expect(
      advert(
        `<ul class="p-description"><li>Started by R. Thackeroyd</li><li>20 Nov. 2026</li></ul><div>${WORDS}</div>`,
      ),
    ).toBe(WORDS);
  });
});

describe('condition in a row of any of the languages', () => {
  it.each([
    ['en', 'Condition of the item', 'Worn but sound'],
    ['de', 'Fahrzeugzustand', 'Gebraucht'],
    ['fr', 'État du véhicule', 'Bon état'],
    ['nl', 'Staat', 'Gebruikt'],
    ['it', 'Condizione', 'Usato'],
    ['es', 'Condición del ítem', 'Usado'],
  ])('%s: %s', (language, label, value) => {
    const html = `<html lang="${language}"><title>${TITLE}</title><h1>${TITLE}</h1><p>45 €</p><table><tr><th>${label}</th><td>${value}</td></tr></table><p>${WORDS}</p>`;
    expect(read(html).condition).toBe(value);
  });
});

describe('names of classes that mislead', () => {
  it('a row of figures is no financing', () => {
    const row = (name: string, value: string) => `<p><span class="title">${name}:</span> <span>${value}</span></p>`;
    const body = `<div class="lg-financials"><div class="price asking">${row('Asking price', '£1,450')}</div>${row('Turnover', '£700')}</div>`;
    expect(priced(body)).toMatchObject({ amount: '1450' });
  });

  it('a button that opens a dialog is none, nor is the foot of a section that of the page', () => {
    expect(priced('<div><button class="button js-open-modal">Buy from £145</button></div>')).toMatchObject({
      amount: '145',
    });
    expect(priced('<div class="section-footer-dark"><b>£145</b></div>')).toMatchObject({ amount: '145' });
    expect(priced('<div class="site-footer"><b>£145</b></div>')).toBeNull();
  });

  it('of two things of one name the one with an offer is the page’s', () => {
    const outer = `<div itemscope itemtype="https://schema.org/Product"><meta itemprop="name" content="${TITLE}">`;
    const inner = `<div itemscope itemtype="https://schema.org/Product"><meta itemprop="name" content="${TITLE}"><div itemprop="offers" itemscope itemtype="https://schema.org/Offer"><meta itemprop="price" content="45.00"><meta itemprop="priceCurrency" content="CAD"></div></div>`;
    expect(priced('<p class="price">$45.00</p>', `${outer}${inner}</div>`)).toMatchObject({ currency: 'CAD' });
  });

  it('a thing that linked data names is no article, whatever the head says of every page', () => {
    const head = `<meta property="og:type" content="article"><title>${TITLE}</title><script type="application/ld+json">{"@type":"Product","name":"${TITLE}","offers":{"@type":"Offer","price":"0"}}</script>`;
    expect(read(`<html lang="en"><head>${head}</head><body><h1>${TITLE}</h1><p>${WORDS}</p></body>`).title).toBe(TITLE);
  });
});
