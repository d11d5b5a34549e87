import type { InWindow } from './firefox-window';

interface Menu extends HTMLElement {
  state: 'closed' | 'showing' | 'open' | 'hiding';
  activateItem(item: Element): void;
}
interface BrowserWindow extends Window {
  gBrowser: { selectedBrowser: Element };
  synthesizeMouseEvent(type: string, x: number, y: number, mouse: object): boolean;
}

/**
 * Opens the menu over the tab in front by the mouse's second button, and presses the one item in it that the extension
 * has. @throws Error where the menu doesn't open, or has no such item
 */
export async function pressMenuItem(inWindow: InWindow, id: string): Promise<void> {
  const prefix = `${id.toLowerCase().replace(/[^a-z0-9_-]/g, '_')}-menuitem-`;
  await inWindow(
    async (start: string) => {
      const menu = document.getElementById('contentAreaContextMenu') as Menu | null;
      if (!menu) throw new Error('the window has no menu');
      const { gBrowser, synthesizeMouseEvent } = window as unknown as BrowserWindow;
      const box = gBrowser.selectedBrowser.getBoundingClientRect();
      const wait = () => new Promise((resolve) => setTimeout(resolve, 50));
      for (let tries = 0; tries < 100 && menu.state !== 'open'; tries += 1) {
        if (tries % 20 === 0)
          synthesizeMouseEvent.call(window, 'contextmenu', box.x + 60, box.y + 60, { button: 2, clickCount: 1 });
        await wait();
      }
      if (menu.state !== 'open') throw new Error('the menu did not open');
      const item = menu.querySelector(`[id^="${start}"]`);
      if (!item) throw new Error('the extension has no item in the menu');
      menu.activateItem(item);
    },
    [prefix],
  );
}
