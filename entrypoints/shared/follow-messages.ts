import { browser } from 'wxt/browser';
import { type Message, messageFrom } from '../../src/session/messages';
import { ourselves } from './ourselves';

/** Tells when a panel of another window says that what was seen of a page has changed. */
export function onSeenChanged(tell: (about: string) => void): void {
  browser.runtime.onMessage.addListener((value, sender) => {
    const message = messageFrom(value, sender, ourselves());
    if (message?.type === 'seen-changed') tell(message.about);
  });
}

/** Tells when another page says that packs have changed. */
export function onPacksChanged(tell: () => void): void {
  browser.runtime.onMessage.addListener((value, sender) => {
    if (messageFrom(value, sender, ourselves())?.type === 'packs-changed') tell();
  });
}

/** Tells when another page says that drafts, or what was seen of one, have changed. */
export function onDraftsChanged(tell: () => void): void {
  browser.runtime.onMessage.addListener((value, sender) => {
    if (messageFrom(value, sender, ourselves())?.type === 'drafts-changed') tell();
  });
}

/** Tells all our other pages. Nobody listening is no harm: each reads what is kept when it opens. */
export function announce(message: Message): void {
  browser.runtime.sendMessage(message).catch(() => {});
}
