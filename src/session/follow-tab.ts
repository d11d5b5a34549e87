import { outcomeOf, type TabReach } from './read-tab';
import type { ReadReading } from './reading';
import type { Readings } from './readings';
import type { Where } from './where';

/** A page that has changed its address this often while it was read doesn't keep still; a press of the button may. */
const ROUNDS = 5;

/**
 * Something has happened in a tab: is what was read still what it shows? A document that has taken another address of
 * its own site, as single-page sites do, is read anew once it has come to rest: the press that let us in still lets us
 * in. Whatever else the tab shows now is another page, which nobody has asked us to read: the reading ends there.
 * @param asOf today, ISO 8601
 * @param onChange is told before anything that was read gives way
 */
export async function followTab(
  where: Where,
  asOf: string,
  reach: TabReach,
  readings: Readings,
  onChange: () => Promise<void>,
): Promise<void> {
  for (let round = 0; ; round += 1) {
    const reading = await readings.get(where);
    if (!reading || reading.state === 'reading' || reading.state === 'left') return;
    if (reading.state === 'read' && (await reach.shows(where.tab, reading))) return;
    await onChange();
    const address = round < ROUNDS && reading.state === 'read' ? await movedTo(reading, reach) : null;
    const press = address === null ? null : await readings.again(reading, asOf);
    if (address === null || !press) {
      await readings.leave(reading);
      return;
    }
    await reach.settled(where.tab, (reading as ReadReading).document);
    await readings.finish(press, await outcomeOf(where.tab, address, reach));
  }
}

/** The new address of the document that was read, where it is still there and on its own site; else null. */
async function movedTo(reading: ReadReading, reach: TabReach): Promise<string | null> {
  try {
    const { document, address } = await reach.look(reading.tab);
    return document === reading.document && originOf(address) === originOf(reading.address) ? address : null;
  } catch {
    return null;
  }
}

function originOf(address: string): string {
  return URL.canParse(address) ? new URL(address).origin : address;
}

/**
 * A worker has just begun: readings that were under way when the one before was killed are brought to their end.
 * @param urlOf a tab's address as far as the browser tells it
 */
export async function resumeReadings(
  urlOf: (tab: number) => Promise<string | undefined>,
  reach: TabReach,
  readings: Readings,
): Promise<void> {
  for (const press of await readings.underWay())
    await readings.finish(press, await outcomeOf(press.tab, await urlOf(press.tab), reach));
}
