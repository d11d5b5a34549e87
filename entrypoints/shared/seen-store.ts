import { putAnswer, readAnswers, removeAnswer } from '../../src/keep/answers';
import { takingTurns } from '../../src/session/in-turn';
import { keptSeen, seenFrom } from '../../src/session/kept-seen';
import { NOTHING_SEEN, type Seen, type SeenValue } from '../../src/session/seen';
import { withKeep } from './keep';

/**
 * What was seen of listings, as this browser keeps it. A trouble of storage is not told: answers count while the page
 * is open, and no audit needs storage.
 */
export interface SeenStore {
  /** @param about the address of a page, or the id of a draft */
  read(about: string): Promise<Seen>;
  /** Both answer whether it is kept now. */
  put(about: string, attribute: string, value: SeenValue): Promise<boolean>;
  remove(about: string, attribute: string): Promise<boolean>;
}

/** @param isPrivate of a private window nothing is kept, and nothing is looked up */
export function seenStore(isPrivate: boolean): SeenStore {
  // What is read is what the changes before it have left.
  const inTurn = takingTurns();

  return {
    read: (about) =>
      inTurn(async () => {
        const kept = isPrivate ? null : await withKeep((db) => readAnswers(db, about));
        return kept?.ok ? seenFrom(kept.value) : NOTHING_SEEN;
      }),
    put(about, attribute, value) {
      const answer = keptSeen(about, attribute, value, new Date().toISOString());
      return inTurn(async () => !isPrivate && (await withKeep((db) => putAnswer(db, answer))).ok);
    },
    remove: (about, attribute) =>
      inTurn(async () => !isPrivate && (await withKeep((db) => removeAnswer(db, about, attribute))).ok),
  };
}
