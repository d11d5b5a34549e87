import { audit } from '../audit/audit';
import type { Audit } from '../audit/types';
import type { Trouble } from '../keep/trouble';
import { settle } from '../listing/settle';
import type { Listing } from '../listing/types';
import type { Knowledge } from '../pack/knowledge';
import { type Lexicon, lexiconOf } from './lexicon';
import type { Failure, ReadReading, Refusal } from './reading';
import { currentReading, type Session } from './reducer';

/** What the panel shows. */
export type Screen =
  /** Nothing was read in this tab yet. */
  | { screen: 'waiting' }
  | { screen: 'reading' }
  | { screen: 'refused'; reason: Refusal }
  /** The tab shows another page by now than the one that was read. */
  | { screen: 'left' }
  | { screen: 'failed'; reason: Failure }
  /** A mistake of ours: `error` is for whoever looks into it. */
  | { screen: 'broken'; error: unknown }
  | { screen: 'packs-failed'; trouble: Trouble }
  /** The page shows no advert. */
  | { screen: 'no-listing' }
  /** The page shows many adverts. */
  | { screen: 'list' }
  /** No pack that is switched on speaks of such a thing. */
  | { screen: 'no-pack'; listing: Listing }
  | { screen: 'audit'; reading: ReadReading; listing: Listing; audit: Audit; lexicon: Lexicon };

/** What the panel shows for a session. Pure; an audit is made once for a reading and the packs that speak. */
export function screenOf(session: Session): Screen {
  const reading = currentReading(session);
  if (!reading) return { screen: 'waiting' };
  if (reading.state === 'reading' || reading.state === 'left') return { screen: reading.state };
  if (reading.state === 'refused') return { screen: 'refused', reason: reading.reason };
  if (reading.state === 'failed') return { screen: 'failed', reason: reading.reason };
  if (session.packs.state === 'failed') return { screen: 'packs-failed', trouble: session.packs.trouble };
  if (session.packs.state === 'loading') return { screen: 'reading' };
  return audited(reading, session.packs.knowledge);
}

const made = new WeakMap<ReadReading, { knowledge: Knowledge; screen: Screen }>();

function audited(reading: ReadReading, knowledge: Knowledge): Screen {
  const before = made.get(reading);
  if (before?.knowledge === knowledge) return before.screen;
  const screen = auditScreen(reading, knowledge);
  made.set(reading, { knowledge, screen });
  return screen;
}

function auditScreen(reading: ReadReading, knowledge: Knowledge): Screen {
  try {
    const listing = settle(reading.harvest, reading.harvest.url);
    const result = audit(listing, knowledge, { asOf: reading.asOf });
    if (result.kind === 'none') return { screen: 'no-listing' };
    if (result.kind === 'list') return { screen: 'list' };
    if (result.packs.length === 0) return { screen: 'no-pack', listing };
    return { screen: 'audit', reading, listing, audit: result, lexicon: lexiconOf(knowledge) };
  } catch (error) {
    return { screen: 'broken', error };
  }
}

/** Whether there is something to read behind the button: anything that doesn't hold, isn't shown, or is to be minded. */
export function hasSomething(screen: Screen): boolean {
  return screen.screen === 'audit' && screen.audit.findings.some(({ standing }) => standing !== 'agrees');
}
