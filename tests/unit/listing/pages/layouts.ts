import { jsonLd, type Page, price } from './page';

const WORDS = 'It has been in my family for as long as I can remember, and it still turns freely.';

/** Ways of laying out title and description. */
export const layouts: Page[] = [
  {
    name: 'a first heading that names the site',
    html: `<title>Hand crank with key - Fettle</title><h1>Fettle</h1><h2>Hand crank with key</h2><p>£45</p><p>${WORDS}</p>`,
    expected: { title: 'Hand crank with key', description: WORDS },
  },
  {
    name: 'a heading of the site and one of the advert',
    html: `<title>Hand crank with key</title><header><h1><a href="/">Market</a></h1></header><main><h1>Hand crank with key</h1><p>£45</p><p>${WORDS}</p></main>`,
    expected: { title: 'Hand crank with key' },
  },
  {
    name: 'classes instead of headings',
    html: `<title>Ad 12</title><div class="ad-title">Hand crank with key</div><div class="ad-price">£45</div><div class="ad-text"><p>${WORDS}</p></div>`,
    expected: { title: 'Hand crank with key', description: WORDS, price: price('45', 'GBP') },
  },
  {
    name: 'tabs',
    html: '<h1>Hand crank</h1><p>£45</p><ul role="tablist"><li role="tab"><a href="#d">Description</a></li><li role="tab"><a href="#s">Shipping</a></li></ul><div role="tabpanel"><p>Short words.</p><p>More of them.</p></div><div role="tabpanel"><p>£12 by courier to the mainland, no islands, two days.</p></div>',
    expected: { description: 'Short words.\nMore of them.', price: price('45', 'GBP') },
  },
  {
    name: 'an accordion',
    html: '<h1>Hand crank</h1><p>£45</p><div><h3><button>Description</button></h3><div>Some words.<button>Read more</button></div></div><div><h3><button>Returns and payment</button></h3><div>None whatsoever, ever, to anybody at all.</div></div>',
    expected: { description: 'Some words.' },
  },
  {
    name: 'preformatted',
    html: '<h1>Hand crank</h1><p>£45</p><h2>Description</h2><pre>One line.\n\n  Two   lines.</pre>',
    expected: { description: 'One line.\nTwo lines.' },
  },
  {
    name: 'the seller, the words, the comments',
    html: `<h1>Hand crank</h1><p>£45</p><div class="seller"><h3>Seller</h3><p>Anna, member since 2015, usually answers within a day or two.</p></div><h3>Description</h3><p>${WORDS}</p><h3>Comments</h3><p>Is it still there? I would give 30 £ for it, or swap it for a nice lamp.</p>`,
    expected: { description: WORDS, price: price('45', 'GBP') },
    absent: ['Anna', 'lamp'],
  },
  {
    name: 'escaped twice',
    html: jsonLd({
      '@type': 'Product',
      name: 'Crank &amp;amp; key',
      description: '&lt;p&gt;One &amp;amp; two.&lt;/p&gt;&lt;p&gt;Three &lt; four&lt;/p&gt;',
      offers: { price: '45', priceCurrency: 'GBP' },
    }),
    expected: { title: 'Crank & key', description: 'One & two.\nThree < four' },
  },
  {
    name: 'an offer at the top, its product inside',
    html: jsonLd({
      '@type': 'Offer',
      price: 45,
      priceCurrency: 'EUR',
      itemOffered: { '@type': 'Product', name: 'Hand crank', description: 'Nice.' },
    }),
    expected: { title: 'Hand crank', description: 'Nice.', price: price('45', 'EUR'), offers: 1 },
  },
  {
    name: 'JSON-LD in wrappers of old, one block broken, properties with prefixes',
    html: `<script type="application/ld+json">{"@type":"Product",</script><script type="application/ld+json">/* <![CDATA[ */ {"@context":"https://schema.org","@type":"schema:Product","schema:name":"Hand crank","http://schema.org/description":[{"@value":"Nice."}],"offers":{"@list":[{"price":"45","priceCurrency":"EUR"}]}} /* ]]> */</script><script type="application/ld+json"><!-- {"@type":"Organization","name":"Fettle"} --></script>`,
    expected: { title: 'Hand crank', description: 'Nice.', price: price('45', 'EUR') },
  },
  {
    name: 'a summary in the head that was cut off',
    html: `<meta name="description" content="It has been in my family for as long as I can remem..."><h1>Hand crank</h1><p>£45</p><p>${WORDS}</p>`,
    expected: { description: WORDS },
  },
  {
    name: 'a title like a labelled row, the day in a line of words',
    html: `<html lang="nl"><title>Gezocht: slinger met sleutel</title><h1>Gezocht: slinger met sleutel</h1><p>Advertentie 77 - geplaatst op 7 november 2026</p><p>€ 45</p><p>${WORDS}</p><p>Model published on 3 May 2001, and much like those of the years before it, as far as I have read.</p>`,
    expected: { title: 'Gezocht: slinger met sleutel', details: '', listedDate: '2026-11-07' },
  },
];
