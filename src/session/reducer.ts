import type { Trouble } from '../keep/trouble';
import type { Answer } from './answer';
import type { SessionEvent, Wanted } from './events';
import type { Reading } from './reading';
import { NOTHING_SEEN, type Seen, sameSeen, withoutSeen, withSeen } from './seen';
import { keyOf, type Where } from './where';

export type PacksState =
  | { state: 'loading' }
  | { state: 'ready'; stamp: number }
  | { state: 'failed'; trouble: Trouble };

/** An answer, and what it answers. */
export interface Answered {
  wanted: Wanted;
  answer: Answer;
}

/** What was seen of one listing, and how often that has changed since the panel was opened. */
export interface SeenOf {
  turn: number;
  seen: Seen;
}

/** All that the panel of one window knows. */
export interface Session {
  /** The tab in front, or null before the browser has said. */
  where: Where | null;
  /** By window and tab. */
  readings: ReadonlyMap<string, Reading>;
  packs: PacksState;
  /** By window and tab. */
  answers: ReadonlyMap<string, Answered>;
  /** By the address of the page; those whose answers have been read. */
  seen: ReadonlyMap<string, SeenOf>;
}

export const emptySession: Session = {
  where: null,
  readings: new Map(),
  packs: { state: 'loading' },
  answers: new Map(),
  seen: new Map(),
};

/** The session after an event. Pure; answers the same object where nothing changed. */
export function step(session: Session, event: SessionEvent): Session {
  switch (event.type) {
    case 'tabChosen':
      return { ...session, where: event.where };
    case 'reading':
      return withReading(session, event.reading);
    case 'forgotten':
      return without(session, keyOf(event.where));
    case 'packsReady':
      return { ...session, packs: { state: 'ready', stamp: event.stamp } };
    case 'packsFailed':
      return { ...session, packs: { state: 'failed', trouble: event.trouble } };
    case 'seenKept':
      return withSeenOf(session, event.about, event.seen);
    case 'saw':
      return withSeenOf(session, event.about, withSeen(seenOf(session, event.about), event.attribute, event.value));
    case 'tookBack':
      return withSeenOf(session, event.about, withoutSeen(seenOf(session, event.about), event.attribute));
    case 'answered':
      return withAnswer(session, event);
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

function seenOf(session: Session, about: string): Seen {
  return session.seen.get(about)?.seen ?? NOTHING_SEEN;
}

function withSeenOf(session: Session, about: string, seen: Seen): Session {
  const before = session.seen.get(about);
  if (before && sameSeen(before.seen, seen)) return session;
  return { ...session, seen: new Map(session.seen).set(about, { turn: (before?.turn ?? 0) + 1, seen }) };
}

/**
 * An answer counts only for the press that is still the tab's last one, and never replaces one to newer packs or to more
 * that was seen.
 */
function withAnswer(session: Session, { wanted, answer }: Answered): Session {
  const key = keyOf(wanted);
  const reading = session.readings.get(key);
  if (reading?.state !== 'read' || reading.number !== wanted.number) return session;
  const there = session.answers.get(key);
  if (there && there.wanted.number === wanted.number && isNewer(there.wanted, wanted)) return session;
  return { ...session, answers: new Map(session.answers).set(key, { wanted, answer }) };
}

function isNewer(a: Wanted, b: Wanted): boolean {
  return a.stamp > b.stamp || (a.stamp === b.stamp && a.turn > b.turn);
}

function without(session: Session, key: string): Session {
  if (!session.readings.has(key) && !session.answers.has(key)) return session;
  const readings = new Map(session.readings);
  const answers = new Map(session.answers);
  readings.delete(key);
  answers.delete(key);
  return { ...session, readings, answers };
}

/** The reading of the tab in front, or null. */
export function currentReading(session: Session): Reading | null {
  return session.where ? (session.readings.get(keyOf(session.where)) ?? null) : null;
}

/** The answer to that very press on that tab, or null. It may rest on packs that have changed since. */
export function answerFor(session: Session, reading: Reading): Answered | null {
  const answered = session.answers.get(keyOf(reading));
  return answered?.wanted.number === reading.number ? answered : null;
}
