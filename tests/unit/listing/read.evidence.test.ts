import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { documentOf } from './dom';

const WORDS =
  'Oak stand with two drawers, one knob was turned new. The treadle runs without a sound and the belt is of leather.';
const ADVERT = `<title>Oak stand with a treadle - Netherholme | Thrift Shelf</title><h1>Oak stand with a treadle</h1>`;
const read = (html: string) => readListing(documentOf(html));
const neighbours = (make: (name: string, price: number) => string): string =>
  ['Bookcase', 'Bicycle for children', 'Folding table', 'Standard lamp']
    .map((name, index) => make(name, 20 + index))
    .join('');

describe('whether a page is one advert', () => {
  it('is told by a way to its seller where no price says so, beside many neighbours', () => {
    const cards = neighbours(
      (name, price) => `<li><a href="/x"><img src="/n.jpg"><span>${name} of oak</span><b>£${price}</b></a></li>`,
    );
    const { offers, price } = read(`${ADVERT}<p>${WORDS}</p><p>Contact the seller</p><ul>${cards}</ul>`);
    expect([offers, price]).toEqual([1, null]);
  });

  it('is not told by a price of one of its results', () => {
    const cards = neighbours(
      (name, price) => `<div class="card"><a href="/x"><h2>${name} of oak</h2></a><b>${price} €</b></div>`,
    );
    const { offers } = read(
      `<title>Old furniture: 5 adverts – Thrift Shelf</title><h1>Old furniture</h1><p>5 adverts, newest first</p><div class="card card--up"><span>First</span><a href="/x"><h2>Wardrobe of pine</h2></a><b>90 €</b></div>${cards}`,
    );
    expect(offers).toBeGreaterThan(1);
  });

  it('is no more where the title says that it is gone', () => {
    const cards = neighbours(
      (name, price) => `<a href="/x"><img src="/n.jpg"><h3>${name} of oak</h3><p class="price">£${price}</p></a>`,
    );
    expect(
      read(`<title>Advert not available</title><h1>This advert is no longer available</h1><div>${cards}</div>`),
    ).toMatchObject({
      offers: 0,
      title: '',
      price: null,
    });
  });
});

describe('things beside the advert', () => {
  it('are cards without a link, where three alike have a picture and a price', () => {
    const cards = neighbours(
      (name, price) =>
        `<div class="o"><img src="/n${price}.jpg"><span>${name} of oak</span><span>£${price}</span></div>`,
    );
    const { price, photos } = read(
      `${ADVERT}<img src="/a/1.jpg"><p class="ask">£95</p><p>${WORDS}</p><div class="others">${cards}</div>`,
    );
    expect(price).toMatchObject({ amount: '95' });
    expect(photos).toEqual(['https://market.example/a/1.jpg']);
  });

  it('may be sold already, and are cards all the same', () => {
    const cards = `${neighbours((name, price) => `<li class="k"><a href="/x">${name} of oak</a> <b>£${price}</b></li>`)}<li class="k"><a href="/y">Pine wardrobe, three doors</a> <b class="price">Sold</b></li>`;
    expect(read(`<title>On the shelf</title><h1>On the shelf</h1><ul>${cards}</ul>`).offers).toBe(5);
  });
});

describe('parts side by side', () => {
  it('are read apart, but the pieces of an amount together', () => {
    const { price, condition, place } = read(
      `${ADVERT}<div class="flex"><span class="p">£</span><span>265</span><span class="s">or £278.95 with protection</span></div><div class="flex"><span>Good, some wear</span><span>Collection only</span></div><div><i class="icon-map-pin"></i><span>Lillowbeck</span><span>·</span><span>12 days ago</span></div><p>${WORDS}</p>`,
    );
    expect(price).toMatchObject({ amount: '265', currency: 'GBP' });
    expect([condition, place]).toEqual(['Good, some wear', 'Lillowbeck']);
  });

  it('are named by what readers of screens are told', () => {
    const { place, condition } = read(
      `${ADVERT}<p class="price">£9</p><ul><li title="Lieu">3998 Oberquarn</li><li><span class="visually-hidden">Condition:</span> Rattles a little</li></ul><p>${WORDS}</p>`,
    );
    expect([place, condition]).toEqual(['3998 Oberquarn', 'Rattles a little']);
  });
});

