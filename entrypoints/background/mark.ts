import { browser } from 'wxt/browser';

/** A plain dot on the toolbar button where there is something to read in the panel, or nothing: never a count. */
export async function showMark(tabId: number, something: boolean): Promise<void> {
  try {
    await browser.action.setBadgeBackgroundColor({ tabId, color: '#17181a' });
    await browser.action.setBadgeTextColor({ tabId, color: '#efe6d2' });
    await browser.action.setBadgeText({ tabId, text: something ? '•' : '' });
  } catch {
    // The tab was closed in the meantime: there is no button to mark.
  }
}
