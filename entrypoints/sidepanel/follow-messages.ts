import { browser } from 'wxt/browser';
import { messageFrom } from '../../src/session/messages';
import { ourselves } from '../shared/ourselves';

/** Tells when the workbench says that packs have changed. */
export function onPacksChanged(tell: () => void): void {
  browser.runtime.onMessage.addListener((value, sender) => {
    if (messageFrom(value, sender, ourselves())?.type === 'packs-changed') tell();
  });
}
