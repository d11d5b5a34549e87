import { describe, expect, it } from 'vitest';
import { NOTHING_WRITTEN, OBSERVATION_FIELDS } from '../../../src/price/observation-fields';
import { priceLink, writtenInLink } from '../../../src/session/price-link';
import { sampleAudit, sampleListing } from '../view/sample';

const audit = sampleAudit({ kind: 'item', claimedModel: 'club/plain' });
const priced = (how: 'asking' | 'sold' | 'bid') => ({
  ...sampleListing,
  ...{ price: { amount: '120.50', currency: 'GBP', how }, place: 'Hexgarth & about', listedDate: '2026-05-03' },
});

describe('an advert’s price on its way to be kept', () => {
  it('arrives as it was, with where it was seen', () => {
    const link = priceLink({ audit, listing: priced('asking') })!;
    expect(link.startsWith('#prices?')).toBe(true);
    expect({ ...NOTHING_WRITTEN, ...writtenInLink(link, OBSERVATION_FIELDS) }).toMatchObject({
      ...{ model: 'club/plain', kind: 'asked', amount: '120.50', currency: 'GBP', date: '2026-05-03' },
      ...{ place: 'Hexgarth & about', link: sampleListing.url, finish: '', note: '' },
    });
  });
  it('of what was sold nothing says whether that was paid', () =>
    expect(writtenInLink(priceLink({ audit, listing: priced('sold') })!, OBSERVATION_FIELDS)).not.toHaveProperty(
      'kind',
    ));
  it('a bid, a part and no price are none to keep', () => {
    expect(priceLink({ audit, listing: priced('bid') })).toBeNull();
    expect(priceLink({ audit: { ...audit, kind: 'part' }, listing: priced('asking') })).toBeNull();
    expect(priceLink({ audit, listing: { ...priced('asking'), price: null } })).toBeNull();
  });
  it.each(['', '#prices', '#drafts?model=x'])('another anchor fills in nothing: "%s"', (anchor) =>
    expect(writtenInLink(anchor, OBSERVATION_FIELDS)).toEqual({}),
  );
});
