import { JSDOM } from 'jsdom';
import { describe, expect, it, vi } from 'vitest';
import { collect, collectInSlices } from '../../../src/listing/collect';
import { readListing } from '../../../src/listing/read';
import { settle } from '../../../src/listing/settle';
import { ADDRESS, documentOf } from './dom';

const bytes = (value: unknown) => new TextEncoder().encode(JSON.stringify(value)).length;
const ADVERT =
  '<h1>Hand crank with a key</h1><p class="price">£40</p><h2>Description</h2><p>It came out of a loft.</p>';
const READ = { title: 'Hand crank with a key', description: 'It came out of a loft.', priceText: '£40' };

describe('what a hostile page can do', () => {
  it('name its fields like the properties of nodes', () => {
    const clobbering =
      '<form name="body"><input name="firstChild"><input name="nextSibling"><input name="attributes"><input name="children">' +
      '<input name="getAttribute"><input name="nodeType"><input name="parentNode"><input name="textContent"><input name="localName">' +
      '<img name="documentElement"><img name="defaultView"><img name="URL"><img name="baseURI"><img id="querySelectorAll">' +
      `${ADVERT}</form>`;
    expect(readListing(documentOf(clobbering))).toMatchObject(READ);
  });

  it('put its own names into JSON-LD', () => {
    const html = `<script type="application/ld+json">{"@type":"Product","__proto__":{"name":"polluted","polluted":1},"constructor":{"name":"x"},"name":"Hand crank with a key","offers":{"__proto__":{"price":"1"},"price":"40","priceCurrency":"GBP"}}</script>${ADVERT}`;
    const listing = readListing(documentOf(html));
    expect(listing).toMatchObject({ ...READ, price: { amount: '40', currency: 'GBP' } });
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
    expect(JSON.stringify(listing)).not.toContain('polluted');
  });

  it.each([
    ['broken', '{"@type":"Product","name":"Broken'],
    ['a bare word', 'undefined'],
    ['empty', ''],
    ['null', 'null'],
    ['a deep array', `${'['.repeat(10_000)}${']'.repeat(10_000)}`],
    ['a deep object', `${'{"a":'.repeat(10_000)}1${'}'.repeat(10_000)}`],
    [
      'a deep chain of offers',
      `{"@type":"Product","name":"x"${',"offers":{"@type":"AggregateOffer"'.repeat(5000)}${'}'.repeat(5001)}`,
    ],
    [
      'a graph that refers to itself',
      '{"@id":"#a","@type":"Product","offers":{"@id":"#a"},"@graph":[{"@id":"#a","@type":"Offer","offers":{"@id":"#a"},"itemOffered":{"@id":"#a"}}]}',
    ],
    [
      'things of the wrong kind',
      '{"@type":{"a":1},"@id":5,"name":[[[null,1,{"@value":true}]]],"offers":"none","image":{"url":{"url":1}}}',
    ],
  ])('write JSON-LD that is %s', (_, block) => {
    const listing = readListing(documentOf(`<script type="application/ld+json">${block}</script>${ADVERT}`));
    expect(listing).toMatchObject({ description: READ.description, price: { amount: '40' } });
  });

  it('refer in circles by itemref', () => {
    const html = `<div itemscope itemtype="https://schema.org/Product" id="a" itemref="a b c"><div id="b" itemprop="offers" itemscope itemtype="https://schema.org/Offer" itemref="a b c"></div></div><div id="c" itemprop="isSimilarTo" itemscope itemref="a"></div>${ADVERT}`;
    expect(readListing(documentOf(html))).toMatchObject(READ);
  });

  it('nest deeply', () => {
    // The parser of the command line takes its time here; a browser's cuts at 512 levels. 10,000 levels: walk.test.ts.
    const html = `${'<div class="x">'.repeat(500)}${'<section>'.repeat(300)}${ADVERT}`;
    expect(readListing(documentOf(html))).toMatchObject(READ);
  });

  it('nest items and property elements', () => {
    const items = '<div itemprop="a" itemscope>'.repeat(400) + '<div itemprop="a">'.repeat(400);
    expect(readListing(documentOf(`<div>${ADVERT}</div>${items}`))).toMatchObject(READ);
  });

  it('hold 100,000 nodes around the advert', () => {
    const junk = '<div class="filler"><span>word</span> <b>other</b></div>'.repeat(8_400);
    const harvest = collect(documentOf(`${junk}<main>${ADVERT}</main>${junk}`));
    expect(harvest.cut).toBe(true);
    expect(bytes(harvest)).toBeLessThan(400_000);
    expect(settle(harvest)).toMatchObject(READ);
  });

  it('hold 5 MB in one text, one attribute, one script', () => {
    const much = 'Unsinn " \\ \u{10000} '.repeat(200_000);
    const html = `<html lang="${'x'.repeat(50_000)}"><title>${'t'.repeat(50_000)}</title><meta name="description" content='${much.slice(0, 500_000)}'><script type="application/ld+json">{"@type":"Product","name":"${'y'.repeat(1_000_000)}"}</script><body class="${'z'.repeat(50_000)}" style="${'text-decoration'.repeat(20_000)}">${ADVERT}<p>${much}</p>`;
    const harvest = collect(documentOf(html));
    expect(bytes(harvest)).toBeLessThan(400_000);
    expect(harvest.cut).toBe(true);
    expect(settle(harvest).title).toBe(READ.title);
  });

  it('have a title of 50 KB', () => {
    const html = `<title>${'long '.repeat(10_000)}</title><h1>${'long '.repeat(10_000)}</h1><p class="price">£40</p>`;
    const { title } = readListing(documentOf(html));
    expect(title.length).toBeLessThanOrEqual(500);
    expect(title.startsWith('long long')).toBe(true);
  });

  it('names of currencies in thousands of scripts are cut', () => {
    const scripts = '<script>var shop = { currencyCode: "SEK" };</script>'.repeat(4000);
    const { metas } = collect(documentOf(ADVERT + scripts));
    expect(metas.filter(([name]) => name === 'currency').length).toBeLessThan(200);
  });

  it('fill every cap at once and stay under 400 kB', () => {
    const each = (count: number, make: (n: number) => string) =>
      Array.from({ length: count }, (_, n) => make(n)).join('');
    const html =
      each(2000, (n) => `<meta property="og:title" content="ж${n} ${'ж'.repeat(500)}">`) +
      each(
        300,
        (n) => `<script type="application/ld+json">{"@type":"Product","name":"${n} ${'ж'.repeat(2000)}"}</script>`,
      ) +
      each(
        1200,
        (n) =>
          `<div itemscope itemtype="https://schema.org/Product"><p itemprop="name">${n} ${'ж'.repeat(200)}</p></div>`,
      ) +
      each(
        40,
        (n) => `<script>x(${JSON.stringify({ title: `ж${n}`, description: 'ж'.repeat(9000), price: n })})</script>`,
      ) +
      each(
        400,
        (n) => `<p vocab="https://schema.org/" typeof="Product"><b property="name">${n} ${'ж'.repeat(200)}</b></p>`,
      ) +
      each(20, (n) => `<iframe src="https://else.example/${n}${'e'.repeat(900)}"></iframe>`) +
      each(600, (n) => `<img src="/p${n}-${'p'.repeat(900)}.jpg"><time datetime="2024-01-${n}">x</time>`) +
      each(
        3000,
        (n) =>
          `<section class="${'wide '.repeat(20)}"><h2>ж${n}</h2><p>${n} "\\ <b class="price ${'q'.repeat(100)}">£${n}</b> <i>${'ж'.repeat(30)}</i></p></section>`,
      );
    const harvest = collect(documentOf(html));
    expect(bytes(harvest)).toBeLessThan(400_000);
    expect(harvest.cut).toBe(true);
    expect(settle(harvest).photos.length).toBeLessThanOrEqual(40);
  });

  it('be no page at all', () => {
    const empty = new JSDOM('').window.document;
    empty.documentElement.remove();
    expect(readListing(empty)).toMatchObject({ title: '', price: null, offers: 0 });
    const made = new JSDOM('').window.document.implementation.createHTMLDocument('x');
    expect(readListing(made, ADDRESS)).toMatchObject({ url: ADDRESS, price: null });
    expect(readListing({} as Document, ADDRESS)).toMatchObject({ url: ADDRESS, title: '', offers: 0 });
    expect(readListing(null as unknown as Document)).toMatchObject({ title: '', offers: 0 });
  });
});

