import type { Question, Replies, Reply } from '../../src/session/engine-messages';
import { startThread } from '../shared/engine-thread';

export interface BenchEngine {
  /** Asks something; the answer rests on the packs as they are when it comes. */
  ask<About extends keyof Replies>(question: Question & { about: About }): Promise<Reply<About>>;
  packsChanged(): void;
}

/**
 * Starts the workbench's engine in a thread of its own.
 * @param broken told where the thread fails; what was asked is then never answered
 */
export function startBenchEngine(broken: () => void): BenchEngine {
  const waiting = new Map<number, (reply: Reply<keyof Replies>) => void>();
  const thread = startThread((message) => {
    if (message.type !== 'reply') return;
    waiting.get(message.number)?.(message.reply);
    waiting.delete(message.number);
  }, broken);
  let number = 0;
  thread.send({ type: 'packsChanged' });
  return {
    ask: <About extends keyof Replies>(question: Question & { about: About }) =>
      new Promise<Reply<About>>((resolve) => {
        number += 1;
        waiting.set(number, resolve as (reply: Reply<keyof Replies>) => void);
        thread.send({ type: 'ask', number, question });
      }),
    packsChanged: () => thread.send({ type: 'packsChanged' }),
  };
}
