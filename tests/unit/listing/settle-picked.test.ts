import { describe, expect, it } from 'vitest';
import { collect } from '../../../src/listing/collect';
import { type Picks, readAs } from '../../../src/listing/picks';
import { settle } from '../../../src/listing/settle';
import { settlePicked } from '../../../src/listing/settle-picked';
import { ADDRESS, documentOf } from './dom';

const LONG = 'Runs quietly and was oiled in spring; the belt is new, the lid has a crack at its hinge. '
  .repeat(12)
  .trim();
const SUMMARY = 'A machine of my aunt’s, which has stood in the attic since she moved. Fetch it, please.';
const pageWith = (shown: string, told: string) =>
  `<html lang="en"><title>Hand crank in its case</title>
  <script type="application/ld+json">${JSON.stringify({
    '@type': 'Product',
    name: 'Hand crank in its case',
    description: LONG,
    offers: { '@type': 'Offer', price: told, priceCurrency: 'GBP', itemCondition: 'https://schema.org/NewCondition' },
  })}</script>
  <h1>Hand crank in its case</h1><p class="price">${shown}</p><dl><dt>Condition</dt><dd>Used, some rust</dd></dl>
  <h2>Description</h2><p>${SUMMARY}</p>`;
const harvestOf = (html: string) => collect(documentOf(html));
const picked = (html: string, picks: Picks) => settlePicked(harvestOf(html), ADDRESS, null, picks);

const page = pageWith('£450.00', '45.00');
const own = settle(harvestOf(page));

describe('a reading that the user has picked', () => {
  it('counts, as the user’s word, and the page’s own is kept beside it', () => {
    expect(own.price).toMatchObject({ amount: '450.00', currency: 'GBP' });
    const { listing, lapsed } = picked(page, { price: { how: 'picked', value: '45.00 GBP' } });
    expect(listing.price).toEqual({ amount: '45.00', currency: 'GBP', how: 'asking' });
    expect(listing.priceText).toBe('45.00 GBP');
    expect(listing.fields.price).toEqual({
      source: 'json-ld',
      confidence: 1,
      alternatives: [{ value: '£450.00', source: 'page' }],
      byUser: 'picked',
    });
    expect(lapsed).toEqual([]);
  });

  it('changes nothing else', () => {
    const { listing } = picked(page, { price: { how: 'picked', value: '45.00 GBP' } });
    const { price: _, ...fields } = listing.fields;
    expect({ ...listing, fields, price: null, priceText: '' }).toEqual({
      ...own,
      fields: Object.fromEntries(Object.entries(own.fields).filter(([field]) => field !== 'price')),
      price: null,
      priceText: '',
    });
  });

  it('may be the page’s own, which is sure then', () => {
    const { listing } = picked(page, { price: { how: 'picked', value: '£450.00' } });
    expect(listing.price).toEqual(own.price);
    expect(listing.fields.price).toMatchObject({ confidence: 1, byUser: 'picked' });
    expect(listing.fields.price?.alternatives).toEqual(own.fields.price?.alternatives);
  });

  it('is whole, though it was told by its beginning alone', () => {
    const [other] = own.fields.description!.alternatives;
    expect(own.description).toBe(SUMMARY);
    expect(other!.value).toBe(LONG.slice(0, 500));
    const { listing } = picked(page, { description: { how: 'picked', value: other!.value } });
    expect(listing.description).toBe(LONG);
  });

  it('is picked of several fields at once', () => {
    const [other] = own.fields.condition!.alternatives;
    const { listing } = picked(page, {
      price: { how: 'picked', value: '45.00 GBP' },
      condition: { how: 'picked', value: other!.value },
    });
    expect([listing.price?.amount, listing.condition, listing.title]).toEqual(['45.00', 'New', own.title]);
  });

  it('does not count any more where the page no longer says it', () => {
    const { listing, lapsed } = picked(pageWith('£450.00', '450.00'), {
      price: { how: 'picked', value: '45.00 GBP' },
    });
    expect(listing.price?.amount).toBe('450.00');
    expect(listing.fields.price?.byUser).toBeUndefined();
    expect(lapsed).toEqual([{ field: 'price', value: '45.00 GBP', why: 'gone' }]);
  });

  it('waits where the page shows many adverts, or none', () => {
    const list = `<title>Old machines: 40 adverts</title><h1>Old machines</h1>${['Crank', 'Treadle', 'Motor', 'Case']
      .map(
        (name, i) =>
          `<div class="card"><a href="/${i}"><h2>${name} of oak</h2><img src="/${i}.jpg"></a><b>£${i}0</b></div>`,
      )
      .join('')}`;
    for (const html of [list, '<p>Nothing.</p>']) {
      const { listing, lapsed } = picked(html, { title: { how: 'picked', value: 'Old machines' } });
      expect(listing).toEqual(settle(harvestOf(html)));
      expect(lapsed).toEqual([]);
    }
  });
});

describe('a price that the user has typed', () => {
  const typed = (html: string, value: string, was = '£450.00') => picked(html, { price: { how: 'typed', value, was } });

  it.each([
    ['£ 120', '120', 'GBP'],
    ['120', '120', 'GBP'],
    ['1,250.50', '1250.50', 'GBP'],
    ['95 EUR', '95', 'EUR'],
    // A sign that the page leaves open is not the page's own money.
    ['$95', '95', null],
  ])('"%s" counts; a bare amount is in the page’s money', (value, amount, currency) => {
    const { listing, lapsed } = typed(page, value);
    expect(listing.price).toEqual({ amount, currency, how: 'asking' });
    expect(listing.fields.price).toEqual({
      source: 'user',
      confidence: 1,
      alternatives: [
        { value: '£450.00', source: 'page' },
        { value: '45.00 GBP', source: 'json-ld' },
      ],
      byUser: 'typed',
    });
    expect(lapsed).toEqual([]);
  });

  it('counts where the page has none', () => {
    const bare = page.replace('£450.00', '').replaceAll('"price":"45.00"', '"x":"y"');
    expect(settle(harvestOf(bare)).price).toBeNull();
    const { listing } = typed(bare, '£80', '');
    expect(listing.price).toEqual({ amount: '80', currency: 'GBP', how: 'asking' });
    expect(listing.fields.price).toEqual({ source: 'user', confidence: 1, alternatives: [], byUser: 'typed' });
  });

  it('does not count where it can’t be read as one', () => {
    const { listing, lapsed } = typed(page, 'ask me');
    expect(listing).toEqual(own);
    expect(lapsed).toEqual([{ field: 'price', value: 'ask me', why: 'unreadable' }]);
  });

  it('does not count any more once the page asks something else', () => {
    const { listing, lapsed } = typed(pageWith('£400.00', '40.00'), '£120');
    expect(listing.price?.amount).toBe('400.00');
    expect(lapsed).toEqual([{ field: 'price', value: '£120', why: 'changed' }]);
  });

  it('still counts where what it was typed beside is told elsewhere by now', () => {
    const { listing } = typed(pageWith('£45.00', '450.00'), '£120', '450.00 GBP');
    expect(readAs(listing, 'price')).toBe('£120');
  });
});
