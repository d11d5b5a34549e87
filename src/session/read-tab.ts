import { harvestFrom } from './reading';
import type { Outcome, Readings } from './readings';
import { isViewed, refusalOf } from './refusal';
import type { Where } from './where';

/** What the tab's document says of itself before it is read. */
export interface Look extends Visit {
  contentType: string;
}

/** One document at one address; a page can change either without the other. */
export interface Visit {
  document: string;
  address: string;
}

/** What the browser can do in a tab that the user has pointed at. Both reject where it may not. */
export interface TabReach {
  look(tab: number): Promise<Look>;
  /** Runs the reader in that very document, and in no other; answers whatever it returned. */
  collect(tab: number, document: string): Promise<{ document: string; answer: unknown }>;
  /** Waits until that document has come to rest after a change of its own, at most some seconds. Never rejects. */
  settled(tab: number, document: string): Promise<void>;
  /** Whether the tab still shows that document at that address (anchors aside). Never rejects. */
  shows(tab: number, visit: Visit): Promise<boolean>;
  wait(milliseconds: number): Promise<void>;
}

/**
 * One press of the button: reads the tab and keeps what became of it. Never rejects for what a page does.
 * @param url the tab's address as far as the browser tells it
 * @param asOf today, ISO 8601
 */
export async function readTab(
  where: Where,
  url: string | undefined,
  asOf: string,
  reach: TabReach,
  readings: Readings,
): Promise<void> {
  const press = await readings.begin(where, asOf);
  await readings.finish(press, await outcomeOf(where.tab, url, reach));
}

/** What comes of reading a tab as it stands. */
export async function outcomeOf(tab: number, url: string | undefined, reach: TabReach): Promise<Outcome> {
  const look = await lookPatiently(tab, url, reach);
  if (!look) return { state: 'refused', reason: refusalOf(url) };
  if (isViewed(look.contentType)) return { state: 'refused', reason: 'document' };
  try {
    const { document, address } = look;
    const answered = await reach.collect(tab, document);
    if (answered.document !== document) return { state: 'left' };
    const harvest = harvestFrom(answered.answer);
    // A reader that could not even tell the address has failed; that is not the same as a page without an advert.
    return harvest && harvest.url !== ''
      ? { state: 'read', document, address, harvest }
      : { state: 'failed', reason: 'reader' };
  } catch {
    return (await reach.shows(tab, look)) ? { state: 'failed', reason: 'reader' } : { state: 'left' };
  }
}

/** Pauses before another look, in milliseconds. */
const PAUSES = [100, 300, 900];

/**
 * Right after a page has loaded the press's own grant can reach the page's process later than the question does (seen
 * in Chromium, about once in 25 presses), so an ordinary page that refuses is asked again. Null where none is let in.
 */
async function lookPatiently(tab: number, url: string | undefined, reach: TabReach): Promise<Look | null> {
  for (const pause of [0, ...PAUSES]) {
    if (pause > 0) await reach.wait(pause);
    try {
      return await reach.look(tab);
    } catch {
      if (refusalOf(url) !== 'blocked') return null;
    }
  }
  return null;
}
