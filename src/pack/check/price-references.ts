import type { Pack } from '../schema/index';
import type { Lookup } from './lookup';

/** What prices are of, and where they come from. */
export function checkPriceReferences(pack: Pack, lookup: Lookup): void {
  for (const part of ['bands', 'observations'] as const)
    pack.prices?.[part]?.forEach((price, i) => {
      const at = `prices.${part}[${i}]`;
      lookup.ref(`${at}.model`, price.model, 'models');
      lookup.ref(`${at}.grade`, price.grade, 'grades');
      lookup.source(at, price.source);
    });
  for (const part of ['factors', 'index', 'wages', 'rates'] as const)
    pack.prices?.[part]?.forEach((entry, i) => {
      lookup.source(`prices.${part}[${i}]`, entry.source);
    });
}
