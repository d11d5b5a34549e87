import { change } from './change';
import type { Database } from './open';
import type { Kept } from './trouble';

/**
 * The mark of the storage as it is. It is made once and lies in the storage itself, so that another one tells whoever
 * remembers the first that all was begun anew meanwhile.
 * @param fresh the mark, where there is none yet
 */
export function storageMark(db: Database, fresh: string): Promise<Kept<string>> {
  return change(db, ['marks'], async (transaction) => {
    const marks = transaction.objectStore('marks');
    const there = await marks.get('storage');
    if (!there) await marks.put({ id: 'storage', mark: fresh });
    return there?.mark ?? fresh;
  });
}
