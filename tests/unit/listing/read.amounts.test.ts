import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { documentOf } from './dom';

const WORDS = 'It has been in my family for as long as I can remember, and it still turns freely.';
const NAME = 'Hand crank in its case';
const read = (html: string, language = 'en', url?: string) =>
  readListing(
    documentOf(`<html lang="${language}"><title>${NAME}</title><h1>${NAME}</h1>${html}<p>${WORDS}</p>`, url),
    url,
  );
const priceOf = (html: string, language?: string, url?: string) => {
  const { price } = read(html, language, url);
  return price && [price.amount, price.currency, price.how];
};

describe('an amount with a sign that several share', () => {
  it('is of the currency that machines are told of a product, whatever letter its type begins with', () => {
    const told =
      '{"@context":"http://schema.org","@type":"product","offers":[{"@type":"offer","price":"15.0","priceCurrency":"USD"}]}';
    expect(priceOf(`<script type="application/ld+json">${told}</script><p class="price">$15</p>`)).toEqual([
      '15',
      'USD',
      'asking',
    ]);
  });
});

describe('an amount without the tax', () => {
  it.each([
    [
      'in one line with the other, the rate in brackets',
      'de',
      'zzgl. MwSt (21%): 4,92 € Inkl. MwSt (21%): 5,95 €',
      '5.95',
    ],
    ['under a label, the one with the tax below', 'en', 'Ex VAT: £10.00</p><p>Inc VAT: £12.00', '12.00'],
    ['behind the amount', 'nl', '€ 100,00 excl. btw</p><p>€ 121,00 incl. btw', '121.00'],
    ['before the amount, in another language', 'sk', 'bez DPH 40,00 €</p><p>s DPH 48,00 €', '48.00'],
  ])('is not what is asked: %s', (_, language, html, amount) => {
    expect(priceOf(`<p>${html}</p>`, language)?.[0]).toBe(amount);
  });

  it('is what is asked where no other stands', () => {
    expect(priceOf('<p class="price">£12.00 (inc. VAT)</p>')).toEqual(['12.00', 'GBP', 'asking']);
  });

  it('is known by the name of its element', () => {
    const html =
      '<div><span class="price price-excluding-tax">4,92 €</span> <span class="price price-including-tax">5,95 €</span></div>';
    expect(priceOf(html, 'de')).toEqual(['5.95', 'EUR', 'asking']);
  });
});

describe('cents without a point', () => {
  it.each([
    ['set high', '<p class="price">173<sup>34</sup> €</p>', '173.34'],
    ['set high behind the sign', '<p class="price">£173<sup>34</sup></p>', '173.34'],
    [
      'in an element that only a style sheet from elsewhere sets high',
      '<p class="price">£229<span>99</span></p>',
      '229.99',
    ],
    ['behind thousands', '<p class="price">£1,229<span>99</span></p>', '1229.99'],
  ])('are read: %s', (_, html, amount) => {
    expect(priceOf(html)?.[0]).toBe(amount);
  });

  it('are none in one text with the amount, or where more than two digits follow', () => {
    expect(priceOf('<p class="price">£22999</p>')?.[0]).toBe('22999');
    expect(priceOf('<p class="price">£1<span>250</span></p>')?.[0]).toBe('1250');
  });
});

describe('a copy for readers of screens, glued to what is seen', () => {
  it('is the same price twice', () => {
    const html =
      '<p><span class="price"><span class="offscreen">£229.99</span><span aria-hidden="true">£229.99</span></span></p>';
    expect(priceOf(html)).toEqual(['229.99', 'GBP', 'asking']);
  });

  it('belongs to no saving that ends right before it', () => {
    const { price, priceText } = read(
      '<div class="price-box"><span class="saving">SAVE 70</span><span class="for-screens">£229.99</span></div>',
    );
    expect([price?.amount, priceText]).toEqual(['229.99', '£229.99']);
  });

  it('leaves a saving that is told in words what it is', () => {
    expect(priceOf('<p>Save <b>£70.00</b></p><p class="price">£229.99</p>')?.[0]).toBe('229.99');
  });
});

describe('at an auction', () => {
  it('the count of bids is no part of an amount that it is glued to', () => {
    const html = '<div><span class="price">$200</span><span>2 bids</span></div><p>Starting price $150</p>';
    expect(priceOf(html)?.slice(0, 1)).toEqual(['200']);
    expect(priceOf(html)?.[2]).toBe('bid');
  });

  it('what is bid goes before what has to be bid next', () => {
    const html = '<p>Current bid: £40.00</p><p>3 bids</p><p>Next minimum bid: £42.50</p><p>Bid £42.50 or more</p>';
    expect(priceOf(html)).toEqual(['40.00', 'GBP', 'bid']);
  });

  it('the way to bid in the panel of the first bid makes no other thing of it', () => {
    const html = `<table><tr><td><div>Prezzo di partenza:</div><div class="price">12,99 €</div><div><a href="/b">0 offerte</a></div>
      <a href="/o" role="button">Fai un'offerta</a><div><a href="/r">Ripristina l'offerta</a>, se la pagina non viene aggiornata immediatamente.</div></td></tr></table>
      <table><tr><td><div>Proposta d'acquisto:</div><a href="/p" role="button">Fai una proposta da 11,00 €</a></td></tr></table>`;
    expect(priceOf(html, 'it')).toEqual(['12.99', 'EUR', 'bid']);
  });
});

