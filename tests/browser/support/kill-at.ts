import { setTimeout as sleep } from 'node:timers/promises';
import type { Page } from 'playwright-core';
import type { Mortal } from './mortal-browser';

/** What of an operation there is after a kill: nothing, or all of it. */
export type Standing = 'before' | 'after';

/** Something that a user does, brought to where it can begin. */
export interface Ready {
  /** Presses what begins it; not waited for, so that the very first moments are among those that are met. */
  begin(): Promise<unknown>;
  /** Resolves as soon as the page shows that it's done. */
  shown(): Promise<unknown>;
  /** In the browser that was started again. @throws where neither the old nor the new stands there whole */
  look(bench: Page): Promise<Standing>;
}

export interface Operation {
  name: string;
  ready(bench: Page): Promise<Ready>;
}

export interface Met {
  before: number;
  after: number;
}

/** So many writes of the browser's storage one after the other are met; no operation of ours makes more that matter. */
const WRITES = 4;

/**
 * Kills the browser while operations are under way, one moment after another, and looks each time at what is there when it
 * is started again. Half of the moments are spread evenly over the time that the operation takes undisturbed; the others
 * are those at which the browser's storage has just written something, the first time, the second time and so on: between
 * two changes that should be one there are a few milliseconds, which no clock would meet.
 * @param points how many moments, the operations taking turns
 */
export async function killAt(mortal: Mortal, operations: readonly Operation[], points: number): Promise<Met> {
  const met = { before: 0, after: 0 };
  const told: string[] = [];
  const whole = new Map<string, number>();
  for (const operation of operations) whole.set(operation.name, await undisturbed(mortal, operation));
  const turns = Math.ceil(points / operations.length);
  try {
    for (let point = 0; point < points; point++) {
      const { name, ready } = operations[point % operations.length]!;
      const turn = Math.floor(point / operations.length);
      const { begin, look } = await ready(await mortal.bench());
      begin().catch(() => {});
      const moment = await reached(mortal, turn, turns, whole.get(name)!);
      await mortal.kill();
      const standing = await look(await mortal.bench());
      met[standing] += 1;
      told.push(`${name}, ${moment}: ${standing}`);
      await mortal.kill();
    }
  } finally {
    // Where it fails, what came before is all that tells why.
    console.log(told.join('\n'));
  }
  return met;
}

/** Waits for a moment. @param whole milliseconds that the operation takes undisturbed */
async function reached(mortal: Mortal, turn: number, turns: number, whole: number): Promise<string> {
  if (turn % 2 === 1) return `${await mortal.written((((turn - 1) / 2) % WRITES) + 1, 2 * whole)} writes`;
  const moment = (whole * turn) / turns;
  await sleep(moment);
  return `${Math.round(moment)} ms`;
}

async function undisturbed(mortal: Mortal, { name, ready }: Operation): Promise<number> {
  const { begin, shown, look } = await ready(await mortal.bench());
  const begun = performance.now();
  await begin();
  await shown();
  const whole = performance.now() - begun;
  await mortal.kill();
  if ((await look(await mortal.bench())) !== 'after') throw new Error(`${name}: shown as done, and not kept`);
  await mortal.kill();
  return whole;
}