describe('a harvest from nowhere', () => {
  it.each([
    ['points outside its own page', { lines: [{ text: 'x', box: 9 }], boxes: [], pictures: [], times: [] }],
    [
      'has boxes that hold each other',
      {
        lines: [{ text: 'x', box: 0 }],
        boxes: [{ tag: 'div', parent: 0, from: 0, to: 1, hint: '' }],
        pictures: [{ address: 'x', box: 7, line: 9, linked: true }],
        times: [{ value: '', line: 99 }],
      },
    ],
    ['is no harvest', null],
  ])('that %s is settled without a throw', (_, page) => {
    const harvest = { ...collect(documentOf(ADVERT)), page } as unknown as Parameters<typeof settle>[0];
    expect(settle(harvest)).toMatchObject({ price: null });
  });
});

describe('what is visible', () => {
  const withHidden = (hidden: string) =>
    documentOf(
      `<h1>Hand crank with a key</h1><p class="price">£40</p><h2>Description</h2><div><p>It came out of a loft.</p>${hidden}</div>`,
    );

  it.each([
    ['the hidden attribute', '<p hidden>secret £9</p>'],
    ['inline display:none', '<div style="color:red; display : none"><p>secret £9</p></div>'],
    ['inline visibility:hidden', '<p style="visibility:hidden">secret £9</p>'],
    ['a template', '<template><p>secret £9</p></template>'],
    ['noscript', '<noscript><p>secret £9</p></noscript>'],
    ['script and style', '<script>var a = "secret £9"</script><style>.a:before { content: "secret £9" }</style>'],
    ['text for screen readers', '<p class="sr-only">secret £9</p>'],
    ['a waiting dialog', '<div class="modal" aria-hidden="true">secret £9</div><dialog>secret £9</dialog>'],
    ['fields of a form', '<select><option>secret £9</option></select><textarea>secret £9</textarea>'],
    ['a comment', '<!-- secret £9 -->'],
  ])('is not %s', (_, hidden) => {
    expect(readListing(withHidden(hidden))).toEqual(readListing(withHidden('')));
  });

  it('is what a slider turns no back to', () => {
    const styled =
      '<div style="position: relative; -webkit-backface-visibility: hidden"><p>Two feet with it.</p></div>';
    expect(readListing(withHidden(styled)).description).toContain('Two feet');
  });

  it('is text that only screen readers skip', () => {
    expect(readListing(withHidden('<p aria-hidden="true">Two feet with it.</p>')).description).toContain('Two feet');
  });

  it('is text inside open shadow roots', () => {
    const document = documentOf('<ad-view></ad-view>');
    document.querySelector('ad-view')!.attachShadow({ mode: 'open' }).innerHTML = ADVERT;
    expect(readListing(document)).toMatchObject(READ);
  });

  it.each(['ad-view', 'section'])(
    'is text inside a closed shadow root of <%s>, where the browser shows it to extensions',
    (tag) => {
      const document = documentOf(`<${tag}></${tag}>`);
      const closed = document.querySelector(tag)!.attachShadow({ mode: 'closed' });
      closed.innerHTML = ADVERT;
      expect(readListing(document).title).toBe('');
      vi.stubGlobal('chrome', {
        dom: { openOrClosedShadowRoot: (of: Element) => (of.localName === tag ? closed : null) },
      });
      expect(readListing(document)).toMatchObject(READ);
      const fails = () => {
        throw new TypeError('not an element of HTML');
      };
      vi.stubGlobal('chrome', { dom: { openOrClosedShadowRoot: fails } });
      expect(collect(document).cut).toBe(false);
      vi.unstubAllGlobals();
    },
  );

  it('is text inside a frame of the same origin; of another origin the address is told', () => {
    const document = documentOf('<p>Adverts</p><iframe></iframe><iframe src="https://else.example/ad/7"></iframe>');
    const [ours, other] = document.querySelectorAll('iframe');
    ours!.contentDocument!.body.innerHTML = ADVERT;
    expect(collect(document).unread).toEqual([]);
    // What a browser answers of another origin.
    Object.defineProperty(Object.getPrototypeOf(other), 'contentDocument', {
      configurable: true,
      get(this: HTMLIFrameElement) {
        return this === other ? null : ours!.ownerDocument.defaultView!.frames[0]!.document;
      },
    });
    expect(readListing(document)).toMatchObject(READ);
    expect(collect(document).unread).toEqual(['https://else.example/ad/7']);
  });

  it('is the same in slices, whatever the page does between them', async () => {
    const filler = '<div class="filler"><span>word</span> <b>other</b></div>'.repeat(1000);
    const html = `<main>${ADVERT}</main>${filler}`;
    let pauses = 0;
    const pause = async () => pauses++;
    expect(await collectInSlices(documentOf(html), { slice: 0, pause })).toEqual(collect(documentOf(html)));
    expect(pauses).toBeGreaterThan(10);

    // A page that takes away what is being read, at every pause.
    const document = documentOf(html);
    const harvest = await collectInSlices(document, {
      slice: 0,
      pause: async () => document.querySelector('.filler')?.remove(),
    });
    expect(settle(harvest)).toMatchObject({ title: READ.title });
    document.documentElement.remove();
    expect((await collectInSlices(document)).page.lines).toEqual([]);
  });
});
