import type { Audit } from '../audit/types';
import type { Listing } from '../listing/types';
import type { Written } from '../price/observation-fields';

/**
 * The anchor of the room of prices with an advert's price filled in, to be looked over and kept there; null where the
 * advert names none that could be kept. A bid is no price, and of what was sold the page doesn't say what was paid.
 */
export function priceLink({ audit, listing }: { audit: Audit; listing: Listing }): string | null {
  const { price, url, place, listedDate, seller } = listing;
  if (audit.kind !== 'item' || !price || price.how === 'bid') return null;
  const written: Partial<Written> = {
    ...{ model: modelOf(audit), kind: price.how === 'sold' ? '' : 'asked', amount: price.amount },
    ...{ currency: price.currency ?? '', date: listedDate?.slice(0, 10) ?? '', grade: audit.price.band?.grade ?? '' },
    complete: audit.price.factors.some(({ kind, times }) => kind === 'completeness' && times < 1) ? 'no' : '',
    finish: audit.price.why === 'priced-apart' ? 'refinished' : '',
    ...{ place: place ?? '', seller: seller ?? '', link: url ?? '' },
  };
  const said = Object.entries(written).filter(([, value]) => value !== '');
  return `#prices?${new URLSearchParams(said as [string, string][])}`;
}

/** The model that it is called; without one the kind of thing that it most likely is, as prices are asked for one. */
function modelOf({ claimedModel, likely }: Audit): string {
  const [first] = likely;
  return claimedModel ?? (first?.kind === 'type' && first.probability >= 0.5 ? (first.model ?? '') : '');
}

/** What such an anchor fills in; nothing for any other. */
export function writtenInLink(anchor: string, fields: readonly (keyof Written)[]): Partial<Written> {
  const at = anchor.indexOf('?');
  if (!anchor.startsWith('#prices') || at < 0) return {};
  const said = new URLSearchParams(anchor.slice(at + 1));
  return Object.fromEntries(
    fields.flatMap((field) => {
      const value = said.get(field);
      return value ? [[field, value.slice(0, 2_000)]] : [];
    }),
  );
}
