import type { KeptDraft } from '../keep/schema';
import type { Draft } from '../listing/types';
import { draftRoomTexts as texts } from '../text/catalogue/draft-room';

/** What a seller writes in the workbench, in the order in which it is asked for. */
export const DRAFT_FIELDS = ['title', 'description', 'priceText', 'conditionText', 'serialText'] as const;
export type DraftField = (typeof DRAFT_FIELDS)[number];

export function isBlank(draft: Draft): boolean {
  return DRAFT_FIELDS.every((field) => (draft[field] ?? '').trim() === '');
}

export function sameDraft(a: Draft, b: Draft): boolean {
  return DRAFT_FIELDS.every((field) => (a[field] ?? '') === (b[field] ?? ''));
}

/** What a draft is called in the list: its title, else the beginning of its text. */
export function draftName(draft: Draft): string {
  const first = [draft.title, ...(draft.description ?? '').split('\n')].find((line) => line?.trim());
  return first?.trim() ?? texts.unnamed;
}

/** The whole draft as plain text, to paste where it is to be published. Empty fields are left out. */
export function draftText(draft: Draft): string {
  const of = (field: DraftField) => (draft[field] ?? '').trim();
  const row = (field: 'priceText' | 'conditionText' | 'serialText') =>
    of(field) === '' ? '' : texts.row(texts.fields[field], of(field));
  const rows = [row('priceText'), row('conditionText'), row('serialText')].filter(Boolean).join('\n');
  return `${[of('title'), of('description'), rows].filter(Boolean).join('\n\n')}\n`;
}

/**
 * The drafts that are shown, once another window has changed those that are kept: what is kept by now, and of this
 * window's own those that are still being typed, and those in which nothing has been written yet.
 * @param typed by id
 */
export function draftsFollowed(
  shown: readonly KeptDraft[],
  kept: readonly KeptDraft[],
  typed: ReadonlyMap<string, KeptDraft>,
): KeptDraft[] {
  const isKept = (id: string) => kept.some((draft) => draft.id === id);
  const own = shown.filter(({ id, draft }) => !isKept(id) && (typed.has(id) || isBlank(draft)));
  return [...own, ...kept].map((draft) => typed.get(draft.id) ?? draft);
}