describe('amounts beside the price', () => {
  it('of a small form are ways to buy the one thing, whatever they link to', () => {
    const html = `<form><div class="cost"><p class="price">173,34 €</p><p><a href="/rates">see the details</a></p></div>
      <div class="others"><a href="/o">one more offer, from another shop at <b>271,99 €</b></a></div><button>Add to basket</button></form>`;
    expect(priceOf(html)?.[0]).toBe('173.34');
  });

  it('may be parts of it', () => {
    const html = '<p class="price">£1,150.00</p><p>or 4 x £287.50</p><p>Machine £1,100.00 + case £50.00</p>';
    expect(priceOf(html)).toEqual(['1150.00', 'GBP', 'asking']);
  });
});

describe('a point that parts thousands', () => {
  it.each([
    ['de', '€ 20.000', '20000', 'EUR'],
    ['es', '24.990 €', '24990', 'EUR'],
    ['nl', '€ 1.250,-', '1250', 'EUR'],
  ])('needs no decimals behind it: %s', (language, written, amount, currency) => {
    expect(priceOf(`<p class="price">${written}</p>`, language)?.slice(0, 2)).toEqual([amount, currency]);
  });
});

describe('a price "as usual"', () => {
  it('is the price where no lower one stands beside it', () => {
    expect(priceOf('<ul><li class="price"><span class="price-old-live">40.00€</span></li></ul>')?.[0]).toBe('40.00');
    expect(priceOf('<p><span class="regular-price"><span>£40.00</span></span></p>')?.[0]).toBe('40.00');
  });

  it('goes before what an accessory further down costs', () => {
    const accessory = '<section><h2>To go with it</h2><p>A key</p><p class="price">£3.50</p></section>';
    const between = Array.from({ length: 16 }, (_, at) => `<p>Fact ${at}</p>`).join('');
    expect(priceOf(`<div class="regular-price price">£40.00</div>${between}${accessory}`)?.[0]).toBe('40.00');
  });

  it('is none where a lower one does', () => {
    const html = '<p><span class="old-price">£60.00</span></p><p><span class="special-price">£40.00</span></p>';
    expect(priceOf(html)?.[0]).toBe('40.00');
  });

  it.each([
    ['a measure', 'de', '43,00 € / 1 l'],
    ['a measure, by its label', 'de', 'Grundpreis: 43,00 €/l'],
    ['a measure that equals it', 'de', '1 kg = 43,00 €'],
    ['a measure, in words', 'en', '€4.00 per 100g'],
    ['it as usual', 'en', 'Regular price: €60.00'],
    ['it as usual, shortly', 'sv', 'Ord. pris 60,00 €'],
    ['it by the maker', 'fr', 'Prix conseillé : 60,00 €'],
    ['it by a list', 'nl', 'Adviesprijs € 60,00'],
    ['it at its lowest', 'de', 'Niedrigster Preis der letzten 30 Tage: 10,00 €'],
  ])('is not what another costs: %s', (_, language, html) => {
    expect(priceOf(`<p>${html}</p><p>40,00 €</p>`, language)?.[0]).toBe('40.00');
    expect(priceOf(`<p>${html}</p>`, language)).not.toBeNull();
  });

  it('is not what is crossed out by name beside it', () => {
    const html = '<p class="prices"><span class="price cross">£60.00</span> <span class="sale-price">£40.00</span></p>';
    expect(priceOf(html)?.[0]).toBe('40.00');
  });

  it('may stand on the button that buys', () => {
    const html = '<button class="add button alt">Add to cart - <div class="dynamic-price">£40.00</div></button>';
    expect(priceOf(html)?.[0]).toBe('40.00');
  });

  it('is none where it is struck out, nor is what is saved', () => {
    expect(priceOf('<p><s class="old-price">£60.00</s></p>')).toBeNull();
    expect(priceOf('<p><span class="price savings">£60.00</span></p>')).toBeNull();
  });
});

