import { headingLabel } from './heading-labels';
import { type Reading, sizeOf } from './reading';

/** A panel of a row of tabs (WAI-ARIA roles tab, tablist, tabpanel), and what its tab says. */
export interface Tab {
  label: string;
  /** The panel's lines, end exclusive. */
  from: number;
  to: number;
}

/** Panels with their tabs, told by their order. A page that shows one panel alone shows that of the first tab. */
function tabsOf({ lines, boxes }: Reading): Tab[] {
  const list = boxes.find((box) => /\btablist\b/.test(box.hint) && sizeOf(box) > 0);
  if (!list) return [];
  const labels = lines.slice(list.from, list.to).map(({ text }) => text);
  const panels = boxes.filter((box) => /\btabpanel\b/.test(box.hint) && sizeOf(box) > 0).slice(0, labels.length);
  return panels.map(({ from, to }, index) => ({ label: labels[index]!, from, to }));
}

/** Panels of the seller's own words, and panels of something else ("Shipping", "Reviews"). */
export function tabKinds(reading: Reading): { description: Tab[]; other: Tab[] } {
  const tabs = tabsOf(reading);
  return {
    description: tabs.filter(({ label }) => headingLabel(label) === 'description'),
    other: tabs.filter(({ label }) => ['section', 'away'].includes(headingLabel(label) ?? '')),
  };
}
