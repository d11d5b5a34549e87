import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { documentOf } from './dom';

const NAME = 'Hand crank in its case';
const FIRST = 'It has been in my family for as long as I can remember, and it still turns freely.';
const SECOND = 'The case was mended at one corner with glue and a little brass plate, as the third photograph shows.';
const THIRD = 'Anybody who wants to try it before buying is welcome to come by, best on a Saturday before noon.';
const read = (body: string, head = '') =>
  readListing(documentOf(`<html lang="en"><head><title>${NAME}</title>${head}</head><body>${body}</body></html>`));
const wordsOf = (body: string) => read(`<h1>${NAME}</h1><p class="price">£45.00</p>${body}`).description;

describe('the words of the advert', () => {
  it('stand under a heading that its panel repeats in other words', () => {
    const words = wordsOf(
      `<div class="panels"><h2>Description</h2><div class="panel"><h2>Details</h2><div class="std"><p>${FIRST}</p><p>${SECOND}</p></div></div><h2>Delivery</h2><div class="panel"><p>${THIRD}</p></div></div>`,
    );
    expect(words).toBe(`${FIRST}\n${SECOND}`);
  });

  it('are none of a heading over nothing, followed by another part', () => {
    const words = wordsOf(`<div><h2>Description</h2><h2>Delivery</h2><p>${THIRD}</p></div><p>${FIRST} ${SECOND}</p>`);
    expect(words).toContain(FIRST);
  });

  it('stay what their own element holds, though others write on after it', () => {
    const words = wordsOf(`<div><div class="description"><p>${FIRST}</p></div><p>${SECOND}</p><p>${THIRD}</p></div>`);
    expect(words).toBe(FIRST);
  });

  it('go on to the last item of a list that is written with dashes', () => {
    const words = wordsOf(`<div>${FIRST}<br>${SECOND}<br>With it come:<br>- a key<br>- a shuttle<br>- oil</div>`);
    expect(words).toContain('- a shuttle\n- oil');
  });

  it('end where a table of features begins inside of their part', () => {
    const words = wordsOf(
      `<section><h3>Descrição</h3><div><p>${FIRST}</p><p>${SECOND}</p><table><thead><tr><th>Características Principais</th></tr></thead><tbody><tr><td>Peso</td><td>12 kg</td></tr><tr><td>Cor</td><td>Preto</td></tr></tbody></table></div></section>`,
    );
    expect(words).toBe(`${FIRST}\n${SECOND}`);
  });

  it('are not what buyers say, in however many boxes the heading over it stands', () => {
    const said = [1, 2]
      .map(
        (at) =>
          `<div><b>Reader ${at}</b><p>${THIRD} I am glad of it, ${at} times over, and so is everybody here.</p></div>`,
      )
      .join('');
    const words = wordsOf(
      `<div><div><p>${FIRST}</p><p>${SECOND} ${FIRST}</p></div><div class="r1"><div class="r2"><div class="r3"><h3>Customer reviews</h3></div><div>4.6 of 5</div></div><div>${said}</div></div></div>`,
    );
    expect(words).not.toContain('Reader');
    expect(words).not.toContain('everybody here');
  });

  it('are rather sentences than a table that is called a description', () => {
    const words = wordsOf(
      `<div class="description"><table><tr><td>Finish</td><td>Black japan, with gold lines along the bed, hardly worn anywhere at all</td></tr><tr><td>Weight</td><td>12 kg</td></tr></table></div><div class="description">${FIRST} ${SECOND}</div>`,
    );
    expect(words).toBe(`${FIRST} ${SECOND}`);
  });
});

