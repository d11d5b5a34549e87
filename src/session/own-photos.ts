/** What the enquiry's own photos are kept under. */
export const ENQUIRY_PHOTOS = 'enquiry';

/** So many photos of one thing are looked at side by side, and no more are kept. */
export const MOST_PHOTOS = 6;

/** Bytes of a file that is opened at all; what is kept of it is much smaller. */
export const LARGEST_PHOTO = 40_000_000;

/** CSS pixels of the longer side of what is kept: a number stamped into iron can still be read. */
export const LONGEST_SIDE = 1_600;

/** A photo as it is shown. */
export interface OwnPhoto {
  id: string;
  /** The file's name. */
  name: string;
  /** An inline JPEG. */
  data: string;
}

export type PhotoTrouble = { why: 'many' | 'large' | 'unreadable'; name: string } | { why: 'full' | 'failed' };

/** The size in which a picture is drawn: never larger than it is, its sides in proportion, neither of them nought. */
export function fitted(width: number, height: number, longest = LONGEST_SIDE): { width: number; height: number } {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** Which of the files that were picked are opened, and what is wrong with the others. */
export function accepted<F extends { name: string; size: number }>(
  files: readonly F[],
  there: number,
): { files: F[]; troubles: PhotoTrouble[] } {
  const troubles: PhotoTrouble[] = [];
  const small = files.filter(({ name, size }) => {
    if (size > LARGEST_PHOTO) troubles.push({ why: 'large', name });
    return size <= LARGEST_PHOTO;
  });
  const room = Math.max(0, MOST_PHOTOS - there);
  for (const { name } of small.slice(room)) troubles.push({ why: 'many', name });
  return { files: small.slice(0, room), troubles };
}
