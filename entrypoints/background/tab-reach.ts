import { browser } from 'wxt/browser';
import { pageAddress } from '../../src/session/address';
import type { TabReach, Visit } from '../../src/session/read-tab';

/** How long a page that is still loading is waited for, in milliseconds. */
const PATIENCE = 8_000;

/** What activeTab lets us do in a tab after a press of the button there; each call rejects where it doesn't. */
export const tabReach: TabReach = {
  wait,

  async look(tab) {
    const answer = await first({ tabId: tab }, selfDescription);
    return { document: answer.documentId, ...described(answer.result) };
  },

  async collect(tab, document) {
    const read = async (injectImmediately: boolean) => {
      const target = { tabId: tab, documentIds: [document] };
      const [answer] = await browser.scripting.executeScript({ target, files: ['/reader.js'], injectImmediately });
      if (!answer) throw new Error('the reader did not answer');
      return { document: answer.documentId, answer: answer.result };
    };
    // A page is best read once it has loaded; one that never ends loading is read as it stands.
    const loaded = read(false);
    const inTime = await Promise.race([loaded, wait(PATIENCE)]);
    return inTime ?? Promise.race([loaded, read(true)]);
  },

  async settled(tab, document) {
    try {
      await first({ tabId: tab, documentIds: [document] }, comeToRest);
    } catch {
      // The document is gone, which the reading that follows will find.
    }
  },

  async shows(tab, { document, address }: Visit) {
    try {
      const answer = await first({ tabId: tab, documentIds: [document] }, selfDescription);
      return described(answer.result).address === address;
    } catch {
      return false;
    }
  },
};

/** Runs in the page: its address and what kind of document it is. Sees nothing outside itself. */
function selfDescription() {
  return { address: location.href, contentType: document.contentType };
}

/**
 * Runs in the page: waits until nothing more is put into it. A page that has taken a new address often asks its server
 * first, so a change is waited for, but not for long; and a page that never rests is read as it stands. Sees nothing
 * outside itself.
 */
function comeToRest(): Promise<void> {
  const [rest, unchanged, patience] = [600, 2_500, 8_000];
  return new Promise((resolve) => {
    const end = () => {
      watch.disconnect();
      resolve();
    };
    let timer = setTimeout(end, unchanged);
    const watch = new MutationObserver(() => {
      clearTimeout(timer);
      timer = setTimeout(end, rest);
    });
    watch.observe(document, { childList: true, characterData: true, subtree: true });
    setTimeout(end, patience);
  });
}

function wait(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}

async function first(target: { tabId: number; documentIds?: string[] }, func: () => unknown) {
  const answers = await browser.scripting.executeScript({ target, func, injectImmediately: true });
  const answer = answers[0];
  if (!answer) throw new Error('no document answered');
  return answer;
}

function described(value: unknown): { address: string; contentType: string } {
  const { address, contentType } = (value ?? {}) as Record<string, unknown>;
  return {
    address: pageAddress(typeof address === 'string' ? address : ''),
    contentType: typeof contentType === 'string' ? contentType : '',
  };
}
