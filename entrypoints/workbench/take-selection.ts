import { browser } from 'wxt/browser';
import { selectionFrom, selectionIn } from '../../src/session/selection';

/** The words that the address brings along from a marked place on a page, once: then they lie nowhere any more. */
export async function takeSelection(): Promise<string | null> {
  const key = selectionIn(location.hash);
  if (key === null) return null;
  history.replaceState(null, '', '#enquiry');
  const { [key]: kept } = await browser.storage.session.get(key);
  await browser.storage.session.remove(key);
  return selectionFrom(kept);
}
