/** More of an address than this is not kept: pages make addresses of any length. */
const LONGEST = 4_000;

/** An address without its anchor, which a page changes while it stays the same page. */
export function pageAddress(url: string): string {
  const anchor = url.indexOf('#');
  return (anchor < 0 ? url : url.slice(0, anchor)).slice(0, LONGEST);
}
