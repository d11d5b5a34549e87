/** The id of the element that shows a finding, so that what speaks of it can lead there. */
export function findingAnchor(id: string): string {
  return `finding-${encodeURIComponent(id)}`;
}
