import { setTimeout as sleep } from 'node:timers/promises';
import type { InWindow } from './firefox-window';

/** As the browser's own window has it; nothing of this is public interface. */
declare const Services: {
  focus: {
    moveFocus(window: Window, from: null, where: number, how: number): unknown;
    MOVEFOCUS_FORWARDDOC: number;
    FLAG_BYKEY: number;
  };
};

/**
 * Brings the focus into a document of a window as a person does: by F6, which goes round the page, the address bar and
 * the side bar.
 * @returns false where it stood there already. @throws Error where it never comes there.
 */
export async function goRoundTo(hasFocus: () => Promise<unknown>, window: () => Promise<InWindow>): Promise<boolean> {
  if (await hasFocus()) return false;
  const inWindow = await window();
  for (let turn = 0; turn < 8; turn += 1) {
    await inWindow(() => {
      const { focus } = Services;
      focus.moveFocus(globalThis.window, null, focus.MOVEFOCUS_FORWARDDOC, focus.FLAG_BYKEY);
    });
    // Another process draws the document, and hears of the focus a moment later.
    for (let wait = 0; wait < 5; wait += 1) {
      if (await hasFocus()) return true;
      await sleep(20);
    }
  }
  throw new Error('the focus never came to the document');
}
