import { JSDOM } from 'jsdom';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing/read';
import { ADDRESS } from './dom';

/** A document with as much of a layout as the reader asks about: classes that hide, strike out, or have no box of their own. */
function laidOut(html: string): Document {
  const { window } = new JSDOM(html, { url: ADDRESS });
  Object.defineProperty(window.Element.prototype, 'checkVisibility', {
    value(this: Element) {
      return (
        this.closest('.gone') === null &&
        !this.classList.contains('boxless') &&
        (this.closest('details:not([open])') === null || this.closest('summary') !== null)
      );
    },
  });
  return window.document;
}

const before = Object.getOwnPropertyDescriptor(globalThis, 'getComputedStyle');

describe('where there is a layout to ask', () => {
  beforeEach(() => {
    Object.defineProperty(globalThis, 'getComputedStyle', {
      configurable: true,
      value: (element: Element) => ({
        getPropertyValue: (name: string) =>
          name === 'text-decoration-line' && element.classList.contains('old')
            ? 'line-through'
            : name === 'white-space' && element.closest('.lines')
              ? 'pre-line'
              : name === 'display' && element.classList.contains('boxless')
                ? 'contents'
                : name === 'visibility'
                  ? 'visible'
                  : '',
      }),
    });
  });
  afterEach(() => {
    if (before) Object.defineProperty(globalThis, 'getComputedStyle', before);
    else Reflect.deleteProperty(globalThis, 'getComputedStyle');
  });

  it('leaves out what a style sheet hides, and keeps what is one press away', () => {
    const listing = readListing(
      laidOut(
        '<h1>Hand crank<span class="gone"> secret</span></h1><p>£45</p><h2>Description</h2><p>Words <i class="gone">secret</i> here.</p><p class="gone">secret</p><details><summary>More</summary><p>Folded.</p></details><h1 class="gone">Secret</h1><p class="gone price">£1</p>',
      ),
    );
    expect(listing).toMatchObject({ title: 'Hand crank', description: 'Words here.\nFolded.', priceText: '£45' });
    expect(listing.fields.price!.alternatives).toEqual([]);
  });

  it('sees what stands in an element without a box of its own, where the one around it is seen', () => {
    const listing = readListing(
      laidOut(
        '<h1>Hand crank</h1><p class="price"><span class="boxless">£45</span></p><h2>Description</h2><p>Words <i class="boxless">here</i>.</p><div class="gone"><span class="boxless">secret</span></div>',
      ),
    );
    expect(listing).toMatchObject({ priceText: '£45', description: 'Words here.' });
  });

  it('knows an amount that a style sheet strikes out', () => {
    const listing = readListing(
      laidOut('<h1>Hand crank</h1><div class="price"><span class="old"><b>£60</b></span> <span>£45</span></div>'),
    );
    expect(listing.priceText).toBe('£45');
  });

  it('breaks lines where a style sheet keeps the breaks of the source', () => {
    const listing = readListing(
      laidOut('<h1>Hand crank</h1><p>£45</p><div class="description lines">First.\n\n Second\n<b>bold</b> end.</div>'),
    );
    expect(listing.description).toBe('First.\nSecond\nbold end.');
  });
});
