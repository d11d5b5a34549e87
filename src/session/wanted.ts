import type { Wanted } from './events';
import type { ReadReading } from './reading';
import { answerFor, currentReading, type Session } from './reducer';
import type { Seen } from './seen';

/** The audit that the session needs next, and from what; null where there is none to make. Pure. */
export function wantedAudit(session: Session): { wanted: Wanted; reading: ReadReading; seen: Seen } | null {
  const reading = currentReading(session);
  if (reading?.state !== 'read' || session.packs.state !== 'ready') return null;
  const of = session.seen.get(reading.address);
  if (!of) return null;
  const { stamp } = session.packs;
  const there = answerFor(session, reading)?.wanted;
  if (there?.stamp === stamp && there.turn === of.turn) return null;
  const { window, tab, number } = reading;
  return { wanted: { window, tab, number, stamp, turn: of.turn }, reading, seen: of.seen };
}

/** The address of the page in front where what was seen of it before has not been read yet, or null. Pure. */
export function wantedSeen(session: Session): string | null {
  const reading = currentReading(session);
  return reading?.state === 'read' && !session.seen.has(reading.address) ? reading.address : null;
}
