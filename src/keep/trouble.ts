/**
 * Why something could not be kept. full: the browser's space is used up; denied: no storage here, as in some private
 * windows; blocked: another of our pages holds an older version open; newer: a later version of the program wrote it;
 * failed: anything else.
 */
export type Trouble = 'full' | 'denied' | 'blocked' | 'newer' | 'failed';

export type Kept<T> = { ok: true; value: T } | { ok: false; trouble: Trouble };

/** The browser's exception as one of ours. Names are those of the Indexed Database API 3.0 and DOM exceptions. */
export function troubleOf(error: unknown): Trouble {
  const name = typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : '';
  switch (name) {
    case 'QuotaExceededError':
      return 'full';
    case 'SecurityError':
    case 'InvalidStateError':
      return 'denied';
    case 'VersionError':
      return 'newer';
    case 'BlockedError':
      return 'blocked';
    default:
      return 'failed';
  }
}
