// @vitest-environment jsdom
import { act } from 'preact/test-utils';
import { describe, expect, it } from 'vitest';
import type { Lapsed } from '../../../src/listing/picks';
import type { FieldNote, Listing } from '../../../src/listing/types';
import { pickTexts } from '../../../src/text/catalogue/picks';
import { ReadingNote } from '../../../src/view/panel/ReadingNote';
import { WhatWasRead } from '../../../src/view/panel/WhatWasRead';
import { stage } from './rendered';
import { sampleListing } from './sample';

const { root, show, part, all } = stage();
let calls: unknown[][] = [];
const KEPT = 'Kept here.';

const clash: FieldNote = { source: 'page', confidence: 0.5, alternatives: [{ value: '45 EUR', source: 'meta' }] };
const listing = (price: FieldNote | null, change: Partial<Listing> = {}): Listing => ({
  ...sampleListing,
  ...change,
  fields: { ...(change.fields ?? sampleListing.fields), ...(price ? { price } : {}) },
});

function display(read: Listing, lapsed: Lapsed[] = []): void {
  calls = [];
  show(
    <>
      <ReadingNote listing={read} lapsed={lapsed} />
      <WhatWasRead
        listing={read}
        lapsed={lapsed}
        keptNote={KEPT}
        onPick={(...said) => void calls.push(['pick', ...said])}
        onTakeBack={(...said) => void calls.push(['takeBack', ...said])}
      />
    </>,
  );
}

const isOpen = (name: string) => (part(name) as HTMLDetailsElement | null)?.open;
const labelOf = (name: string) => part(name)?.querySelector('summary')?.textContent;
const readings = () => [...(part('pick-price')?.querySelectorAll<HTMLElement>('[data-reading]') ?? [])];
const said = () => part('pick-price')?.querySelector('[data-part="pick-said"]')?.textContent;

describe('a field that the reader isn’t sure of', () => {
  it('is to be checked: said at the top, open, with each reading and where it was found', () => {
    display(listing(clash));
    expect(part('reading-note')?.textContent?.trim()).toBe(pickTexts.toCheck('price'));
    expect([isOpen('what-was-read'), isOpen('pick-price')]).toEqual([true, true]);
    expect(labelOf('pick-price')).toBe(pickTexts.check('price'));
    expect(readings().map(({ textContent }) => textContent)).toEqual([
      '240 EURfrom the visible page',
      '45 EURfrom the page’s head',
    ]);
    expect(readings().map((each) => each.getAttribute('aria-pressed'))).toEqual(['false', 'false']);
    expect(part('pick-price')?.textContent).toContain(pickTexts.why.price);
  });

  it('is come to from the top, wherever it is folded', () => {
    display(listing(clash));
    for (const each of all('details')) each.removeAttribute('open');
    const address = location.href;
    part('reading-note')?.querySelector('button')?.click();
    expect([isOpen('what-was-read'), isOpen('pick-price')]).toEqual([true, true]);
    expect(document.activeElement).toBe(part('pick-price')?.querySelector('summary'));
    // In Firefox another address would have the panel loaded anew.
    expect(location.href).toBe(address);
  });

  it('is decided by one press', () => {
    display(listing(clash));
    for (const reading of readings()) reading.click();
    expect(calls).toEqual([
      ['pick', 'price', { how: 'picked', value: '240 EUR' }],
      ['pick', 'price', { how: 'picked', value: '45 EUR' }],
    ]);
  });
});

