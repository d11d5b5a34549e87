import type { Trouble } from '../keep/trouble';
import type { Knowledge } from '../pack/knowledge';
import type { SessionEvent } from './events';
import type { Reading } from './reading';
import { keyOf, type Where } from './where';

export type PacksState =
  | { state: 'loading' }
  | { state: 'ready'; knowledge: Knowledge }
  | { state: 'failed'; trouble: Trouble };

/** All that the panel of one window knows. */
export interface Session {
  /** The tab in front, or null before the browser has said. */
  where: Where | null;
  /** By window and tab. */
  readings: ReadonlyMap<string, Reading>;
  packs: PacksState;
}

export const emptySession: Session = { where: null, readings: new Map(), packs: { state: 'loading' } };

/** The session after an event. Pure; answers the same object where nothing changed. */
export function step(session: Session, event: SessionEvent): Session {
  switch (event.type) {
    case 'tabChosen':
      return { ...session, where: event.where };
    case 'reading':
      return withReading(session, event.reading);
    case 'forgotten': {
      const readings = new Map(session.readings);
      return readings.delete(keyOf(event.where)) ? { ...session, readings } : session;
    }
    case 'packsChanged':
      return { ...session, packs: { state: 'ready', knowledge: event.knowledge } };
    case 'packsFailed':
      return { ...session, packs: { state: 'failed', trouble: event.trouble } };
  }
}

/** How far a press has come; a report never leads back. */
const STAGE: Record<Reading['state'], number> = { reading: 0, read: 1, refused: 1, failed: 1, left: 2 };

function withReading(session: Session, reading: Reading): Session {
  const key = keyOf(reading);
  const there = session.readings.get(key);
  if (there) {
    const late =
      reading.number < there.number || (reading.number === there.number && STAGE[reading.state] <= STAGE[there.state]);
    if (late) return session;
  }
  return { ...session, readings: new Map(session.readings).set(key, reading) };
}

/** The reading of the tab in front, or null. */
export function currentReading(session: Session): Reading | null {
  return session.where ? (session.readings.get(keyOf(session.where)) ?? null) : null;
}
