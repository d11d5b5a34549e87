import fc from 'fast-check';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { collect, visit } from '../../src/listing/collect';
import { readListing } from '../../src/listing/read';
import { judge } from '../../src/listing/settle';
import type { Listing } from '../../src/listing/types';

const numRuns = process.env.BEDPLATE_LONG ? 500 : 60;
const ADDRESS = 'https://market.example/ad/417';
const { window } = new JSDOM('', { url: ADDRESS });
const parse = (html: string): Document => new window.DOMParser().parseFromString(html, 'text/html');
const escaped = (text: string) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** Words that mean nothing to the reader, so that a law holds for what stands around them. */
const wordOf = fc.constantFrom(
  'treadle',
  'oak',
  'turns',
  'a',
  'Gusseisen',
  'über',
  '½',
  '"x"',
  '&',
  '1950',
  'K',
  'l’arbre',
  '😀',
  '<b>',
  ',',
  'm.',
);
const words = (least: number, most: number) =>
  fc.array(wordOf, { minLength: least, maxLength: most }).map((all) => all.join(' '));
const amount = fc.integer({ min: 1, max: 99_999 }).map(String);
const currency = fc.constantFrom('GBP', 'EUR', 'CHF', 'USD');

const block = fc.oneof(
  words(1, 30).map((text) => `<p>${escaped(text)}</p>`),
  words(1, 6).map((text) => `<h2>${escaped(text)}</h2>`),
  fc
    .tuple(words(1, 2), words(1, 5))
    .map(([label, value]) => `<dl><dt>${escaped(label)}</dt><dd>${escaped(value)}</dd></dl>`),
  fc
    .tuple(words(1, 4), amount)
    .map(([text, price]) => `<div class="card"><a href="/x">${escaped(text)}</a> £${price}</div>`),
  amount.map((price) => `<p class="price">€${price}</p>`),
  fc.constantFrom(
    '<h2>Description</h2>',
    '<h2>Similar items</h2>',
    '<p>Condition: used</p>',
    '<img src="a.jpg">',
    '<hr>',
    '<table><tr><td>a<td>b</table>',
    '<div><span>',
    '</div>',
    '<b>',
    '<nav>',
    '<!-- x -->',
  ),
  words(1, 4).map(
    (text) => `<div itemscope itemtype="https://schema.org/Product"><b itemprop="name">${escaped(text)}</b></div>`,
  ),
  words(1, 4).map(
    (name) => `<script type="application/ld+json">${JSON.stringify({ '@type': 'Product', name })}</script>`,
  ),
);
const page = fc
  .tuple(words(0, 8), fc.array(block, { maxLength: 14 }))
  .map(([title, blocks]) => `<title>${escaped(title)}</title><h1>${escaped(title)}</h1>${blocks.join('\n')}`);

/** Mark-up as bad as it comes. */
const soup = fc
  .array(
    fc.oneof(
      fc.string({ maxLength: 20 }),
      fc.constantFrom(
        '<',
        '>',
        '<div ',
        'class="',
        '"',
        '<script type="application/ld+json">',
        '{"@type":"Product","offers":',
        '}',
        '</script>',
        '<form>',
        '<input name="firstChild">',
        '<table>',
        '<td>',
        '<template>',
        '<svg>',
        '<h1>',
        '£9',
        'itemscope itemref="a" id="a" ',
        '<style>',
        '&#0;',
        '\u0000',
      ),
    ),
    { maxLength: 40 },
  )
  .map((parts) => parts.join(''));