describe('an amount that its element alone calls the price', () => {
  it('is none of postage for what stands above it of the delivery', () => {
    const html = (above: string) =>
      `<div><p class="stock">${above}</p><div class="price-box"><span class="price">845,00 €</span><br>Abholpreis mit 19% MwSt</div></div>`;
    expect(priceOf(html('Verfügbarkeit: sofort lieferbar'), 'de')).toEqual(['845.00', 'EUR', 'asking']);
    expect(priceOf(html('Sofort lieferbar'), 'de')).toEqual(['845.00', 'EUR', 'asking']);
  });

  it('may have no sign, and is then in the money that the page says for all of its prices', () => {
    const html = (foot: string) =>
      `<div class="price-part"><span class="price-today">58.<span>50</span></span></div><button>In den Warenkorb</button><dl><dt>Versandkosten:</dt><dd>12,00 €</dd></dl><p>${foot}</p>`;
    expect(priceOf(html('Unsere Preise verstehen sich in Euro (€).'), 'de')).toEqual(['58.50', 'EUR', 'asking']);
    expect(priceOf('<div class="offer-price">58.50</div><button>Add to basket</button>')).toEqual([
      '58.50',
      null,
      'asking',
    ]);
    expect(priceOf('<div class="price-count">4</div><button>Add to basket</button>')).toBe(null);
  });

  it.each([
    ['48 500 тг.', 'ru', '48500', 'KZT'],
    ['1 250 000 ₸', 'ru', '1250000', 'KZT'],
    ['1 250 ₾', 'ka', '1250', 'GEL'],
    ['4.500 дин.', 'sr', '4500', 'RSD'],
  ])('is in the money of its country: %s', (text, language, amount, currency) => {
    expect(priceOf(`<div><span class="bp-price">${text}</span></div>`, language)).toEqual([amount, currency, 'asking']);
  });

  it('is the price though the name of its box says a word of something else, too', () => {
    const steps = ['Bronze', 'Silver', 'Gold']
      .map((name, at) => `<li class="price-step"><b>${name} price:</b><p class="price">US $6.${80 - at * 10}</p></li>`)
      .join('');
    const html = `<ul><li class="price-without-login price-step"><b>Price per ten:</b> <span itemprop="price">US $7.20</span></li>${steps}</ul>`;
    expect(priceOf(html)?.[0]).toBe('7.20');
  });

  it('is the price where one form says it above and below', () => {
    const box = '<div class="price-box"><span class="price">41,00 €</span></div>';
    const facts = ['Značka', 'Farba', 'Kód tovaru', 'Veľkosť', 'Kategória', 'Materiál', 'Pôvod', 'Rok']
      .map((name) => `<div class="fact"><span>${name}:</span><h4><a href="/x">${name} a všetky ostatné</a></h4></div>`)
      .join('');
    const html = `<form class="form-of-buying"><div class="upper-part">${box}${facts}<ul><li><a href="/c">Porovnať s inými</a></li></ul></div><div class="lower-part">${box}<ul><li><a href="/c">Porovnať s inými</a></li></ul></div></form>`;
    expect(priceOf(html, 'sk')).toEqual(['41.00', 'EUR', 'asking']);
  });

  it('is known by a label in Cyrillic letters, and so is what it is not', () => {
    expect(priceOf('<dl><dt>Доставка</dt><dd>300 руб</dd><dt>Цена</dt><dd>4 500 руб</dd></dl>', 'ru')).toEqual([
      '4500',
      'RUB',
      'asking',
    ]);
    expect(read('<dl><dt>Цена</dt><dd>4 500 руб</dd><dt>Состояние</dt><dd>Хорошее</dd></dl>', 'ru').condition).toBe(
      'Хорошее',
    );
  });
});

describe('whose dollars they are', () => {
  const sureOf = (url: string) => read('<p class="price">$40.00</p>', 'en', url).fields.price?.confidence ?? 0;
  it('is told by the country of the page', () => {
    expect(priceOf('<p class="price">$40.00</p>', 'en', 'https://market.example.nz/40')).toEqual([
      '40.00',
      'NZD',
      'asking',
    ]);
    expect(sureOf('https://market.example.nz/40')).toBeGreaterThan(sureOf('https://market.example/40'));
  });
  it('or nobody knows, and the price is not sure', () =>
    expect(sureOf('https://market.example/40')).toBeLessThanOrEqual(0.75));
});

it.each([
  ['pl', 'od 59,90 zł', 'PLN'],
  ['sv', 'från 590 kr', 'SEK'],
])('is the least of several in other languages: %s, %s', (language, text, currency) =>
  expect(priceOf(`<p class="price">${text}</p>`, language)?.slice(1)).toEqual([currency, 'from']),
);

