import { browser } from 'wxt/browser';
import { messageFrom } from '../../src/session/messages';
import { ourselves } from '../shared/ourselves';

/** Tells when a panel of another window says that what was seen of a page has changed. */
export function onSeenChanged(tell: (about: string) => void): void {
  browser.runtime.onMessage.addListener((value, sender) => {
    const message = messageFrom(value, sender, ourselves());
    if (message?.type === 'seen-changed') tell(message.about);
  });
}

/** Tells when the workbench says that packs have changed. */
export function onPacksChanged(tell: () => void): void {
  browser.runtime.onMessage.addListener((value, sender) => {
    if (messageFrom(value, sender, ourselves())?.type === 'packs-changed') tell();
  });
}
