import type { FieldName, Listing } from '../listing/types';
import { cli } from '../text/catalogue/cli';
import { hanging } from './layout';
import { printable } from './printable';

const texts = cli.read;
const INDENT = 16;

/** A listing for a terminal: each field, where it was read, and what else was read for it. */
export function listingText(listing: Listing, width: number): string {
  const { price } = listing;
  const rows: [FieldName, string][] = [
    ['title', listing.title],
    ['price', price ? `${price.amount} ${price.currency ?? cli.audit.currencyOpen}, ${cli.audit.hows[price.how]}` : ''],
    ['serial', listing.serials.join('\n')],
    ['condition', listing.condition ?? ''],
    ['place', listing.place ?? ''],
    ['listedDate', listing.listedDate ?? ''],
    ['sale', listing.sale ? texts.sales[listing.sale] : ''],
    ['seller', listing.seller ? texts.sellers[listing.seller] : ''],
    ['photo', listing.photos.join('\n')],
    ['details', listing.details],
    ['description', listing.description],
  ];
  const lines = rows.flatMap(([field, value]) => {
    const note = listing.fields[field];
    return [
      ...(field === 'photo' && value
        ? addresses(listing.photos)
        : hanging(texts.fields[field], printable(value) || texts.none, INDENT, width)),
      ...(note
        ? hanging('', `(${texts.from(texts.sources[note.source], note.confidence.toFixed(2))})`, INDENT, width)
        : []),
      ...(note?.alternatives ?? []).flatMap(({ value, source }) =>
        hanging('', `(${texts.lost(printable(shortened(value)), texts.sources[source])})`, INDENT, width),
      ),
    ];
  });
  lines.push(...hanging(texts.fields.language, listing.language ?? texts.none, INDENT, width));
  lines.push(...hanging(texts.fields.offers, String(listing.offers), INDENT, width));
  return `${lines.join('\n')}\n`;
}

/** An address is never broken, so that it can be copied. */
function addresses(photos: readonly string[]): string[] {
  return photos.map((photo, i) => (i === 0 ? texts.fields.photo : '').padEnd(INDENT) + printable(photo));
}

/** What lost is named, not told in full. */
function shortened(value: string): string {
  return value.length > 120 ? `${value.slice(0, 119)}…` : value;
}
