import { browser } from 'wxt/browser';
import { LOOK_EVERY } from '../../src/sharing/subscribe/schedule';

const NAME = 'packs';

/**
 * From now on the background looks every few hours at which packs are due to be checked. The browser keeps the alarm
 * while the background sleeps; what is due stands in storage, so that an alarm that is missed or comes twice is no harm.
 */
export async function setCheckAlarm(): Promise<void> {
  if (await browser.alarms.get(NAME)) return;
  await browser.alarms.create(NAME, { periodInMinutes: LOOK_EVERY });
}

/** Nothing is followed any more: nobody need be woken. */
export async function clearCheckAlarm(): Promise<void> {
  await browser.alarms.clear(NAME);
}

export function onCheckAlarm(tell: () => void): void {
  browser.alarms.onAlarm.addListener(({ name }) => {
    if (name === NAME) tell();
  });
}