describe('a place', () => {
  it('is what the head and the seller name again', () => {
    const { place } = read(
      `${ADVERT}<p>Netherholme · Used, whole · published on 18 November 2026</p><p class="price">£9</p><p>${WORDS} To be fetched in Netherholme.</p>`,
    );
    expect(place).toBe('Netherholme');
  });

  it('is not the name of the site', () => {
    const { place } = read(`${ADVERT}<p>Thrift Shelf</p><p class="price">£9</p><p>${WORDS}</p>`);
    expect(place).toBeNull();
  });
});

describe('the price of an auction', () => {
  const rows = (all: [string, string][]) =>
    all.map(([label, sum]) => `<div><div>${label}</div><div>${sum}</div></div>`).join('');

  it('is the bid that stands, though machines are told another', () => {
    const { price, fields } = read(
      `${ADVERT}<meta property="product:price:amount" content="420.00"><meta property="product:price:currency" content="GBP">${rows(
        [
          ['Estimate', '£300 – £500'],
          ['Starting bid', '£80.00'],
          ['Current bid', '£212.50'],
          ['Next minimum bid', '£217.50'],
          ['Buy it now', '£420.00'],
        ],
      )}<p>${WORDS}</p>`,
    );
    expect(price).toEqual({ amount: '212.50', currency: 'GBP', how: 'bid' });
    expect(fields.price!.confidence).toBeLessThan(0.8);
  });

  it('is what it starts at while nobody bids', () => {
    const { price } = read(`${ADVERT}${rows([['Starting bid', '£80.00']])}<p>${WORDS}</p>`);
    expect(price).toMatchObject({ amount: '80.00', how: 'bid' });
  });
});

describe('a price', () => {
  it('is what the thing was sold for, not what was asked', () => {
    const { price } = read(
      `${ADVERT}<meta property="product:price:amount" content="240.00"><meta property="product:price:currency" content="GBP"><p>Asked <s>£240</s> <strong>Sold for £210</strong></p><p>${WORDS}</p>`,
    );
    expect(price).toEqual({ amount: '210', currency: 'GBP', how: 'sold' });
  });

  it('is none where machines are told nought and the page says no amount', () => {
    const html = `${ADVERT}<script type="application/ld+json">{"@type":"Product","name":"Oak stand with a treadle","offers":{"@type":"Offer","price":"0","priceCurrency":"EUR"}}</script><p><a href="/contact">Price on request</a></p><p>${WORDS}</p>`;
    expect(read(html)).toMatchObject({ offers: 1, price: null });
  });

  it('of a category is not that of the advert', () => {
    const html = `<title>Oak stand with a treadle - Old furniture from 35 € - Thrift Shelf</title><script type="application/ld+json">{"@type":"Product","name":"Old furniture for every house","offers":{"@type":"AggregateOffer","lowPrice":"35","highPrice":"4200","offerCount":"613","priceCurrency":"EUR"}}</script><h1>Oak stand with a treadle</h1><p class="big">1.150 €</p><p>${WORDS}</p>`;
    expect(read(html).price).toEqual({ amount: '1150', currency: 'EUR', how: 'asking' });
  });
});

