import { change, look } from './change';
import type { Database } from './open';
import type { KeptAnswer } from './schema';
import type { Kept } from './trouble';

/** What was seen of one listing, in no order. @param about the address of the page, or the id of the draft */
export function readAnswers(db: Database, about: string): Promise<Kept<KeptAnswer[]>> {
  return look(db, ['answers'], (transaction) => transaction.objectStore('answers').index('about').getAll(about));
}

/** Keeps an answer; the one about the same attribute of the same listing is replaced. */
export function putAnswer(db: Database, answer: KeptAnswer): Promise<Kept<void>> {
  return change(db, ['answers'], async (transaction) => {
    await transaction.objectStore('answers').put(answer);
  });
}

export function removeAnswer(db: Database, about: string, attribute: string): Promise<Kept<void>> {
  return change(db, ['answers'], (transaction) => transaction.objectStore('answers').delete([about, attribute]));
}