describe('what stands around an advert or is written twice', () => {
  it('is no matter where a question for consent of 300 kB stands before it', () => {
    const partner = (at: number) =>
      `<li><b>Partner ${at}</b><p>Stores and reads information on a device, at 0.${at} cents each, for ${at} months. <a href="/p/${at}">Privacy policy</a></p></li>`;
    const asking = `<div class="consent-dialog" role="dialog"><h2>We value your privacy</h2><ul>${Array.from({ length: 2200 }, (_, at) => partner(at)).join('')}</ul></div>`;
    expect(asking.length).toBeGreaterThan(300_000);
    const { title, price, description } = read(
      `${asking}<main><h1>${NAME}</h1><p class="price">£45.00</p><p>${FIRST}</p><p>${SECOND}</p></main>`,
    );
    expect([title, price?.amount, description]).toEqual([NAME, '45.00', `${FIRST}\n${SECOND}`]);
  });

  it('is read where the page tells machines text that was escaped twice', () => {
    const twice = 'Foot &amp;amp; plate, 1&amp;frac12;&amp;quot; wide';
    const { title } = read(
      `<p>${FIRST}</p>`,
      `<meta property="og:title" content="${twice}"><meta property="og:type" content="product">`,
    );
    expect(title).not.toContain('&amp;');
  });

  it('is read inside the template of a shadow root', () => {
    const { title, price, description } = read(
      `<market-page><template shadowrootmode="open"><main><h1>${NAME}</h1><p class="price">£45.00</p><h2>Description</h2><p>${FIRST}</p></main></template></market-page>`,
    );
    expect([title, price?.amount, description]).toEqual([NAME, '45.00', FIRST]);
  });

  it('says nothing of a sale where both states wait in templates', () => {
    const states =
      '<template id="sold"><span class="badge">Sold</span></template><template id="open"><span class="badge">For sale</span></template>';
    expect(read(`<h1>${NAME}</h1>${states}<p class="price">£45.00</p><p>${FIRST}</p>`).sale).toBeNull();
  });

  it('is told in the vocabulary for offers, its prefix bound on an element as of old', () => {
    const { title, price } = readListing(
      documentOf(
        `<html xmlns="http://www.w3.org/1999/xhtml" xmlns:gr="http://purl.org/goodrelations/v1#" lang="en"><head><title>Stall 9</title></head><body><div typeof="gr:Offering"><div property="gr:name" content="${NAME}"></div><div rel="gr:hasPriceSpecification"><div typeof="gr:UnitPriceSpecification"><span property="gr:hasCurrency" content="GBP"></span><span property="gr:hasCurrencyValue" content="45.0"></span></div></div></div></body></html>`,
      ),
    );
    expect([title, price?.amount, price?.currency]).toEqual([NAME, '45.0', 'GBP']);
  });

  it('are all paragraphs side by side that one name calls the words', () => {
    const words = wordsOf(
      `<table><tr><td><p class="lead">At a first look</p><p class="body-text">${FIRST}</p><p class="body-text">${SECOND}</p><p class="body-text">${THIRD}</p></td></tr></table>`,
    );
    expect(words).toBe(`${FIRST}\n${SECOND}\n${THIRD}`);
  });

  it('are rather the whole than a short description above that leads to it', () => {
    const whole = `${SECOND} ${THIRD}`;
    const words = wordsOf(
      `<div class="short-description"><h2>Description :</h2><p>${FIRST}</p><a href="#all">All of it</a> <a href="#seen">Seen</a></div><div class="panes"><div class="pane description-pane"><div class="pane-title">Description</div><p>${whole}</p><p>${whole} Ask!</p></div></div>`,
    );
    expect(words).toBe(`${whole}\n${whole} Ask!`);
    expect(wordsOf(`<div class="short-description"><p>${FIRST}</p></div>`)).toBe(FIRST);
  });

  it('have their points in a list right behind the paragraph that is called so', () => {
    const points = (behind: string) =>
      wordsOf(
        `<div><p class="description">${FIRST}</p>${behind}<ul><li>Two keys</li><li>A case of oak</li></ul></div>`,
      );
    expect(points('')).toBe(`${FIRST}\nTwo keys\nA case of oak`);
    expect(points('<p class="offer">Ask for more</p>')).toBe(FIRST);
    const notes = '<ul><li>Do not write to the seller about other things</li></ul>';
    expect(wordsOf(`<div><p class="line">Lot 71</p><p class="description">${FIRST}</p>${notes}</div>`)).toBe(FIRST);
    const tabs = '<ul><li>Delivery</li><li>Questions</li></ul>';
    expect(wordsOf(`<div><p class="description">${FIRST}</p>${tabs}</div>`)).toBe(FIRST);
  });

  it('are not all that a box of that name holds around them and the price', () => {
    const { description } = read(
      `<h1>${NAME}</h1><section class="product-description"><div>£45.00</div><div>Lot 71</div><div class="main-description"><p>${FIRST}</p></div><p>It is in your basket now.</p></section>`,
    );
    expect(description).toBe(FIRST);
  });

  it('stand in an item that a template calls navigation, with their label', () => {
    const item = (label: string) =>
      `<p>${THIRD} ${THIRD}</p><ul class="accordion"><li class="accordion-navigation"><a href="#panel">${label}</a><div class="content"><p>${FIRST}</p></div></li></ul>`;
    expect(wordsOf(item('Description'))).toBe(FIRST);
    expect(wordsOf(item('Shop by part'))).toBe(`${THIRD} ${THIRD}`);
  });

  it('stand under a Spanish label', () => {
    expect(
      wordsOf(`<p>${THIRD} ${THIRD}</p><div><h2>Acerca de este producto</h2><ul><li>${FIRST}</li></ul></div>`),
    ).toBe(FIRST);
  });

  it('are not the window told again', () => {
    const { description } = readListing(
      documentOf(
        `<title>Cranks and cases</title><meta name="description" content="Cranks and cases"><h1>${NAME}</h1><p class="price">£45.00</p><button>Add to basket</button>`,
      ),
    );
    expect(description).toBe('');
  });

  it('end at a label that looks like their own', () => {
    const words = wordsOf(
      `<div><p class="h2">Description</p><div><p>${FIRST}</p></div><p class="h2">In figures</p><div><p>${SECOND}</p></div></div>`,
    );
    expect(words).toBe(FIRST);
    const alike = `<div><p class="t">Description</p><p class="t">Needle and thread</p><p class="t">${FIRST}</p></div>`;
    expect(wordsOf(alike)).toBe(`Needle and thread\n${FIRST}`);
  });

  it('go on in the next paragraphs where their label stands in the first', () => {
    const words = wordsOf(
      `<div><p><b>Maker:</b> unknown</p><p><b>Description:</b> ${FIRST}</p><p>${SECOND}</p><p><b>Size:</b> 31 by 18 cm</p><p>${THIRD}</p></div>`,
    );
    expect(words).toBe(`Description: ${FIRST}\n${SECOND}`);
  });

  it('stand under their label in Cyrillic letters, too, and end where other parts of the page begin', () => {
    const words = (label: string, next: string) =>
      wordsOf(
        `<div><p>${THIRD} ${THIRD}</p></div><div><h3>${label}</h3><p>${FIRST}</p><p>${SECOND}</p><h4>${next}</h4><p>${THIRD}</p></div>`,
      );
    for (const [label, next] of [
      ['Описание', 'Характеристики'],
      ['Описание товара', 'Доставка и оплата'],
      ['Опис', 'Відгуки'],
      ['Описание:', 'Отзывы (2)'],
      ['Описание', 'Похожие объявления'],
    ] as const)
      expect(words(label, next)).toBe(`${FIRST}\n${SECOND}`);
  });

  it('are rather what stands under the second such label than the other names in a row of parts', () => {
    const words = wordsOf(
      `<div class="parts"><div>Description</div><div>What goes along with it</div><div>All that was asked</div></div><div class="part"><div class="t">Description</div>Hand crank<br>${FIRST}<br>${SECOND}</div>`,
    );
    expect(words).toBe(`Hand crank\n${FIRST}\n${SECOND}`);
  });

  it('stand under a label of two nouns, in Italian and Spanish', () => {
    for (const label of ['Descrizione prodotto', 'Descripción producto', 'Descrição produto'])
      expect(wordsOf(`<div><p>${THIRD} ${THIRD}</p></div><div><h2>${label}</h2><p>${FIRST}</p></div>`)).toBe(FIRST);
  });

  it('are what stands in one with the label of a list of parts, though paragraphs stand beside it', () => {
    const words = wordsOf(
      `<dl><dt>Description</dt><dd><p>Hand crank</p>${FIRST} ${SECOND}</dd><dt>Delivery</dt><dd>${THIRD}</dd></dl>`,
    );
    expect(words).toBe(`Hand crank\n${FIRST} ${SECOND}`);
  });

  it('stand in a panel right under their label, though it is called a menu', () => {
    const panel = (name: string) =>
      wordsOf(
        `<div><p>${THIRD} ${THIRD} ${THIRD}</p></div><div class="pane"><div>Description</div><div class="${name}"><p>${FIRST}</p><p>${SECOND}</p></div></div>`,
      );
    expect(panel('sub-menu inner')).toBe(`${FIRST}\n${SECOND}`);
    expect(panel('related inner')).not.toContain(FIRST);
  });

  it('end with their part where a box of that name holds many times as much behind it', () => {
    const words = (times: number) =>
      wordsOf(
        `<div class="description"><h3>Description</h3><p>${FIRST}</p><h3>How to measure</h3>${Array.from({ length: times }, (_, at) => `<p>${at + 1}. ${SECOND}</p>`).join('')}</div>`,
      );
    expect(words(1)).toContain(SECOND);
    expect(words(4)).toBe(FIRST);
  });

  it('stand right under the title rather than where most is said of the shop', () => {
    const own = `A ${NAME}, made for a small machine and turned from brass, which anybody can screw on within a minute.`;
    const shop = `<div><p>${THIRD} ${SECOND}</p><p>We have been here since our father began, and ${SECOND}</p></div>`;
    expect(wordsOf(`<p>In stock</p>${shop}`)).toContain(THIRD);
    const body = `<div><h1>${NAME}</h1><p>${own}</p><p class="price">£45.00</p></div><div><p>In stock</p></div>${shop}`;
    expect(read(body).description).toBe(own);
    const points = (...its: string[]) =>
      read(
        `<div><h1>${NAME}</h1><ul>${its.map((one) => `<li>${one}</li>`).join('')}</ul><p class="price">£45.00</p></div>${shop}`,
      ).description;
    expect(points('Turns by a crank of brass and oak', 'Comes in the case of its first day')).toBe(
      'Turns by a crank of brass and oak\nComes in the case of its first day',
    );
    expect(points('1 crank', 'Case of oak')).toContain(THIRD);
  });
});
