import type { OfferStep } from '../../src/session/following/offer-told';
import { startThread } from '../shared/engine-thread';

const UNDER_WAY: ReadonlySet<OfferStep['state']> = new Set(['asking', 'fetching', 'checking']);

/**
 * Looks at what an address publishes, in a thread of its own.
 * @param tell told each step; the last one ends the thread
 * @returns stops it at once; nothing of it remains
 */
export function lookInThread(address: string, followed: string | null, tell: (step: OfferStep) => void): () => void {
  const end = (step: OfferStep) => {
    thread.end();
    tell(step);
  };
  const thread = startThread(
    (message) => {
      if (message.type !== 'looking') return;
      if (UNDER_WAY.has(message.step.state)) tell(message.step);
      else end(message.step);
    },
    () => end({ state: 'trouble', trouble: 'memory' }),
  );
  thread.send({ type: 'look', address, followed });
  return () => thread.end();
}
