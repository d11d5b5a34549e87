/**
 * Words that were marked on a page, on their way into the enquiry. They travel through the browser's session storage,
 * which forgets, not through the address: addresses stay in the history, also of pages that were read in private.
 */

/** UTF-16 units of a marked text that are taken along: more than any advert. */
export const LONGEST_SELECTION = 8_000;

const PREFIX = 'selection/';

/** Under what a marked text lies until the enquiry fetches it. @param id of no other one */
export function selectionKey(id: string): string {
  return PREFIX + id;
}

/** The anchor that opens the enquiry with a marked text. */
export function selectionAnchor(id: string): string {
  return `#enquiry?selection=${encodeURIComponent(id)}`;
}

/** The key that such an anchor names, or null for any other anchor. */
export function selectionIn(anchor: string): string | null {
  const at = anchor.indexOf('?');
  if (at < 0 || anchor.slice(0, at) !== '#enquiry') return null;
  const id = new URLSearchParams(anchor.slice(at + 1)).get('selection');
  return id !== null && /^[0-9a-f-]{1,40}$/.test(id) ? selectionKey(id) : null;
}

/** What lies there as a text, or null where nothing usable does. */
export function selectionFrom(value: unknown): string | null {
  if (typeof value !== 'string') return null;
  const text = value.slice(0, LONGEST_SELECTION).trim();
  return text === '' ? null : text;
}
