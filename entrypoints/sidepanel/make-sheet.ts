import { browser } from 'wxt/browser';
import { putSheet } from '../../src/keep/sheets';
import type { Listing } from '../../src/listing/types';
import { sheetLink } from '../../src/session/sheet-link';
import { withKeep } from '../shared/keep';

/** Keeps what a viewing sheet is made from, and opens it in the workbench. @returns false where it could not be kept */
export async function makeSheet(about: string, listing: Listing): Promise<boolean> {
  const kept = await withKeep((db) => putSheet(db, { about, madeAt: new Date().toISOString(), listing }));
  if (kept.ok) await browser.tabs.create({ url: browser.runtime.getURL('/workbench.html') + sheetLink(about) });
  return kept.ok;
}
