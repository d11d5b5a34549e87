import { describe, expect, it } from 'vitest';
import { compile } from '../../../src/pack/compile';
import type { SessionEvent } from '../../../src/session/events';
import type { Reading } from '../../../src/session/reading';
import { currentReading, emptySession, type Session, step } from '../../../src/session/reducer';
import { sampleHarvest } from './sample-harvest';

const here = { window: 1, tab: 7 };
const there = { window: 1, tab: 8 };
const head = { ...here, number: 1, asOf: '2026-06-01' };
const reading: Reading = { ...head, state: 'reading' };
const read: Reading = {
  ...head,
  state: 'read',
  document: 'D1',
  address: 'https://a.example/',
  harvest: sampleHarvest(),
};
const left: Reading = { ...head, state: 'left' };

const tell = (report: Reading): SessionEvent => ({ type: 'reading', reading: report });
const sessionAfter = (...events: SessionEvent[]): Session => events.reduce(step, emptySession);

describe('the session of one window', () => {
  it('shows the reading of the tab in front', () => {
    const session = sessionAfter(tell(read), { type: 'tabChosen', where: here });
    expect(currentReading(session)).toBe(read);
    expect(currentReading(step(session, { type: 'tabChosen', where: there }))).toBeNull();
  });

  it('comes to the same whatever the order of reports', () => {
    const choose: SessionEvent = { type: 'tabChosen', where: here };
    for (const events of [
      [choose, tell(reading), tell(read), tell(left)],
      [tell(left), tell(read), choose, tell(reading)],
      [tell(read), choose, tell(left), tell(reading)],
    ])
      expect(currentReading(sessionAfter(...events))?.state).toBe('left');
  });

  it('drops reports of an earlier press', () => {
    const second: Reading = { ...head, number: 2, state: 'reading' };
    const session = sessionAfter({ type: 'tabChosen', where: here }, tell(second), tell(read), tell(left));
    expect(currentReading(session)).toBe(second);
  });

  it('begins anew with the next press', () => {
    const second: Reading = { ...head, number: 2, state: 'reading' };
    expect(currentReading(sessionAfter({ type: 'tabChosen', where: here }, tell(left), tell(second)))).toBe(second);
  });

  it('keeps the same object where a report changes nothing', () => {
    const session = sessionAfter(tell(read));
    expect(step(session, tell(reading))).toBe(session);
    expect(step(session, { type: 'forgotten', where: there })).toBe(session);
  });

  it('forgets a closed tab, and takes a first press there again', () => {
    const session = sessionAfter({ type: 'tabChosen', where: here }, tell({ ...read, number: 5 }), {
      type: 'forgotten',
      where: here,
    });
    expect(currentReading(session)).toBeNull();
    expect(currentReading(step(session, tell(reading)))).toBe(reading);
  });

  it('takes what the packs know, and their trouble', () => {
    const knowledge = compile([]);
    expect(sessionAfter({ type: 'packsChanged', knowledge }).packs).toEqual({ state: 'ready', knowledge });
    expect(sessionAfter({ type: 'packsFailed', trouble: 'denied' }).packs).toEqual({
      state: 'failed',
      trouble: 'denied',
    });
  });
});
