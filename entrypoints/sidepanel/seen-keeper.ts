import type { SessionEvent } from '../../src/session/events';
import type { SeenActions } from '../../src/view/panel/Panel';
import { announce } from '../shared/follow-messages';
import { seenStore } from '../shared/seen-store';

/** What was seen of pages, in the session and in this browser's storage. */
export interface SeenKeeper extends SeenActions {
  /** Reads what was seen of a page before, once; told as "seenKept", whatever comes of it. */
  find(about: string): void;
  /** Reads it anew: it has changed in another window. */
  refresh(about: string): void;
}

/** @param isPrivate of a private window nothing is kept */
export function seenKeeper(emit: (event: SessionEvent) => void, isPrivate: boolean): SeenKeeper {
  const store = seenStore(isPrivate);
  const asked = new Set<string>();

  async function read(about: string): Promise<void> {
    emit({ type: 'seenKept', about, seen: await store.read(about) });
  }

  async function tellOthers(about: string, kept: Promise<boolean>): Promise<void> {
    if (await kept) announce({ type: 'seen-changed', about });
  }

  return {
    find(about) {
      if (asked.has(about)) return;
      asked.add(about);
      void read(about);
    },
    refresh: (about) => void (asked.has(about) && read(about)),
    saw(about, attribute, value) {
      emit({ type: 'saw', about, attribute, value });
      void tellOthers(about, store.put(about, attribute, value));
    },
    takeBack(about, attribute) {
      emit({ type: 'tookBack', about, attribute });
      void tellOthers(about, store.remove(about, attribute));
    },
  };
}
