/** What is remembered beside the storage: its mark, and the day (YYYY-MM-DD) on which it was found begun anew, until it has been read. */
export interface StorageSeen {
  mark: string;
  lost: string | null;
}

/**
 * What is to be remembered once the mark of the storage is known.
 * @param before what was remembered, whatever that may be: it comes from the browser
 */
export function storageSeen(before: unknown, mark: string, today: string): StorageSeen {
  const known = isSeen(before) ? before : { mark, lost: null };
  return known.mark === mark ? known : { mark, lost: today };
}

function isSeen(value: unknown): value is StorageSeen {
  const { mark, lost } = (value ?? {}) as Partial<StorageSeen>;
  return typeof mark === 'string' && (lost === null || typeof lost === 'string');
}
