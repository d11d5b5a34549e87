import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { documentOf } from './dom';

const NAME = 'Hand crank in its case';
const WORDS = 'It has been in my family for as long as I can remember, and it still turns freely.';
const conditionOf = (html: string, head = '', language = 'en') =>
  readListing(
    documentOf(
      `<html lang="${language}"><head><title>${NAME}</title>${head}</head><body><h1>${NAME}</h1><p class="price">£45</p><p>${WORDS}</p>${html}</body></html>`,
    ),
  ).condition;
const told = (condition: string) =>
  `<script type="application/ld+json">{"@type":"Product","name":"${NAME}","offers":{"@type":"Offer","price":"45","priceCurrency":"GBP","itemCondition":"https://schema.org/${condition}Condition"}}</script>`;
const rows = (...all: [string, string][]) =>
  `<dl>${all.map(([label, value]) => `<dt>${label}</dt><dd>${value}</dd>`).join('')}</dl>`;

describe('a condition', () => {
  it.each([
    ['German', rows(['Geräteart', 'Gebraucht'], ['Farbe', 'schwarz']), 'de', 'Gebraucht'],
    ['Dutch', rows(['Soort', 'Gebruikt'], ['Kleur', 'zwart']), 'nl', 'Gebruikt'],
  ])('is the word of a row before the term that machines are told: %s', (_, html, language, expected) => {
    expect(conditionOf(html, told('Used'), language)).toBe(expected);
  });

  it('is told by a row among the seller’s words', () => {
    const data = ['Bauart', 'Holz', 'Zustand', 'gepflegt'];
    const pairs = [0, 2].map((at) => `<li><div>${data[at]}</div><div>${data[at + 1]}</div></li>`).join('');
    const words = `<h2>Beschreibung</h2><div><p>${WORDS} ${WORDS}</p><ul>${pairs}</ul></div>`;
    expect(conditionOf(words, '', 'de')).toBe('gepflegt');
  });

  it('is what its own element says before the coarser term that machines are told', () => {
    const html = '<div class="condition-part"><span class="condition-label">Bargain:</span> <b>Open Box</b></div>';
    expect(conditionOf(html, told('Used'))).toBe('Open Box');
  });

  it('is two words of one thing, but not two to choose from', () => {
    const far = '<li>It has a knob</li>'.repeat(30);
    expect(conditionOf(`<ul>${far}<li>Second-hand/good condition</li></ul>`)).toBe('Second-hand/good condition');
    expect(conditionOf('<p><b>New & Used</b></p>')).toBeNull();
  });
});

describe('no condition', () => {
  it.each([
    ['a label', '<p>New or repeat advert:</p>'],
    ['a badge', '<p><b>New!</b></p>'],
    ['how a button is drawn', '<p><a href="/b" class="btn state-ready">Buy</a></p>'],
    ['a badge by its own name', '<p><span class="item-newflag">new</span></p>'],
    ['a badge by its name', '<p><span class="product-badge">New</span></p>'],
    ['a part of a shop', '<p><b>New arrivals</b></p>'],
    ['a colour', '<p><span class="label">Colour:</span> <b>Mint green</b></p>'],
    ['a way to a part of the site', '<p><a href="/c">Conditions</a> | <a href="/r">Returns</a></p>'],
    [
      'ways to parts of the site',
      '<p><a href="/c">Condition</a> | <a href="/r">Returns</a> | <a href="/q">Questions</a></p>',
    ],
    ['how a tab is drawn', '<ul><li class="ui-state-active">More photographs</li></ul>'],
    ['that nothing is told', rows(['Condition', '--not specified'])],
    ['a state of the land', rows(['County', 'Haddercombe'], ['State', 'NB'])],
    ['that it is gone', '<p class="state">No longer available</p>'],
    ['what is new of it', '<p>Brand new fully fitted spindle</p>'],
    ['a row under a heading', '<h3>Condition</h3><ul><li>Newly made: No</li></ul>'],
  ])('is %s', (_, html) => {
    expect(conditionOf(html)).toBeNull();
  });

  it('is how an advert stands by the state of a script', () => {
    const state = `<script>window.state = {"ad":{"id":417,"title":"${NAME}","price":45,"state":"active","description":"${WORDS}"}}</script>`;
    expect(conditionOf(state)).toBeNull();
  });
});

describe('that a thing is new', () => {
  it('is not believed of a template where people read of no condition', () => {
    expect(conditionOf('', told('New'))).toBeNull();
    expect(conditionOf('', '<meta property="product:condition" content="new">')).toBeNull();
    expect(conditionOf('', told('Refurbished'))).toBe('Refurbished');
  });

  it('is told beside another condition that people read', () => {
    const listing = readListing(
      documentOf(
        `<html lang="en"><head><title>${NAME}</title>${told('New')}</head><h1>${NAME}</h1><p>${WORDS}</p>${rows(['Condition', 'Used, some rust'])}</html>`,
      ),
    );
    expect(listing.condition).toBe('Used, some rust');
    expect(listing.fields.condition?.alternatives).toContainEqual({ value: 'New', source: 'json-ld' });
  });
});