describe('a field that the user has decided', () => {
  const picked = listing(
    { source: 'meta', confidence: 1, alternatives: [{ value: '240 EUR', source: 'page' }], byUser: 'picked' },
    { priceText: '45 EUR', price: { amount: '45', currency: 'EUR', how: 'asking' } },
  );

  it('says so, and every reading stays where it stood, with the focus', () => {
    display(listing(clash));
    const second = readings()[1];
    second?.focus();
    display(picked);
    expect(document.activeElement).toBe(second);
    expect(readings().map((each) => [each.dataset.reading, each.getAttribute('aria-pressed')])).toEqual([
      ['page', 'false'],
      ['meta', 'true'],
    ]);
    expect(part('reading-note')?.textContent?.trim()).toBe(pickTexts.own('price'));
    expect([labelOf('pick-price'), isOpen('pick-price')]).toEqual([pickTexts.yours('price'), true]);
    expect(said()).toBe(pickTexts.picked(KEPT));
    expect(part('read')?.textContent).toContain('from the page’s head, your word');
  });

  it('is taken back by the same button, or by the one that says so, and the focus goes on', () => {
    display(picked);
    readings()
      .find((each) => each.getAttribute('aria-pressed') === 'true')
      ?.click();
    part('unpick')?.click();
    expect(calls).toEqual([
      ['takeBack', 'price'],
      ['takeBack', 'price'],
    ]);
    expect(document.activeElement).toBe(part('pick-price')?.querySelector('summary'));
  });

  it('may have been taken from a page that has changed: that is said, and nothing is pressed', () => {
    display(listing(null), [{ field: 'price', value: '45 EUR', why: 'gone' }]);
    expect(said()).toBe(pickTexts.lapsed.gone('45 EUR'));
    expect([labelOf('pick-price'), isOpen('pick-price')]).toEqual([pickTexts.check('price'), true]);
    expect(part('reading-note')?.textContent?.trim()).toBe(pickTexts.toCheck('price'));
    part('unpick')?.click();
    expect(calls).toEqual([['takeBack', 'price']]);
  });
});

describe('a price in the user’s own words', () => {
  const form = () => part('typed-price') as HTMLFormElement;
  const type = (words: string) =>
    act(() => {
      (form().elements.namedItem('price') as HTMLInputElement).value = words;
      form().dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
    });

  it('is said beside the page’s own reading', () => {
    display(listing(clash));
    type('£120');
    expect(calls).toEqual([['pick', 'price', { how: 'typed', value: '£120', was: '240 EUR' }]]);
  });

  it('is said beside that again, and is none of the readings', () => {
    const note: FieldNote = {
      source: 'user',
      confidence: 1,
      alternatives: [{ value: '240 EUR', source: 'page' }, ...clash.alternatives],
      byUser: 'typed',
    };
    display(listing(note, { priceText: '£120' }));
    expect(readings().map((each) => each.dataset.reading)).toEqual(['page', 'meta']);
    expect(said()).toBe(pickTexts.typed(KEPT));
    expect(part('read')?.textContent).toContain('typed by you');
    type('£130');
    expect(calls).toEqual([['pick', 'price', { how: 'typed', value: '£130', was: '240 EUR' }]]);
  });

  it('can be said of a price that is sure, or was not found at all; folded away until then', () => {
    display(listing({ source: 'page', confidence: 0.95, alternatives: [] }));
    expect([isOpen('what-was-read'), isOpen('pick-price'), labelOf('pick-price')]).toEqual([
      false,
      false,
      pickTexts.correct('price'),
    ]);
    expect(part('reading-note')).toBeNull();
    display(listing(null, { price: null, priceText: '', fields: {} }));
    type('80');
    expect(calls).toEqual([['pick', 'price', { how: 'typed', value: '80', was: '' }]]);
  });
});

it('other fields are offered where there is something to pick from', () => {
  const note: FieldNote = { source: 'page', confidence: 0.9, alternatives: [{ value: 'New', source: 'microdata' }] };
  display(listing(null, { fields: { condition: note, title: { ...note, alternatives: [] } } }));
  expect([isOpen('pick-condition'), part('pick-title'), part('pick-description')]).toEqual([false, null, null]);
  part('pick-condition')?.querySelectorAll<HTMLElement>('[data-reading]')[1]?.click();
  expect(calls).toEqual([['pick', 'condition', { how: 'picked', value: 'New' }]]);
  // What can't be picked of is told beside it, as before.
  display(listing(null, { fields: { place: note } }));
  expect(root.textContent).toContain('elsewhere on the page:');
  expect(all('[data-part="read"] q').map(({ textContent }) => textContent)).toEqual(['New']);
});
