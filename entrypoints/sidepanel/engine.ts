import type { PanelAnswer } from '../../src/session/engine-messages';
import type { Wanted } from '../../src/session/events';
import type { ReadReading } from '../../src/session/reading';
import type { Seen } from '../../src/session/seen';
import { type EngineThread, startThread } from '../shared/engine-thread';

export interface Engine {
  /** Asks for an audit; one that is already asked for is not asked for again. */
  audit(wanted: Wanted, reading: ReadReading, seen: Seen): void;
  packsChanged(): void;
}

/** How long an audit is waited for, in milliseconds: it takes a few of them, so that a thread this silent is gone. */
const PATIENCE = 20_000;

/** How many threads may end before they say anything, until the panel says that it can't go on. */
const MUTE = 3;

/**
 * Starts the engine in a thread of its own. A browser that runs out of memory may end it: then another one is started,
 * which is asked anew. Where that ends over the same audit too, the panel is told that this one can't be made.
 */
export function startEngine(emit: (event: PanelAnswer) => void): Engine {
  let asked = '';
  /** What has not been answered yet; and over which audit a thread has ended, once and again. */
  let open: Wanted | null = null;
  let endedOver = '';
  let givenUp = '';
  let timer: ReturnType<typeof setTimeout> | undefined;
  /** Threads count how often they read the packs; the panel goes on counting from one thread to the next. */
  let stamp = 0;
  /** How many in a row have ended without a word. */
  let mute = 0;
  let thread = begin();

  function begin(): EngineThread {
    const from = stamp;
    const started = startThread(
      (message) => {
        mute = 0;
        // What the workbench alone asks is never answered to a panel.
        if (message.type === 'reply' || message.type === 'installing' || message.type === 'looking') return;
        if (message.type === 'answered') rest();
        if (message.type !== 'packsReady') return emit(message);
        stamp = from + message.stamp;
        emit({ ...message, stamp });
      },
      () => started === thread && again(),
    );
    started.send({ type: 'packsChanged' });
    return started;
  }

  function rest(): void {
    clearTimeout(timer);
    open = null;
  }

  /** The thread has ended. Once the next one has read the packs, the session wants its audit again by itself. */
  function again(): void {
    thread.end();
    mute += 1;
    // What can't even begin would end as often as it is started.
    if (mute > MUTE) {
      emit({ type: 'packsFailed', trouble: 'failed' });
      return;
    }
    const about = open ? pressOf(open) : '';
    if (about !== '' && about === endedOver) givenUp = about;
    endedOver = about;
    rest();
    thread = begin();
  }

  return {
    audit(wanted, { harvest, asOf }, seen) {
      const text = JSON.stringify(wanted);
      if (text === asked) return;
      asked = text;
      rest();
      if (pressOf(wanted) === givenUp) return emit({ type: 'answered', wanted, answer: ENDED });
      open = wanted;
      timer = setTimeout(again, PATIENCE);
      thread.send({ type: 'audit', wanted, harvest, asOf, seen });
    },
    packsChanged: () => thread.send({ type: 'packsChanged' }),
  };
}

const ENDED = { ok: false, problem: 'the engine’s thread ended twice over it' } as const;

/** An audit but for the packs: it is asked for anew after each reading of them. */
const pressOf = ({ window, tab, number, turn }: Wanted) => JSON.stringify([window, tab, number, turn]);
