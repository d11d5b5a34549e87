import { browser } from 'wxt/browser';
import { LONGEST_SELECTION, selectionAnchor, selectionKey } from '../../src/session/selection';
import { selectionTexts } from '../../src/text/catalogue/selection';

const ITEM = 'ask-selection';

/**
 * Words that are marked on any page can be asked about: the browser gives us those words when its menu is pressed, and
 * nothing else of the page.
 */
export function offerSelectionMenu(): void {
  // Made anew whenever the worker starts: what is there already is refused, which is no fault.
  browser.contextMenus.create(
    { id: ITEM, title: selectionTexts.menu, contexts: ['selection'] },
    () => void browser.runtime.lastError,
  );
  browser.contextMenus.onClicked.addListener(({ menuItemId, selectionText }) => {
    if (menuItemId === ITEM && selectionText) void openEnquiry(selectionText);
  });
}

async function openEnquiry(text: string): Promise<void> {
  const id = crypto.randomUUID();
  await browser.storage.session.set({ [selectionKey(id)]: text.slice(0, LONGEST_SELECTION) });
  await browser.tabs.create({ url: browser.runtime.getURL('/workbench.html') + selectionAnchor(id) });
}
