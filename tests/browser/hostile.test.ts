import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Driven } from '../../src/cli/demo/driven';
import type { Panel } from '../../src/cli/demo/panel';
import { folderOf, ourRequests, press, seenErrors } from './hands';
import { openTestedRoom, type Room } from './support/browser';

const RUN = 'globalThis.ran = (globalThis.ran ?? 0) + 1';
const PAYLOADS = {
  script: `<script>${RUN}</script>`,
  handler: `<img src=x onerror="${RUN}"><svg onload="${RUN}">`,
  frame: `<iframe srcdoc="<script>parent.ran=1</script>"></iframe>`,
  style: '</style><style>*{display:none!important;background:url(//evil.example/x)}</style>',
  attribute: `" onmouseover="${RUN}" style="position:fixed;inset:0;background:#f00`,
  address: `javascript:${RUN}`,
  template: `{{constructor.constructor('${RUN}')()}} \${${RUN}}`,
  entity: '&lt;script&gt;&#60;script&#62;',
  turned: '\u202egnirts desrever\u202c \u2066isolated\u2069 \u200bnothing',
} as const;

const escaped = (text: string) =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c] ?? c);

/** A page that carries one payload in every field that is read, in all kinds of mark-up. */
function pageWith(payload: string): string {
  const title = `Sewing machine ${payload}`;
  const data = {
    '@context': 'https://schema.org',
    '@type': 'Product',
    name: title,
    description: `Old sewing machine. ${payload} Serial no. ${payload}. Rare, cast iron, 11 kg.`,
    serialNumber: payload,
    itemCondition: payload,
    image: [`https://evil.example/${encodeURIComponent(payload)}.jpg`, payload],
    offers: { '@type': 'Offer', price: `40 ${payload}`, priceCurrency: payload, availableAtOrFrom: payload },
  };
  return `<!doctype html><html lang="${escaped(payload)}"><head><meta charset="utf-8"><title>${escaped(title)}</title>
<meta property="og:title" content="${escaped(title)}"><meta property="og:description" content="${escaped(payload)}">
<meta property="product:price:amount" content="${escaped(payload)}">
<script type="application/ld+json">${JSON.stringify(data).replaceAll('<', '\\u003c')}</script></head>
<body itemscope itemtype="https://schema.org/Product"><h1 itemprop="name">${escaped(title)}</h1>
<p itemprop="description">${escaped(payload)} An old sewing machine, rare.</p>
<dl><dt>Serial number</dt><dd>${escaped(payload)}</dd><dt>Condition</dt><dd>${escaped(payload)}</dd>
<dt>${escaped(payload)}</dt><dd>${escaped(payload)}</dd></dl><p>Price: £40 ${escaped(payload)}</p></body></html>`;
}

const plain = pageWith('plain');
const advert =
  '<!doctype html><meta charset="utf-8"><title>Sewing machine</title><h1>Sewing machine</h1><p>Price: £40</p><p>Old sewing machine, cast iron.</p>';
const manyNodes = `${advert}${'<p><b>x</b></p>'.repeat(50_000)}`;
const deep = `${advert}${'<div>'.repeat(5000)}<p>Old sewing machine.</p>`;
const fiveMegabytes = `${advert}${`<p>${'It runs well and sews well. '.repeat(75)}</p>`.repeat(2400)}`;
const broken = `${advert}<script type="application/ld+json">{"@type":"Product","name":</script>
<script type="application/ld+json">{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"@type":"Product","name":"Sewing machine"}</script>
<script type="application/ld+json">${'['.repeat(20_000)}</script>`;
const clobbered = `${advert}
<form name="body"><input name="querySelectorAll"><input name="textContent"></form><img name="documentElement"><a id="title"></a>`;

const files: Record<string, string> = {
  'plain.html': plain,
  'long-title.html': pageWith('x'.repeat(50_000)),
  'many-nodes.html': manyNodes,
  'five-megabytes.html': fiveMegabytes,
  'deep.html': deep,
  'broken.html': broken,
  'clobbered.html': clobbered,
};
for (const [name, payload] of Object.entries(PAYLOADS)) files[`${name}.html`] = pageWith(payload);

let room: Room<Driven>;
let harmless: Awaited<ReturnType<typeof pressed>>;
beforeAll(async () => {
  room = await openTestedRoom({ market: folderOf(files) });
  harmless = await pressed('plain.html');
});
afterAll(() => room?.close());

