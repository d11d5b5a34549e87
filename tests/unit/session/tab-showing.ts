import type { TabReach } from '../../../src/session/read-tab';
import { sampleHarvest } from './sample-harvest';

export const where = { window: 1, tab: 7 };
export const url = 'https://market.example/advert';

/** A tab that shows one document at one address. */
export function tabShowing(change: Partial<TabReach> = {}): TabReach {
  return {
    look: async () => ({ document: 'D1', address: url, contentType: 'text/html' }),
    collect: async (_tab, document) => ({ document, answer: sampleHarvest() }),
    settled: async () => {},
    shows: async () => true,
    wait: async () => {},
    ...change,
  };
}
