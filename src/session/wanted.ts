import type { Wanted } from './events';
import type { ReadReading } from './reading';
import { answerFor, currentReading, type Session } from './reducer';

/** The audit that the session needs next, and from what; null where there is none to make. Pure. */
export function wantedAudit(session: Session): { wanted: Wanted; reading: ReadReading } | null {
  const reading = currentReading(session);
  if (reading?.state !== 'read' || session.packs.state !== 'ready') return null;
  const { stamp } = session.packs;
  if (answerFor(session, reading)?.wanted.stamp === stamp) return null;
  return { wanted: { window: reading.window, tab: reading.tab, number: reading.number, stamp }, reading };
}