describe('a title', () => {
  it('is the part of the window’s that the page shows, not the name of the site in the first heading', () => {
    const html = `<title>Oak stand with a treadle - The Thrift Board</title><h1>The Thrift Board</h1><h2><a href="/t/1">Oak stand with a treadle</a></h2><p class="price">£95</p><p>${WORDS}</p>`;
    expect(read(html).title).toBe('Oak stand with a treadle');
  });

  it('stands over the price where no heading and no window says it', () => {
    const html = `<title>Thrift Shelf</title><div class="x"><div>Oak stand, with treadle</div><div class="price">£95</div></div><div>${WORDS}</div>`;
    expect(read(html).title).toBe('Oak stand, with treadle');
  });

  it('leaves out the state of its sale', () => {
    const html = `<title>Oak stand with a treadle</title><h1>Reserved • Oak stand with a treadle</h1><p class="price">£95</p><p>${WORDS}</p>`;
    expect(read(html).title).toBe('Oak stand with a treadle');
  });

  it('is told by its price and a way to its seller, though the head calls every page an article', () => {
    const html = (way: string) =>
      `${ADVERT}<meta property="og:type" content="article"><h2>Oak stand with a treadle - <span class="price">£15</span></h2><p>${WORDS}</p>${way}`;
    expect(read(html('<button>Contact the seller</button>')).offers).toBe(1);
    expect(read(html('')).offers).toBe(0);
  });

  it('is told by rows and words of selling, though the head calls every page an article', () => {
    const html = (words: string) =>
      `${ADVERT}<meta property="og:type" content="article"><h2>Oak stand with a treadle</h2><p>Asking £95</p><dl><dt>Wood</dt><dd>Oak</dd><dt>Drawers</dt><dd>Two</dd></dl><p>${WORDS}</p><p>${words}</p>`;
    expect(read(html('For sale as we are moving.')).offers).toBe(1);
    expect(read(html('Read more about oak.')).offers).toBe(0);
  });

  it('is told by the rows of an advert and a way to its seller, though the head calls every page an article', () => {
    const html = (rows: string) =>
      `${ADVERT}<meta property="og:type" content="article"><dl><dt>Condition</dt><dd>Worn</dd><dt>Wood</dt><dd>Oak</dd>${rows}</dl><p>${WORDS}</p>`;
    const known = '<dt>Item location</dt><dd>Netherholme</dd><dt>Posted</dt><dd>3 March 2024</dd>';
    expect(read(`${html(known)}<button>Contact the seller</button>`).offers).toBe(1);
    expect(read(html('')).offers).toBe(0);
  });

  it('is told by a price, many rows and a part called the description, though the head calls every page an article', () => {
    const row = (name: string) => `<tr><th>${name}</th><td>About nine</td></tr>`;
    const html = (rows: string[], label: string) =>
      `${ADVERT}<meta property="og:type" content="article"><p>£95.00</p><table>${rows.map(row).join('')}</table><h2>${label}</h2><p>${WORDS}</p>`;
    const many = ['Wood', 'Drawers', 'Grain', 'Legs', 'Knobs', 'Keys', 'Castors'];
    expect(read(html(many, 'Description')).offers).toBe(1);
    expect(read(html(many, 'How oak is felled')).offers).toBe(0);
  });

  it('is told by a place for the price with no amount in it', () => {
    const { offers, price } = read(
      `${ADVERT}<div class="side"><span class="price-now">0.00 руб.</span> <a href="/b">В корзину</a></div><p>${WORDS}</p>`,
    );
    expect([offers, price]).toEqual([1, null]);
  });

  it('is told by a label over its words, beside many neighbours', () => {
    const cards = neighbours(
      (name, price) => `<li><a href="/x"><img src="/n.jpg"><span>${name} of oak</span><b>£${price}</b></a></li>`,
    );
    const { offers, description } = read(
      `${ADVERT}<p>£12 / month</p><h2>Description</h2><p>Made anew, used for one winter</p><dl><dt>Wood</dt><dd>Oak</dd><dt>Drawers</dt><dd>Two</dd></dl><h2>Today</h2><ul>${cards}</ul>`,
    );
    expect([offers, description]).toEqual([1, 'Made anew, used for one winter']);
  });

  it.each(['Контакты продавца', 'Показать телефон', 'Контакти с подателя', 'В корзину'])(
    'is told by a way to its seller in Cyrillic letters: %s',
    (way) => {
      const { offers } = read(`${ADVERT}<p>Цена не указана</p><p>${WORDS}</p><p><a href="/c">${way}</a></p>`);
      expect(offers).toBe(1);
    },
  );
});
