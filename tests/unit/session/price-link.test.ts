import { describe, expect, it } from 'vitest';
import { NOTHING_WRITTEN, OBSERVATION_FIELDS } from '../../../src/price/observation-fields';
import { priceLink, writtenInLink } from '../../../src/session/price-link';
import { sampleAudit, sampleListing } from '../view/sample';

const audit = sampleAudit({ kind: 'item', claimedModel: 'club/plain' });
const priced = (how: 'asking' | 'sold' | 'bid') => ({
  ...sampleListing,
  ...{ price: { amount: '120.50', currency: 'GBP', how }, place: 'Hexgarth & about', listedDate: '2026-05-03' },
  seller: 'trade' as const,
});

describe('an advert’s price on its way to be kept', () => {
  it('arrives as it was, with where it was seen', () => {
    const link = priceLink({ audit, listing: priced('asking') })!;
    expect(link.startsWith('#prices?')).toBe(true);
    expect({ ...NOTHING_WRITTEN, ...writtenInLink(link, OBSERVATION_FIELDS) }).toMatchObject({
      ...{ model: 'club/plain', kind: 'asked', amount: '120.50', currency: 'GBP', date: '2026-05-03' },
      ...{ place: 'Hexgarth & about', seller: 'trade', link: sampleListing.url, finish: '', note: '' },
    });
  });
  it('without what the advert says is missing it is not complete', () => {
    const factor = { pack: 'club', entry: 'no-key', text: 'without its key', times: 0.8, source: null };
    const factors = [{ ...factor, kind: 'completeness' as const }];
    const link = priceLink({ audit: { ...audit, price: { ...audit.price, factors } }, listing: priced('asking') })!;
    expect(writtenInLink(link, OBSERVATION_FIELDS)).toMatchObject({ complete: 'no' });
    const place = [{ ...factor, kind: 'place' as const }];
    const other = priceLink({
      audit: { ...audit, price: { ...audit.price, factors: place } },
      listing: priced('asking'),
    })!;
    expect(writtenInLink(other, OBSERVATION_FIELDS)).not.toHaveProperty('complete');
  });
  it('where no model is named it is kept of the kind that it likely is', () => {
    const kind = { label: 'a hand crank', kind: 'type' as const, restsOn: null, for: [], against: [], follows: [] };
    const link = (probability: number) => {
      const likely = [{ ...kind, model: 'trade/hand-crank', probability }];
      const told = { ...audit, claimedModel: null, likely };
      return writtenInLink(priceLink({ audit: told, listing: priced('asking') })!, OBSERVATION_FIELDS);
    };
    expect(link(0.8)).toMatchObject({ model: 'trade/hand-crank' });
    expect(link(0.4)).not.toHaveProperty('model');
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
