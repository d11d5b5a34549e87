import { readDate } from './decide/dates';
import { foundIn, settleWritten } from './settle-written';
import type { Candidate, Draft, FieldName, Listing } from './types';

const FIELDS: [keyof Draft & string, FieldName][] = [
  ['title', 'title'],
  ['description', 'description'],
  ['priceText', 'price'],
  ['conditionText', 'condition'],
  ['location', 'place'],
];

const PHOTOS_MOST = 40;

/** A seller's own draft as a listing: nothing to weigh, every field is what the seller wrote. Never throws. */
export function readDraft(draft: Draft): Listing {
  const candidates: Candidate[] = [];
  const add = (field: FieldName, value: string) => candidates.push({ field, value, source: 'draft', weight: 0.97 });
  for (const [key, field] of FIELDS) {
    const value = draft[key];
    if (typeof value === 'string') add(field, value);
  }
  for (const serial of (draft.serialText ?? '').split(/[\n;,]/)) add('serial', serial);
  const language = draft.language?.trim().toLowerCase() || null;
  const listing = settleWritten(foundIn(candidates), { url: null, offers: 1, language });
  listing.photos = [...new Set(draft.photos ?? [])].filter((photo) => photo !== '').slice(0, PHOTOS_MOST);
  listing.listedDate = readDate(draft.listedDate ?? '', listing.language);
  // As the seller wrote it, whether or not it reads as money.
  if (draft.priceText) listing.priceText = draft.priceText.trim();
  return listing;
}