/** What must not differ between a harmless page and any other. */
function looks(panel: Panel) {
  return panel.evaluate(() => {
    const body = getComputedStyle(document.body);
    const header = getComputedStyle(document.querySelector('.plate') as Element);
    return {
      ran: (globalThis as { ran?: number }).ran ?? 0,
      polluted: ({} as { polluted?: number }).polluted ?? 0,
      foreign: document.querySelectorAll(
        '#root :is(script, img, iframe, style, link, object, embed, form:not([data-part="typed-price"]), base)',
      ).length,
      handlers: [...document.querySelectorAll('#root *')].filter((element) =>
        [...element.attributes].some(({ name }) => name.startsWith('on') || name === 'style'),
      ).length,
      // Whether a price can be kept is no matter of looks: of what kind the links are is.
      links: [...new Set([...document.querySelectorAll('a')].map((a) => new URL(a.href).protocol))].join(),
      body: `${body.display} ${body.color} ${body.position}`,
      header: `${header.display} ${header.backgroundColor} ${header.position}`,
      sideways: document.documentElement.scrollWidth > document.documentElement.clientWidth,
    };
  });
}

async function pressed(name: string) {
  const page = await room.browser.openTab(room.market.addressOf(name));
  const panel = await press(room.browser, page, 'audit');
  // Everything opened, so that what stands behind disclosures is on the screen as well.
  await panel.evaluate(() => {
    for (const details of document.querySelectorAll('details')) details.open = true;
  });
  const seen = { looks: await looks(panel), text: await panel.text(), panel };
  await page.close();
  return seen;
}

describe('nothing that a page says can run, restyle or break the panel', () => {
  it.each(Object.keys(files).filter((name) => name !== 'plain.html'))('%s', async (name) => {
    const seen = await pressed(name);
    expect(seen.looks).toEqual(harmless.looks);
    expect(seen.looks).toMatchObject({ ran: 0, polluted: 0, foreign: 0, handlers: 0, sideways: false });
    expect(seen.text.toLowerCase()).toContain('sewing machine');
  });

  it('shows a payload as the text it is', async () => {
    const { text } = await pressed('script.html');
    expect(text).toContain('<script>');
  });

  it('shows characters that turn the reading direction as what they are', async () => {
    const { text } = await pressed('turned.html');
    expect(text).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
    expect(text).toContain('U+202E');
  });
});

describe('nothing that a pack says can', () => {
  it('even where all its texts are payloads', async () => {
    const source = JSON.parse(readFileSync('fixtures/packs/grindlewade-circle.json', 'utf8'));
    const evil = `${PAYLOADS.script}${PAYLOADS.handler}${PAYLOADS.style.replaceAll('//evil', 'https://evil')}`;
    const pack = {
      ...source,
      about: { ...source.about, id: 'evil', title: evil, licence: evil, note: evil, keepers: [{ name: evil }] },
      models: source.models.map((model: object) => ({ ...model, explain: evil })),
    };
    const file = folderOf({ 'evil.json': JSON.stringify(pack) });
    const bench = await room.browser.openTab(room.browser.addressOf('workbench.html'));
    await bench.waitForSelector('[data-part="pack-file"]', { state: 'attached' });
    await bench.setInputFiles('[data-part="pack-file"]', `${file}/evil.json`);
    await bench.waitForSelector('[data-pack-id="evil"]', { state: 'attached' });
    const shown = await bench.evaluate(() => ({
      title: document.querySelector('[data-pack-id="evil"] h3')?.textContent,
      foreign: document.querySelectorAll('#root :is(script, img, iframe, style)').length,
      ran: (globalThis as { ran?: number }).ran ?? 0,
    }));
    expect(shown).toMatchObject({ title: expect.stringContaining('<script>'), foreign: 0, ran: 0 });
    await bench.close();
    const { looks: seen } = await pressed('plain.html');
    expect(seen).toMatchObject({ ran: 0, foreign: 0, handlers: 0 });
  });
});

it('none of it made a request or an error of ours', async () => {
  expect(ourRequests(room.browser)).toEqual([]);
  expect(await seenErrors(room.browser)).toEqual([]);
  expect(room.browser.requests().filter(({ url }) => url.includes('evil.example'))).toEqual([]);
});
