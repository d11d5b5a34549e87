import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { collect } from '../../src/listing/collect';
import { PICKABLE, type Pickable, type Picks, readAs } from '../../src/listing/picks';
import { settle } from '../../src/listing/settle';
import { settlePicked } from '../../src/listing/settle-picked';
import type { Listing } from '../../src/listing/types';
import { documentOf, tunedPages } from './tuned-pages';

const numRuns = process.env.BEDPLATE_LONG ? 500 : 60;
/** Milliseconds; each run settles a whole page again. */
const TIMEOUT = 120_000;

/** Adverts with what can be picked of each. Read before any test begins, since that takes its time. */
const adverts = tunedPages().flatMap((page) => {
  const harvest = collect(documentOf(page));
  const own = settle(harvest);
  return own.offers === 1 ? [{ harvest, own }] : [];
});

const optionsOf = (own: Listing, field: Pickable): string[] => {
  const note = own.fields[field];
  return note ? [readAs(own, field), ...note.alternatives.map(({ value }) => value)] : [];
};
const advert = fc.constantFrom(...adverts);
/** For each field a number that picks one of its readings, or nothing. */
const choice = fc.tuple(...PICKABLE.map(() => fc.option(fc.nat(20), { nil: null })));

function picksOf(own: Listing, numbers: readonly (number | null)[]): Picks {
  const picks: Picks = {};
  for (const [i, field] of PICKABLE.entries()) {
    const [options, number] = [optionsOf(own, field), numbers[i]];
    if (options.length > 0 && typeof number === 'number')
      picks[field] = { how: 'picked', value: options[number % options.length]! };
  }
  return picks;
}

describe('whatever of its readings is picked of a page', () => {
  it(
    'stands in the listing, and nothing that can be picked is lost by it',
    () => {
      fc.assert(
        fc.property(advert, choice, ({ harvest, own }, numbers) => {
          const picks = picksOf(own, numbers);
          const { listing, lapsed } = settlePicked(harvest, own.url, null, picks);
          expect(lapsed).toEqual([]);
          for (const field of PICKABLE) {
            expect(new Set(optionsOf(listing, field))).toEqual(new Set(optionsOf(own, field)));
            if (picks[field]) {
              expect(readAs(listing, field)).toBe(picks[field].value);
              expect(listing.fields[field]).toMatchObject({ confidence: 1, byUser: 'picked' });
            } else if (field !== 'description') expect(readAs(listing, field)).toBe(readAs(own, field));
          }
          if (own.price?.currency) expect(listing.price?.currency).toBeTruthy();
          expect(JSON.parse(JSON.stringify(listing))).toEqual(listing);
        }),
        { numRuns },
      );
    },
    TIMEOUT,
  );

  it(
    'where nothing is picked, or only what is not there, all is as the page says',
    () => {
      fc.assert(
        fc.property(advert, fc.constantFrom(...PICKABLE), fc.string(), ({ harvest, own }, field, word) => {
          expect(settlePicked(harvest, own.url, null, {}).listing).toEqual(own);
          fc.pre(!optionsOf(own, field).includes(word));
          const { listing, lapsed } = settlePicked(harvest, own.url, null, { [field]: { how: 'picked', value: word } });
          expect(listing).toEqual(own);
          expect(lapsed).toEqual([{ field, value: word, why: 'gone' }]);
        }),
        { numRuns },
      );
    },
    TIMEOUT,
  );

  it(
    'a typed price never throws, and counts or is told',
    () => {
      fc.assert(
        fc.property(advert, fc.oneof(fc.string(), fc.nat().map(String)), ({ harvest, own }, value) => {
          const { listing, lapsed } = settlePicked(harvest, own.url, null, {
            price: { how: 'typed', value, was: readAs(own, 'price') },
          });
          if (lapsed.length > 0) expect(listing).toEqual(own);
          else expect(listing.fields.price).toMatchObject({ source: 'user', byUser: 'typed' });
        }),
        { numRuns },
      );
    },
    TIMEOUT,
  );
});
