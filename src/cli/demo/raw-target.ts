import type { CDPSession } from 'playwright-core';

/** A CDP target that Playwright has no object for (the side panel), spoken to through the browser's own session. */
export interface RawTarget {
  targetId: string;
  /** Sends one CDP command. @throws Error with the browser's message where the command fails or the target is gone. */
  send(method: string, params?: object): Promise<Record<string, unknown>>;
  on(event: string, listener: (params: never) => void): void;
  detached(): boolean;
  detach(): Promise<void>;
}

/**
 * Attaches to a target. Messages are wrapped (`flatten: false`), because a flattened session of its own would be
 * answered on the connection that Playwright keeps for itself.
 */
export async function attachRaw(browser: CDPSession, targetId: string): Promise<RawTarget> {
  const { sessionId } = await browser.send('Target.attachToTarget', { targetId, flatten: false });
  const waiting = new Map<number, { resolve: (result: Record<string, unknown>) => void; reject: (e: Error) => void }>();
  const listeners = new Map<string, ((params: never) => void)[]>();
  let last = 0;
  let gone = false;

  const onMessage = (event: { sessionId: string; message: string }) => {
    if (event.sessionId !== sessionId) return;
    const message = JSON.parse(event.message);
    if (message.id === undefined) {
      for (const listener of listeners.get(message.method) ?? []) listener(message.params as never);
      return;
    }
    const entry = waiting.get(message.id);
    waiting.delete(message.id);
    if (message.error) entry?.reject(new Error(message.error.message));
    else entry?.resolve(message.result);
  };
  const onDetached = (event: { sessionId: string }) => {
    if (event.sessionId !== sessionId) return;
    gone = true;
    browser.off('Target.receivedMessageFromTarget', onMessage);
    browser.off('Target.detachedFromTarget', onDetached);
    for (const { reject } of waiting.values()) reject(new Error('the target is gone'));
    waiting.clear();
  };
  browser.on('Target.receivedMessageFromTarget', onMessage);
  browser.on('Target.detachedFromTarget', onDetached);

  return {
    targetId,
    send(method, params = {}) {
      if (gone) return Promise.reject(new Error('the target is gone'));
      last += 1;
      const id = last;
      return new Promise((resolve, reject) => {
        waiting.set(id, { resolve, reject });
        const message = JSON.stringify({ id, method, params });
        browser.send('Target.sendMessageToTarget', { sessionId, message }).catch((error: Error) => {
          waiting.delete(id);
          reject(error);
        });
      });
    },
    on(event, listener) {
      listeners.set(event, [...(listeners.get(event) ?? []), listener]);
    },
    detached: () => gone,
    async detach() {
      if (!gone) await browser.send('Target.detachFromTarget', { sessionId }).catch(() => {});
    },
  };
}
