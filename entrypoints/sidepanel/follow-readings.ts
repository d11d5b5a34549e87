import { browser } from 'wxt/browser';
import type { SessionEvent } from '../../src/session/events';
import { readingFrom } from '../../src/session/reading';
import { whereOf } from '../../src/session/where';

/** Tells what stands in session storage for this window, now and whenever the worker writes there. */
export async function followReadings(windowId: number, emit: (event: SessionEvent) => void): Promise<void> {
  const tell = (key: string, value: unknown) => {
    const where = whereOf(key);
    if (where?.window !== windowId) return;
    const reading = readingFrom(value);
    emit(reading ? { type: 'reading', reading } : { type: 'forgotten', where });
  };
  browser.storage.session.onChanged.addListener((changes) => {
    for (const [key, { newValue }] of Object.entries(changes)) tell(key, newValue);
  });
  for (const [key, value] of Object.entries(await browser.storage.session.get(null))) tell(key, value);
}
