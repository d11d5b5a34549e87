import { browser } from 'wxt/browser';
import { type Message, messageFrom } from '../../src/session/messages';
import { ourselves } from './ourselves';

/** Tells each message of one type that another page of ours sends. */
export function onMessage<Type extends Message['type']>(
  type: Type,
  tell: (message: Extract<Message, { type: Type }>) => void,
): void {
  browser.runtime.onMessage.addListener((value, sender) => {
    const message = messageFrom(value, sender, ourselves());
    if (message?.type === type) tell(message as Extract<Message, { type: Type }>);
  });
}

/** Tells all our other pages. Nobody listening is no harm: each reads what is kept when it opens. */
export function announce(message: Message): void {
  browser.runtime.sendMessage(message).catch(() => {});
}
