import type { PanelAnswer } from '../../src/session/engine-messages';
import type { Wanted } from '../../src/session/events';
import type { ReadReading } from '../../src/session/reading';
import type { Seen } from '../../src/session/seen';
import { startThread } from '../shared/engine-thread';

export interface Engine {
  /** Asks for an audit; one that is already asked for is not asked for again. */
  audit(wanted: Wanted, reading: ReadReading, seen: Seen): void;
  packsChanged(): void;
}

/** Starts the engine in a thread of its own. */
export function startEngine(emit: (event: PanelAnswer) => void): Engine {
  // What the workbench alone asks is never answered to a panel.
  const { send } = startThread((message) => message.type !== 'reply' && message.type !== 'installing' && emit(message));
  let last = '';
  send({ type: 'packsChanged' });
  return {
    audit(wanted, { harvest, asOf }, seen) {
      const asked = JSON.stringify(wanted);
      if (asked === last) return;
      last = asked;
      send({ type: 'audit', wanted, harvest, asOf, seen });
    },
    packsChanged: () => send({ type: 'packsChanged' }),
  };
}