describe('what stands beside a price in elements of its own', () => {
  it('is said of the next amount, where it stands in the element of that', () => {
    const html =
      '<p class="price"><span class="price">140 €</span><span> Trattabile</span><span> Spedizione da 7,90 €</span></p>';
    expect(priceOf(html, 'it')).toEqual(['140', 'EUR', 'asking']);
  });

  it('is the old price, where it is struck out in a sentence', () => {
    const html =
      '<p>It turns freely. Price: <del>£420</del> <b>£360</b> with the post paid to anywhere in the land.</p>';
    expect(priceOf(html)).toEqual(['360', 'GBP', 'asking']);
  });

  it('counts the bids that were made', () => {
    const html = '<div><div>Standing at</div><div><b>£85</b> 7 bids, reserve not met</div></div>';
    expect(priceOf(html)).toEqual(['85', 'GBP', 'bid']);
  });
});

describe('a row of labels over a row of amounts', () => {
  const row = (cells: string[]) => `<tr>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`;
  const labels = ['Estimate', 'Opened at', 'Hammer', 'With 18% premium'];

  it('says which of them is what was paid', () => {
    const html = `<table>${row(labels)}${row(['£300-450', '£100', '£410', '£483.80'])}</table>`;
    expect(priceOf(html)).toEqual(['410', 'GBP', 'sold']);
  });

  it('is none where more rows follow', () => {
    const rows = [row(['What', 'Hammer']), row(['Box of shuttles', '£12']), row(['Piano stool', '£14'])];
    expect(priceOf(`<p class="price">£45</p><table>${rows.join('')}</table>`)?.[0]).toBe('45');
  });
});

describe('an amount of another thing', () => {
  it.each([
    ['a measure of ground', '<p>£465,000</p><div><div>Price per area</div><div>£289 /sqft</div></div>', '465000'],
    ['what such things go for', '<p>£470</p><div><h4>Median price:</h4><div class="v">£635</div></div>', '470'],
    [
      'what a button reckons',
      '<p class="list-price">£1,495</p><p><button>Est. £106 <span>/mo</span></button></p>',
      '1495',
    ],
    [
      'the cents of a third line',
      `<p>£20.00</p>${'<div class="price"><b>12</b><i>£</i><u>00</u></div>'.repeat(3)}`,
      '20.00',
    ],
  ])('is none that is asked: %s', (_, html, amount) => {
    expect(priceOf(html)?.[0]).toBe(amount);
  });

  it('is asked for a thing in average condition', () => {
    expect(priceOf('<p>In average condition £45</p>')?.[0]).toBe('45');
  });

  it('is no day on which it was sold', () => {
    expect(priceOf('<p>£550</p><div><div>Sold</div><p>June 1932</p></div>')).toEqual(['550', 'GBP', 'asking']);
  });

  it('is no count of what was sold, nor a sum far below', () => {
    const far = '<li>It has a turned knob.</li>'.repeat(50);
    const below = `<div><h4>Sold</h4><p>11</p></div><ul>${far}</ul><p>Guarantee of the firm, for a sum of £120,000</p>`;
    expect(priceOf(`<p>£550</p>${below}`)).toEqual(['550', 'GBP', 'asking']);
  });

  it('leaves the price near the title where a form far below asks for one', () => {
    const far = '<p>It has a turned knob and a brass plate.</p>'.repeat(60);
    const form = '<h2>What could you pay?</h2><div><div><div>Price</div></div><p>Your income</p></div>';
    expect(priceOf(`<p>£550</p>${far}${form}`)).toEqual(['550', 'GBP', 'asking']);
  });
});

it('reads the price behind a long heading', () => {
  const heading = "Hand crank in its case, with a key and the '08 spindle in oak - £8500 (Haddercombe)";
  const title = heading.replace(' - £8500 (Haddercombe)', '');
  const listing = readListing(documentOf(`<html lang="en"><title>${title}</title><h2>${heading}</h2><p>${WORDS}</p>`));
  expect(listing.price?.amount).toBe('8500');
});

it('reads rands where an element is called the price', () => {
  expect(priceOf('<p class="price">R 4 500</p>', 'en-za')).toEqual(['4500', 'ZAR', 'asking']);
  expect(priceOf('<p class="price">R4,500.00</p>', 'en', 'https://market.example.za/1')).toEqual([
    '4500.00',
    'ZAR',
    'asking',
  ]);
  expect(priceOf('<p class="price">R 4 500</p>')).toEqual(['4500', 'ZAR', 'asking']);
  expect(priceOf('<p>R 80</p><p class="price">£45</p>')?.[0]).toBe('45');
});

it('from which sum on sending is free is no price', () => {
  for (const banner of ['FREE SHIPPING over £100', 'Free delivery on orders over £50 | Hassle-free returns']) {
    expect(priceOf(`<p>${banner}</p>`)).toBe(null);
    expect(priceOf(`<p>${banner}</p><p class="price">£139.99</p>`)).toEqual(['139.99', 'GBP', 'asking']);
  }
});
