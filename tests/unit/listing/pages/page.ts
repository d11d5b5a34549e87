import type { Listing } from '../../../../src/listing/types';

/** An invented page and what a person reads on it. */
export interface Page {
  name: string;
  html: string;
  expected: Partial<Omit<Listing, 'fields' | 'url'>>;
  /** Page text that no field may hold. */
  absent?: string[];
}

export const price = (amount: string, currency: string | null, how: 'asking' | 'bid' | 'sold' | 'from' = 'asking') => ({
  amount,
  currency,
  how,
});

export const jsonLd = (value: unknown): string =>
  `<script type="application/ld+json">${JSON.stringify(value)}</script>`;
