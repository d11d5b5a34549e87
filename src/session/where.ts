/** A tab in a window: what a reading is kept under. */
export interface Where {
  window: number;
  tab: number;
}

const PREFIX = 'reading/';

/** The key under which a tab's reading is kept in the browser's session storage. */
export function keyOf(where: Where): string {
  return `${PREFIX}${where.window}/${where.tab}`;
}

/** The tab that a key speaks of, or null where the key is not one of ours. */
export function whereOf(key: string): Where | null {
  const match = /^reading\/(\d{1,10})\/(\d{1,10})$/.exec(key);
  return match ? { window: Number(match[1]), tab: Number(match[2]) } : null;
}

export function samePlace(a: Where, b: Where): boolean {
  return a.window === b.window && a.tab === b.tab;
}
