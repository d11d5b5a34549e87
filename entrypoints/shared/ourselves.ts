import { browser } from 'wxt/browser';
import type { Ourselves } from '../../src/session/messages';

/** How messages of our own pages are known. */
export function ourselves(): Ourselves {
  return { id: browser.runtime.id, pages: browser.runtime.getURL('/') };
}
