import * as z from 'zod/mini';
import { settleCandidates } from './settle';
import type { Candidate, Draft, FieldName, Listing } from './types';

z.config({ jitless: true });

const DRAFTS_MOST = 10_000;
const text = z.optional(z.string());
const DraftShape = z.strictObject({
  id: text,
  title: text,
  description: text,
  priceText: text,
  conditionText: text,
  serialText: text,
  location: text,
  language: text,
  listedDate: text,
  photos: z.optional(z.array(z.string())),
});

/**
 * One draft or a list of them from JSON. Answers the drafts, or one clear line that says what is wrong where.
 * Unknown keys are wrong: a misspelt one would be left out of the audit without a word.
 */
export function parseDrafts(json: string): Draft[] | string {
  let value: unknown;
  try {
    value = JSON.parse(json.replace(/^\ufeff/, ''));
  } catch {
    return 'The draft is not JSON.';
  }
  const list = Array.isArray(value) ? value : [value];
  if (list.length === 0) return 'The list holds no draft.';
  if (list.length > DRAFTS_MOST) return `The list holds more than ${DRAFTS_MOST} drafts.`;
  const drafts: Draft[] = [];
  for (const [index, one] of list.entries()) {
    const parsed = DraftShape.safeParse(one);
    if (parsed.success) {
      drafts.push(parsed.data);
      continue;
    }
    const issue = parsed.error.issues[0]!;
    const where = [...(Array.isArray(value) ? [`draft ${index + 1}`] : []), ...issue.path.map(String)].join(', ');
    const what =
      issue.code === 'unrecognized_keys' ? `unknown key "${String(issue.keys[0]).slice(0, 60)}"` : issue.message;
    return `${where ? `${where}: ` : ''}${what.replace(/\s+/g, ' ')}`;
  }
  return drafts;
}

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
