import type { Audit } from '../audit/types';
import type { Trouble } from '../keep/trouble';
import type { Listing } from '../listing/types';
import type { Answer } from './answer';
import type { Failure, ReadReading, Refusal } from './reading';
import { answerFor, currentReading, type Session } from './reducer';
import type { Words } from './words';

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
  /** The page shows no advert. */
  | { screen: 'no-listing' }
  /** The page shows many adverts. */
  | { screen: 'list' }
  /** No pack that is switched on speaks of such a thing. */
  | { screen: 'no-pack'; listing: Listing }
  | { screen: 'audit'; reading: ReadReading; listing: Listing; audit: Audit; words: Words };

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
      return answered ? answerScreen(reading, answered.answer) : { screen: 'reading' };
    }
  }
}

function answerScreen(reading: ReadReading, answer: Answer): Screen {
  if (!answer.ok) return { screen: 'broken', problem: answer.problem };
  const { listing, audit, words } = answer;
  if (audit.kind === 'none') return { screen: 'no-listing' };
  if (audit.kind === 'list') return { screen: 'list' };
  if (audit.packs.length === 0) return { screen: 'no-pack', listing };
  return { screen: 'audit', reading, listing, audit, words };
}

/** Whether there is something to read behind the button: anything that doesn't hold, isn't shown, or is to be minded. */
export function hasSomething(screen: Screen): boolean {
  return screen.screen === 'audit' && screen.audit.findings.some(({ standing }) => standing !== 'agrees');
}
