import type { Harvest } from '../listing/types';
import type { SessionEvent, Wanted } from './events';

/** What the panel tells the thread in which its engine runs. */
export type ToEngine = { type: 'packsChanged' } | { type: 'audit'; wanted: Wanted; harvest: Harvest; asOf: string };

/** What that thread tells the panel: events of the session as they are. */
export type FromEngine = Extract<SessionEvent, { type: 'packsReady' | 'packsFailed' | 'answered' }>;
