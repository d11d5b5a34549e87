/** The anchor that opens a page's viewing sheet in the workbench. @param about the page's address */
export function sheetLink(about: string): string {
  return `#sheets?${new URLSearchParams({ about })}`;
}

/** The page whose sheet such an anchor names, or null for any other anchor. */
export function sheetInLink(anchor: string): string | null {
  const at = anchor.indexOf('?');
  if (at < 0 || anchor.slice(0, at) !== '#sheets') return null;
  const about = new URLSearchParams(anchor.slice(at + 1)).get('about');
  return about === null || about === '' || about.length > 4_000 ? null : about;
}
