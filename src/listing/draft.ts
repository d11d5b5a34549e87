import { settleCandidates } from './settle-candidates';
import type { Candidate, Draft, FieldName, Listing } from './types';

const FIELDS: [keyof Draft & string, FieldName][] = [
  ['title', 'title'],
  ['description', 'description'],
  ['priceText', 'price'],
  ['conditionText', 'condition'],
  ['location', 'place'],
  ['listedDate', 'listedDate'],
];

/** A seller's own draft as a listing: nothing to weigh, every field is what the seller wrote. Never throws. */
export function readDraft(draft: Draft): Listing {
  const candidates: Candidate[] = [];
  const add = (field: FieldName, value: string) => candidates.push({ field, value, source: 'draft', weight: 0.97 });
  for (const [key, field] of FIELDS) {
    const value = draft[key];
    if (typeof value === 'string') add(field, value);
  }
  for (const serial of (draft.serialText ?? '').split(/[\n;,]/)) add('serial', serial);
  for (const photo of draft.photos ?? []) add('photo', photo);
  const language = draft.language?.trim().toLowerCase() || null;
  const listing = settleCandidates(candidates, { url: null, offers: 1, language });
  // As the seller wrote it, whether or not it reads as money.
  if (draft.priceText) listing.priceText = draft.priceText.trim();
  return listing;
}
