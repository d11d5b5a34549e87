import type { Candidate, PriceHow, SourceName } from '../types';
import { is, type Thing, text, texts, things } from './things';

const OFFERS_MOST = 30;
/** Prices that are named but not asked (schema.org PriceTypeEnumeration). */
const NOT_ASKED = /(?:ListPrice|StrikethroughPrice|SRP|MSRP|RegularPrice|InvoicePrice|MinimumAdvertisedPrice)$/;

/**
 * The prices of an offer or of a product's offers (schema.org: Offer, AggregateOffer, PriceSpecification). Of an
 * aggregate the lowest, meant as "from" if others are higher. Postage, instalments and list prices are none.
 */
export function pricesOfOffers(offers: Thing[], source: SourceName, weight: number): Candidate[] {
  const found: Candidate[] = [];
  const add = (price: string | undefined, currency: string | undefined, how: PriceHow | undefined, worth: number) => {
    if (price === undefined || !/\d/.test(price)) return;
    found.push({
      field: 'price',
      value: price,
      source,
      weight: worth,
      currency: code(currency),
      ...(how ? { how } : {}),
    });
  };
  for (const offer of offers.slice(0, OFFERS_MOST)) {
    const currency = text(offer, 'priceCurrency', 'currency');
    if (is(offer, /^AggregateOffer$/)) {
      const low = text(offer, 'lowPrice');
      const high = text(offer, 'highPrice');
      const alone = text(offer, 'price') ?? (high === undefined || low === high ? low : undefined);
      if (alone !== undefined)
        add(alone, currency, Number(text(offer, 'offerCount') ?? 1) > 1 ? 'from' : undefined, weight);
      else add(low, currency, 'from', weight);
      if (low === undefined) found.push(...pricesOfOffers(things(offer, 'offers'), source, weight - 0.05));
      continue;
    }
    add(text(offer, 'price'), currency, undefined, weight);
    if (text(offer, 'price') !== undefined) continue;
    for (const specification of [...things(offer, 'priceSpecification'), ...things(offer, 'hasPriceSpecification')]) {
      if (is(specification, /^(?:DeliveryChargeSpecification|PaymentChargeSpecification)$/)) continue;
      if (texts(specification, 'priceType').some((type) => NOT_ASKED.test(type))) continue;
      if (
        ['billingDuration', 'billingIncrement', 'referenceQuantity'].some(
          (property) => specification.get(property).length > 0,
        )
      )
        continue;
      const price = text(specification, 'price', 'hasCurrencyValue', 'minPrice');
      const open = text(specification, 'price') === undefined && text(specification, 'maxPrice') !== undefined;
      add(
        price,
        text(specification, 'priceCurrency', 'hasCurrency') ?? currency,
        open ? 'from' : undefined,
        weight - 0.05,
      );
    }
  }
  return found;
}

/** Three letters as a currency code, else null. */
export const code = (currency: string | null | undefined): string | null => {
  const bare = currency?.trim().toUpperCase() ?? '';
  return /^[A-Z]{3}$/.test(bare) ? bare : null;
};
