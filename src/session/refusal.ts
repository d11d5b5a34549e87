import type { Refusal } from './reading';

/** Documents that a browser shows in a viewer of its own: there is no page to read in them. */
const VIEWED = /^(?:application\/pdf|image\/|video\/|audio\/)/;

/**
 * Why the browser didn't let us into a tab, as far as its address tells.
 * @param url the tab's address, or undefined where the browser keeps it from us (as it does for its own pages)
 */
export function refusalOf(url: string | undefined): Refusal {
  if (url === undefined || url === '') return 'browser-page';
  let address: URL;
  try {
    address = new URL(url);
  } catch {
    return 'blocked';
  }
  if (address.protocol === 'file:') return 'file';
  if (address.protocol !== 'http:' && address.protocol !== 'https:') return 'browser-page';
  return 'blocked';
}

/** True for a document that is shown by a viewer, such as a PDF file or a picture on its own. */
export function isViewed(contentType: string): boolean {
  return VIEWED.test(contentType);
}
