import type { Trouble } from '../keep/trouble';
import type { Listing } from '../listing/types';
import type { Answer, Answered } from './answer';
import type { Failure, ReadReading, Refusal } from './reading';
import { answerFor, currentReading, type Session } from './reducer';
import { isStanding } from './standing-caution';

/** What the panel shows. */
export type Screen =
  /** Nothing was read in this tab yet. */
  | { screen: 'waiting' }
  | { screen: 'reading' }
  | { screen: 'refused'; reason: Refusal }
  /** The tab shows another page by now than the one that was read. */
  | { screen: 'left' }
  | { screen: 'failed'; reason: Failure }
  /** A mistake of ours: `problem` is for whoever looks into it. */
  | { screen: 'broken'; problem: string }
  | { screen: 'packs-failed'; trouble: Trouble }
  /** The page shows no advert, as far as it could be read: `unread` are addresses of frames that could not. */
  | { screen: 'no-listing'; unread: readonly string[] }
  /** The page shows many adverts. */
  | { screen: 'list' }
  /** No pack that is switched on speaks of such a thing. */
  | { screen: 'no-pack'; listing: Listing }
  /** `pending`: what was seen has changed since, and the next audit is on its way. */
  | ({ screen: 'audit'; reading: ReadReading; pending: boolean } & Omit<Answered, 'ok'>);

/**
 * What the panel shows for a session. Pure. While packs that have changed are read and the audit is made anew, the
 * earlier audit of the same page stays.
 */
export function screenOf(session: Session): Screen {
  const reading = currentReading(session);
  if (!reading) return { screen: 'waiting' };
  switch (reading.state) {
    case 'reading':
    case 'left':
      return { screen: reading.state };
    case 'refused':
      return { screen: 'refused', reason: reading.reason };
    case 'failed':
      return { screen: 'failed', reason: reading.reason };
    case 'read': {
      if (session.packs.state === 'failed') return { screen: 'packs-failed', trouble: session.packs.trouble };
      const answered = answerFor(session, reading);
      const pending = answered?.wanted.turn !== session.seen.get(reading.address)?.turn;
      return answered ? answerScreen(reading, answered.answer, pending) : { screen: 'reading' };
    }
  }
}

function answerScreen(reading: ReadReading, answer: Answer, pending: boolean): Screen {
  if (!answer.ok) return { screen: 'broken', problem: answer.problem };
  const { ok: _, ...answered } = answer;
  const { audit, listing } = answered;
  if (audit.kind === 'none') return { screen: 'no-listing', unread: reading.harvest.unread };
  if (audit.kind === 'list') return { screen: 'list' };
  if (audit.packs.length === 0) return { screen: 'no-pack', listing };
  return { screen: 'audit', reading, pending, ...answered };
}

/**
 * Whether there is something to read behind the button: anything that doesn't hold, isn't shown, or is to be minded of
 * this advert. What is to be minded of every advert alike would make a mark on all of them, which marks none.
 */
export function hasSomething(screen: Screen): boolean {
  return (
    screen.screen === 'audit' &&
    screen.audit.findings.some((finding) => finding.standing !== 'agrees' && !isStanding(finding))
  );
}
