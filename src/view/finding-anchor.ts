/** The id of the element that shows a finding, so that what speaks of it can lead there. */
export function findingAnchor(id: string): string {
  return `finding-${encodeURIComponent(id)}`;
}

/** Leads to the element that shows a finding, unfolding what it may be folded in. */
export function goToFinding(id: string): void {
  const element = document.getElementById(findingAnchor(id));
  for (let at = element?.closest('details'); at; at = at.parentElement?.closest('details')) at.open = true;
  element?.focus();
}
