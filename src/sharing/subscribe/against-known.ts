import type { Notice } from './notice';

/** What is known of a pack that is followed. */
export interface KnownEditions {
  pack: string;
  /** The edition that is used. */
  active: number;
  /** The highest edition that was ever seen under its seal, used or not. */
  highest: number;
  /** SHA-256 of the published file from which the highest edition was taken; null where it came in another way. */
  file: string | null;
  /** The day, month or year until which the edition in use wants to be followed by another one. */
  expires: string | null;
}

/**
 * What a notice comes to, of which nothing has been proved yet: other-pack; older than what was seen already (the host
 * goes back, or was set back); another text under the number of an edition that was seen; newer than the one in use; the
 * same; or the same although its time is over, so that a newer one may be held back.
 */
export type NoticeSays = 'other-pack' | 'older' | 'other-text' | 'newer' | 'same' | 'overdue';

/** @param today ISO 8601 date */
export function againstKnown(notice: Notice, known: KnownEditions, today: string): NoticeSays {
  if (notice.pack !== known.pack) return 'other-pack';
  if (notice.edition < known.highest) return 'older';
  if (notice.edition === known.highest && known.file !== null && notice.file.sha256 !== known.file) return 'other-text';
  if (notice.edition > known.active) return 'newer';
  return isOver(known.expires, today) ? 'overdue' : 'same';
}

/** Whether a day, month or year has passed: "2026-06" has on the first of July. */
export function isOver(date: string | null, today: string): boolean {
  return date !== null && today.slice(0, date.length) > date;
}
