import { jsonLd, type Page } from './page';

const WORDS = 'It has been in my family for as long as I can remember, and it still turns freely.';
const MORE = 'The table was sanded and oiled two winters ago. The treadle squeaks a little until it is warm.';
const HEAD = '<h1>Hand crank with key</h1><p>£45</p>';
const FOOT = '<ul><li>Netherholme</li><li>Portable</li><li>With its key</li><li>1911</li></ul>';
const POSTAGE =
  'Parcels leave us on working days before noon, and we send them to all of the mainland within two days.';

const DELIVERY = `<section><h2>Delivery</h2><p>${POSTAGE}</p><p>What is heavy goes by carrier. ${POSTAGE}</p></section>`;

/** What the seller says, among facts, and among what the site says. */
export const wordsAndFacts: Page[] = [
  {
    name: 'a box of comments under a heading that says whose they are',
    html: `<main>${HEAD}<div class="comments-container"><h2>Comentarios del vendedor</h2><div class="comment"><p>${WORDS}</p></div></div>${DELIVERY}</main>`,
    expected: { description: WORDS },
  },
  {
    name: 'a box of reviews right under the description’s heading',
    html: `<main>${HEAD}<h3>Description</h3><div class="review">${WORDS}<br>${MORE}</div>${DELIVERY}</main>`,
    expected: { description: `${WORDS}\n${MORE}` },
  },
  {
    name: 'comments of others under a heading of their own',
    html: `<main>${HEAD}<p>${WORDS}</p><div class="comments-container"><h2>Comments</h2><div class="comment"><p>Lotte, 12:40</p><p>${MORE}</p></div></div></main>`,
    expected: { description: WORDS },
  },
  {
    name: 'a number of the article alone under the heading, and the words in the next box',
    html: `<main>${HEAD}<section><div><h2>Description</h2><div>Article no. 8812034455</div></div><div><ul><li>Turns freely, with its key</li><li>Sits in a bentwood case</li></ul></div><h2>Delivery</h2><p>${POSTAGE}</p></section></main>`,
    expected: { description: 'Article no. 8812034455\nTurns freely, with its key\nSits in a bentwood case' },
  },
  {
    name: 'a description of one of several facts in pairs',
    html: `<main>${HEAD}<p>${WORDS}</p><div><div class="pair"><div>Finish features</div><p>Japanned</p></div><div class="pair"><div>Base description</div><p>Walnut</p></div></div></main>`,
    expected: { description: WORDS },
  },
  {
    name: 'rows of facts under a first heading, and the words under a second',
    html: `<main>${HEAD}<h2>Machine description</h2><section><h3>Numbers:</h3><table><tr><td>Deposit:</td><td>£20</td></tr><tr><td>Added on our pages:</td><td>3 March 2019 (2 days ago)</td></tr></table><h3>Key facts</h3><ul><li>Turns</li></ul><h3>Full description</h3><p>${WORDS}</p></section></main>`,
    expected: { description: WORDS },
  },
  {
    name: 'a box named as the description that has headings of its own',
    html: `<main>${HEAD}<div><h2>Description</h2><div class="product-description"><p>${WORDS}</p><h2>For a small room</h2><p>${MORE}</p></div></div></main>`,
    expected: { description: `${WORDS}\nFor a small room\n${MORE}` },
  },
  {
    name: 'a box named as the description that has the delivery in it',
    html: `<main>${HEAD}<div><h2>Description</h2><div class="product-description"><p>${WORDS}</p><h2>Delivery</h2><p>${POSTAGE}</p></div></div></main>`,
    expected: { description: WORDS },
  },
  {
    name: 'labels with a colon that the seller wrote',
    html: `<main>${HEAD}<table><tr><td>Product description</td></tr><tr><td><p>${WORDS}</p><p>FEATURES:</p><ul><li>Long shuttle</li><li>Case with its key</li></ul></td></tr></table></main>`,
    expected: { description: `${WORDS}\nFEATURES:\nLong shuttle\nCase with its key` },
  },
  {
    name: 'told words in a wider box that is named as well',
    html: `${jsonLd({ '@type': 'Product', name: 'Hand crank with key', description: WORDS })}<main>${HEAD}<div class="description"><div class="description-text"><p>${WORDS}</p></div><p>Made by: Wickerlode</p><p>Kind: portable</p></div></main>`,
    expected: { description: WORDS },
  },
  {
    name: 'a list of the site below the words',
    html: `<main>${HEAD}<section class="told">Turns freely, with its key and its case.<ul class="bits"><li>Location: Netherholme</li><li>please do not write to this seller about services or other commercial things</li></ul></section></main>`,
    expected: { description: 'Turns freely, with its key and its case.' },
  },
  {
    name: 'rows in pairs below the words, without a table',
    html: `<main>${HEAD}<section><p>${WORDS}</p><ul><li><div>Attachments</div><div>Ruffler, binder, hemmer, quilter and a long screwdriver with a wooden grip</div></li><li><div>Case</div><div>Bentwood</div></li><li><div>Papers</div><div>The manual and the guarantee of 1911, signed by the shop that sold it</div></li></ul></section></main>`,
    expected: { description: WORDS },
  },
  {
    name: 'a text that unfolds',
    html: `<main>${HEAD}<h2>Description</h2><div><p>${WORDS}</p><div>... more</div><p>${MORE}</p><div>Show less</div></div></main>`,
    expected: { description: `${WORDS}\n${MORE}` },
  },
  {
    name: 'nothing but what the site says of postage',
    html: `<main>${HEAD}<div class="shipping-box"><p>${POSTAGE}</p></div></main>`,
    expected: { description: '' },
  },
  {
    name: 'nothing but answers to questions about bidding',
    html: `<main>${HEAD}<section><div><h3>How do I place a bid?</h3><p>${POSTAGE}</p><p>${POSTAGE} Bids are binding.</p></div></section>${FOOT}</main>`,
    expected: { description: '' },
  },
  {
    name: 'nothing but what a state means in general',
    html: `<main>${HEAD}<table><tr><td>Condition:</td><td>Used: a thing that was used before. It may show signs of wear, but works as it should and is whole, unless the advert says otherwise.</td><td>Kind:</td><td>Portable</td></tr></table>${FOOT}</main>`,
    expected: { description: '' },
  },
  {
    name: 'a summary that is the site’s line around the title',
    html: `<title>Hand crank with key | Netherby Swap</title><meta property="og:site_name" content="Netherby Swap"><meta name="description" content="Find a great price for Hand crank with key on Netherby Swap! Free collection for many things."><main>${HEAD}</main>`,
    expected: { description: '' },
  },
  {
    name: 'a summary that is one of the paragraphs',
    html: `<meta name="description" content="${WORDS}"><main>${HEAD}<div><div><p>${MORE}</p><p>${WORDS}</p></div></div></main>`,
    expected: { description: `${MORE}\n${WORDS}` },
  },
  {
    name: 'facts that the seller typed, beside what the site says',
    html: `<main>${HEAD}<section><h2>Description</h2><div>Maker: Wickerlode<br>Year: 1911<br>Case: bentwood</div></section><section><p>${POSTAGE}</p><p>We are here for you. ${POSTAGE}</p></section></main>`,
    expected: { description: 'Maker: Wickerlode\nYear: 1911\nCase: bentwood' },
  },
  {
    name: 'a table that may be the seller’s, beside what the site says',
    html: `<main>${HEAD}<section><h2>Description</h2><table><tr><td>Maker</td><td>Wickerlode</td></tr><tr><td>Case</td><td>bentwood</td></tr></table></section><section><p>${POSTAGE}</p><p>We are here for you. ${POSTAGE}</p></section></main>`,
    expected: { description: 'Maker Wickerlode\nCase bentwood' },
  },
  {
    name: 'a summary of a shop that is called as its machine is',
    html: `<title>Wickerlode portable</title><meta property="og:site_name" content="Wickerlode"><meta name="description" content="The Wickerlode portable in its case, turned once a year."><main><h1>Wickerlode portable</h1><p>£45</p></main>`,
    expected: { description: 'The Wickerlode portable in its case, turned once a year.' },
  },
];
