import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { documentOf } from './dom';

const NAME = 'Hand crank in its case';
const FIRST = 'It has been in my family for as long as I can remember, and it still turns freely.';
const SECOND = 'The case was mended at one corner with glue and a little brass plate, as the third photograph shows.';
const THIRD = 'Anybody who wants to try it before buying is welcome to come by, best on a Saturday before noon.';
const OTHER = `${THIRD} We pack all that we send in straw and two layers of board, and it has always come whole, even abroad.`;
const told = (description: string) =>
  `<script type="application/ld+json">${JSON.stringify({ '@type': 'Product', name: NAME, description })}</script>`;
const wordsOf = (body: string, head = '') =>
  readListing(
    documentOf(
      `<html lang="en"><head><title>${NAME}</title>${head}</head><body><h1>${NAME}</h1><p class="price">£45.00</p>${body}</body></html>`,
    ),
  ).description;

describe('what machines are told, as the page shows it', () => {
  it('goes on below where it was cut off', () => {
    const body = `<div><p>${FIRST}</p><p>${SECOND}</p><ul><li>a key</li><li>a shuttle</li></ul></div><div><p>${OTHER}</p></div>`;
    expect(wordsOf(body, told(`${FIRST} The case was mended at one...`))).toBe(`${FIRST}\n${SECOND}\na key\na shuttle`);
  });

  it('goes on to the end of its part, and no further', () => {
    const body = `<dl><dt>Overview</dt><dd><p>${FIRST}</p><ul><li>Cast of iron and brass.</li></ul></dd><dt>Sending</dt><dd><p>${OTHER}</p></dd></dl>`;
    expect(wordsOf(body, told(FIRST))).toBe(`${FIRST}\nCast of iron and brass.`);
  });

  it('goes on with the list of points below it', () => {
    const body = `<div><div class="blurb">${FIRST}</div><ul class="points"><li>a key</li><li>a shuttle</li></ul></div><p>${OTHER}</p>`;
    expect(wordsOf(body, told(FIRST))).toBe(`${FIRST}\na key\na shuttle`);
  });

  it('is said once, though its cut beginning stands below it for small screens', () => {
    const body = `<h2>Description</h2><div><p>${OTHER}</p><p>${SECOND}</p><p>${OTHER.slice(0, 150)}... read more</p></div>`;
    expect(wordsOf(body)).toBe(`${OTHER}\n${SECOND}`);
  });

  it('is the one of two blocks of one name that machines are told', () => {
    const body = `<div class="description">${FIRST}</div><p>In stock</p><div class="description">${SECOND}</div>`;
    expect(wordsOf(body, told(SECOND))).toBe(SECOND);
  });

  it('goes on with paragraphs of its kind under headings between them', () => {
    const body = `<div><div class="copy">${FIRST}</div><h4>In use</h4><div class="copy">${SECOND}</div></div><ul><li>${THIRD}</li><li>${OTHER}</li></ul>`;
    expect(wordsOf(body, told(FIRST))).toBe(`${FIRST}\nIn use\n${SECOND}`);
  });

  it('ends before a price, a button and another part', () => {
    const body = (behind: string) => `<div><p>${FIRST}</p>${behind}<p>${SECOND}</p></div><p>${OTHER}</p>`;
    for (const behind of ['<p>£40.00</p>', '<button>Buy it now</button>', '<h3>Delivery</h3>'])
      expect(wordsOf(body(behind), told(FIRST))).toBe(FIRST);
  });

  it('is found by a summary in the head, too', () => {
    const body = `<div><p>${OTHER}</p><p>${OTHER} Ask!</p></div><div><p>${FIRST}</p><p>${SECOND}</p></div>`;
    const head = `<meta name="description" content="${FIRST} The case was mended at one corner">`;
    expect(wordsOf(body, head)).toBe(`${FIRST}\n${SECOND}`);
    expect(wordsOf(body)).toContain('straw');
  });

  it('goes before a block that a name alone calls a description, unless that block holds it', () => {
    const named = `<div class="search-description"><p>${OTHER}</p></div>`;
    expect(wordsOf(`${named}<div><p>${FIRST}</p></div>`, told(FIRST))).toBe(FIRST);
    const holding = `<div class="description"><div>${FIRST}</div><p>${SECOND}</p></div>`;
    expect(wordsOf(holding, told(FIRST))).toBe(`${FIRST}\n${SECOND}`);
  });

  it('is printed as the page has it, not with its lines run together and more behind them', () => {
    const body = `<h2>Description</h2><div>A crank by hand<br>ash and brass<br>unmarked<br>18 by 3 inches</div>`;
    const glued = 'A crank by handash and brassunmarked18 by 3 inches. Lot 0414';
    expect(wordsOf(body, told(glued))).toBe('A crank by hand\nash and brass\nunmarked\n18 by 3 inches');
  });
});

describe('what machines are told of the offer alone', () => {
  it('is no description where the page shows it nowhere', () => {
    expect(wordsOf('<button>Add to basket</button>', told(`Sale: ${NAME}, 1962, oak, 3 keys, 45,00 €`))).toBe('');
    expect(wordsOf('', told(`${NAME}, made in 1962, the case of oak, with 3 keys`))).toContain('3 keys');
  });
});

describe('what stands where words will', () => {
  it('is no description', () => {
    expect(wordsOf('<h2>Description</h2><p>TBD</p>', told('TBD'))).toBe('');
    expect(wordsOf('<h2>Description</h2><p>Runs.</p>', told('Runs.'))).toBe('Runs.');
  });
});

