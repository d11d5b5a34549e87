/** Whether what a call failed with says that the program of this page is no longer there, in the browsers' own words. */
export function saysOutdated(reason: unknown): boolean {
  return /context invalidated/i.test(reason instanceof Error ? reason.message : String(reason));
}