describe('reading a page', () => {
  it('twice says the same', () => {
    fc.assert(
      fc.property(page, (html) => {
        const document = parse(html);
        expect(readListing(document)).toEqual(readListing(document));
        expect(readListing(document)).toEqual(readListing(parse(html)));
      }),
      { numRuns },
    );
  });

  it('changes nothing there', async () => {
    await fc.assert(
      fc.asyncProperty(page, async (html) => {
        const document = parse(html);
        const before = document.documentElement.outerHTML;
        let changes = 0;
        const observer = new window.MutationObserver((records) => {
          changes += records.length;
        });
        observer.observe(document, { subtree: true, childList: true, attributes: true, characterData: true });
        collect(document);
        await Promise.resolve();
        changes += observer.takeRecords().length;
        observer.disconnect();
        expect(changes).toBe(0);
        expect(document.documentElement.outerHTML).toBe(before);
      }),
      { numRuns },
    );
  });

  it('never throws, whatever stands there, and keeps to its shape', () => {
    fc.assert(
      fc.property(fc.oneof(page, soup), (html) => {
        // Without the nets that keep a mistake of ours from the user.
        const harvest = visit(parse(html));
        // What crosses between contexts is plain JSON.
        expect(JSON.parse(JSON.stringify(harvest))).toEqual(harvest);
        const listing = judge(harvest, null);
        expect(JSON.parse(JSON.stringify(listing))).toEqual(listing);
        expect(listing.title.length).toBeLessThanOrEqual(500);
        expect(listing.description.length).toBeLessThanOrEqual(20_000);
        expect(listing.price === null || /^\d+(?:\.\d+)?$/.test(listing.price.amount)).toBe(true);
        for (const note of Object.values(listing.fields)) {
          expect(note.confidence).toBeGreaterThanOrEqual(0);
          expect(note.confidence).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: numRuns * 3 },
    );
  });

  it('is not changed by hidden text', () => {
    const hide = fc.constantFrom<(inner: string) => string>(
      (inner) => `<div hidden>${inner}</div>`,
      (inner) => `<div style="display:none">${inner}</div>`,
      (inner) => `<section style="visibility: hidden">${inner}</section>`,
      (inner) => `<template>${inner}</template>`,
      (inner) => `<!-- ${inner.replaceAll('-', '')} -->`,
      (inner) => `<dialog>${inner}</dialog>`,
    );
    const inner = fc.constantFrom(
      '<h1>Secret</h1>',
      '<p class="price">£1</p>',
      '<h2>Description</h2><p>Secret words of some length, never to be read.</p>',
      '<p>Condition: secret</p>',
      '<img src="secret.jpg">',
      '<a href="/s">Secret</a> £2',
    );
    fc.assert(
      fc.property(fc.array(block, { maxLength: 8 }), hide, inner, fc.nat(), (blocks, hiding, secret, where) => {
        // Whole blocks only: an open tag before it would hold the hidden part and what follows alike.
        const closed = blocks.filter((one) => !/^<(?:div><span|\/div|b|nav)>$/.test(one));
        const at = where % (closed.length + 1);
        const without = `<h1>Treadle in oak</h1>${closed.join('')}`;
        const withHidden = `<h1>Treadle in oak</h1>${closed.slice(0, at).join('')}${hiding(secret)}${closed.slice(at).join('')}`;
        expect(readListing(parse(withHidden))).toEqual(readListing(parse(without)));
      }),
      { numRuns: numRuns * 3 },
    );
  });
});

describe('structured data', () => {
  const thing = fc.record({
    name: words(2, 8),
    description: words(3, 20),
    price: amount,
    currency,
    condition: fc.constantFrom('Used', 'New', 'Refurbished', 'Damaged'),
    serial: fc.option(fc.constantFrom('K 20417', 'HB-9 118', '77120'), { nil: undefined }),
    town: fc.constantFrom('Netherholme', 'Upper Marl'),
    colour: fc.option(wordOf, { nil: undefined }),
  });

  /** What is said, without by whom. */
  const said = ({ fields, ...listing }: Listing) => ({
    ...listing,
    fields: Object.fromEntries(
      Object.entries(fields).map(([name, { confidence, alternatives }]) => [
        name,
        { confidence, alternatives: alternatives.map(({ value }) => value) },
      ]),
    ),
  });

  it('says the same as JSON-LD, as microdata and as RDFa', () => {
    fc.assert(
      fc.property(thing, (its) => {
        const jsonLd = JSON.stringify({
          '@context': 'https://schema.org',
          '@type': 'Product',
          name: its.name,
          description: its.description,
          serialNumber: its.serial,
          color: its.colour,
          image: `${ADDRESS}/1.jpg`,
          offers: {
            '@type': 'Offer',
            price: its.price,
            priceCurrency: its.currency,
            itemCondition: `https://schema.org/${its.condition}Condition`,
            availableAtOrFrom: { '@type': 'Place', address: { '@type': 'PostalAddress', addressLocality: its.town } },
          },
        }).replaceAll('<', '\\u003c');
        const meta = (name: string, value: string | undefined) =>
          value === undefined ? '' : `<meta itemprop="${name}" content="${escaped(value)}">`;
        const microdata = `<div itemscope itemtype="https://schema.org/Product">${meta('name', its.name)}${meta('description', its.description)}${meta('serialNumber', its.serial)}${meta('color', its.colour)}<link itemprop="image" href="${ADDRESS}/1.jpg">
        <div itemprop="offers" itemscope itemtype="https://schema.org/Offer">${meta('price', its.price)}${meta('priceCurrency', its.currency)}<link itemprop="itemCondition" href="https://schema.org/${its.condition}Condition">
        <div itemprop="availableAtOrFrom" itemscope itemtype="https://schema.org/Place"><div itemprop="address" itemscope itemtype="https://schema.org/PostalAddress">${meta('addressLocality', its.town)}</div></div></div></div>`;
        const property = (name: string, value: string | undefined) =>
          value === undefined ? '' : `<meta property="${name}" content="${escaped(value)}">`;
        const rdfa = `<div vocab="https://schema.org/" typeof="Product">${property('name', its.name)}${property('description', its.description)}${property('serialNumber', its.serial)}${property('color', its.colour)}<link property="image" href="${ADDRESS}/1.jpg">
        <div property="offers" typeof="Offer">${property('price', its.price)}${property('priceCurrency', its.currency)}<link property="itemCondition" href="https://schema.org/${its.condition}Condition">
        <div property="availableAtOrFrom" typeof="Place"><div property="address" typeof="PostalAddress">${property('addressLocality', its.town)}</div></div></div></div>`;
        const one = readListing(parse(`<script type="application/ld+json">${jsonLd}</script>`));
        const other = readListing(parse(microdata));
        expect(said(other)).toEqual(said(one));
        expect(said(readListing(parse(rdfa)))).toEqual(said(one));
        // And it says what was put in.
        expect(one.price).toEqual({ amount: its.price, currency: its.currency, how: 'asking' });
        expect([one.condition, one.place, one.serials]).toEqual([
          // That it is new is only believed where people read of a condition.
          its.condition === 'New' ? null : its.condition,
          its.town,
          its.serial ? [its.serial] : [],
        ]);
      }),
      { numRuns },
    );
  });

  it('that agrees with the page makes it surer, that disagrees is kept beside it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5000 }), fc.integer({ min: 1, max: 5000 }), (shown, told) => {
        const html = `<meta property="product:price:amount" content="${told}"><meta property="product:price:currency" content="GBP"><h1>Treadle in oak</h1><p class="price">£${shown}</p>`;
        const { price, fields } = readListing(parse(html));
        expect(price).toEqual({ amount: String(shown), currency: 'GBP', how: 'asking' });
        if (shown === told) expect(fields.price).toMatchObject({ confidence: 0.95, alternatives: [] });
        else {
          expect(fields.price!.confidence).toBeLessThan(0.6);
          expect(fields.price!.alternatives).toEqual([{ value: `${told} GBP`, source: 'meta' }]);
        }
      }),
      { numRuns },
    );
  });
});