describe('what machines are told cut off', () => {
  it('is what the page shows of it, though its words were written anew since', () => {
    const body = `<div><p>It has been in my family for as long as I can tell, and turns freely.</p><p>${SECOND}</p><p>${THIRD}</p></div>`;
    expect(wordsOf(body, told(`${FIRST.slice(0, -1)}; the case…`))).toContain('can tell');
    expect(wordsOf(body, told('It has a case. The case…'))).not.toContain('can tell');
  });
});

describe('a block that is called a description', () => {
  it('may have its own headings before it in its panel', () => {
    const body = `<article><h2>Product description</h2><section><h2>${NAME.toUpperCase()}</h2><h2>Fettle &amp; Daughters</h2><pre>- a key\n- a shuttle</pre></section></article><div><p>${OTHER}</p></div>`;
    expect(wordsOf(body)).toContain('- a key\n- a shuttle');
  });

  it('is the inner one, where facts alone stand beside it in the outer', () => {
    const body = `<div class="item-description"><div class="item-description-text">${FIRST}</div><div><h4>Advert</h4><span>36024</span><h4>Seen</h4><span>24 times</span></div></div>`;
    expect(wordsOf(body)).toBe(FIRST);
  });

  it('is the outer one, where the inner is one of its paragraphs', () => {
    const body = `<div class="description"><div class="description-start">${FIRST}</div><p>${SECOND}</p></div>`;
    expect(wordsOf(body)).toBe(`${FIRST}\n${SECOND}`);
  });

  it('is none of a row that describes one of its facts', () => {
    const body = `<div><p>${FIRST}</p><p>${SECOND}</p></div><table><tr><th>Description of the size</th><td>Height: 61 cm Width: 158 cm Length: 198 cm, and it bears up to 200 kg of weight</td></tr><tr><th>Finish</th><td>Black</td></tr></table>`;
    expect(wordsOf(body, told(`${FIRST} ${SECOND}`))).toBe(`${FIRST}\n${SECOND}`);
  });

  it('goes on with a list in a box beside it that has the same name', () => {
    const body = `<table><tr><td><div class="content"><p>${FIRST}</p></div><div class="content"><ul><li>A key</li><li>Brass fittings all round</li></ul></div><form class="buy">Quantity</form></td></tr></table>`;
    const head = `<meta name="description" content="${FIRST}">`;
    expect(wordsOf(body, head)).toBe(`${FIRST}\nA key\nBrass fittings all round`);
  });

  it('goes on with the paragraphs after its own where it was cut off and something else was put behind', () => {
    const body = `<div><p>Hand crank<br>Height: 31 cm<br>${FIRST}</p><p>${SECOND}</p><p>*No key<br>${THIRD}</p>Number: HC 12<br>In stock: 6</div>`;
    const head = `<meta name="description" content="Hand crank Height: 31 cm It has been in my family for as lo 118204">`;
    expect(wordsOf(body, head)).toBe(`Hand crank\nHeight: 31 cm\n${FIRST}\n${SECOND}\n*No key\n${THIRD}`);
  });

  it('is taken from where the page has all of it, not from a beginning that leads on', () => {
    const body = `<div class="buy"><div>${FIRST}<a href="#all">more</a></div></div><div class="panes"><div class="pane"><p>${FIRST}</p><ul><li>A key</li><li>Brass fittings all round</li></ul></div></div>`;
    const head = `<meta name="description" content="${FIRST}">`;
    expect(wordsOf(body, head)).toBe(`${FIRST}\nA key\nBrass fittings all round`);
  });

  it('gives way to what the page shows where machines are told no more than the summary in the head', () => {
    const summary = `Buy a ${NAME} at our workshop, see all that we have by the same hands.`;
    const body = `<div class="box"><p>${FIRST} ${SECOND}</p><p>${OTHER}</p></div>`;
    const head = `<meta name="description" content="${summary}">`;
    expect(wordsOf(body, head + told(summary))).toBe(`${FIRST} ${SECOND}\n${OTHER}`);
    expect(wordsOf(body, told(summary))).toBe(summary);
  });

  it('is read to its end in the head where the page shows it cut off', () => {
    const body = `<div><p>${OTHER.slice(0, 150)}...</p><button>More</button></div>`;
    expect(wordsOf(body, `<meta name="description" content="${OTHER}">`)).toBe(OTHER);
    expect(wordsOf(body, `<meta name="description" content="${FIRST}">`)).toBe(`${OTHER.slice(0, 150)}...`);
  });

  it('is found where it begins with the short cells of a table', () => {
    const rows = '<tr><td>Drive</td><td>By hand, with a crank</td></tr><tr><td>Case</td><td>Oak, mended</td></tr>';
    const body = `<div class="description"><table>${rows}</table></div><div class="section description">${OTHER}</div>`;
    expect(wordsOf(body, told('Drive By hand, with a crank Case Oak, mended'))).toBe(
      'Drive By hand, with a crank\nCase Oak, mended',
    );
  });

  it('says nothing where it is the title again, or the site’s own line around title and price', () => {
    const body = '<p>No bonus points are given for this.</p>';
    for (const line of [NAME, `Buy ${NAME} - black for £45.00 (2026-03-05). Free delivery on most orders`])
      expect(wordsOf(body, told(line))).toBe('');
    expect(wordsOf(`<p>${FIRST}</p>`, told(NAME))).toBe(FIRST);
    const own = `${NAME} for £45.00 or near. Turns freely.`;
    expect(wordsOf(`<div class="text">${own}</div>`, told(own))).toBe(own);
  });

  it('is no question that heads a part of the page', () => {
    expect(wordsOf(`<h2>What comes along?</h2><p>${FIRST}</p>`, told('What comes along?'))).toBe(FIRST);
  });
});
