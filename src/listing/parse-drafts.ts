import * as z from 'zod/mini';
import { draftTexts as texts } from '../text/catalogue/drafts';
import { tidy } from './tidy';
import type { Draft } from './types';

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
    return texts.notJson;
  }
  const list = Array.isArray(value) ? value : [value];
  if (list.length === 0) return texts.none;
  if (list.length > DRAFTS_MOST) return texts.tooMany(DRAFTS_MOST);
  const drafts: Draft[] = [];
  for (const [index, one] of list.entries()) {
    const parsed = DraftShape.safeParse(one);
    if (!parsed.success) {
      const what = wordsFor(parsed.error.issues[0]);
      return Array.isArray(value) ? texts.inDraft(index + 1, what) : what;
    }
    drafts.push(parsed.data);
  }
  return drafts;
}

function wordsFor(issue: z.core.$ZodIssue | undefined): string {
  if (issue?.code === 'unrecognized_keys') return texts.unknownKey(tidy(String(issue.keys[0])).slice(0, 60));
  const [key] = issue?.path ?? [];
  if (key === undefined) return texts.notADraft;
  return key === 'photos' ? texts.mustBeTexts(key) : texts.mustBeText(String(key));
}
