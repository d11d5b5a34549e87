import { describe, expect, it } from 'vitest';
import type { SessionEvent } from '../../../src/session/events';
import type { Reading } from '../../../src/session/reading';
import { currentReading, emptySession, type Session, step } from '../../../src/session/reducer';
import { screenOf } from '../../../src/session/screen';
import { wantedAudit, wantedSeen } from '../../../src/session/wanted';
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

  it('takes what became of the packs', () => {
    expect(sessionAfter({ type: 'packsReady', stamp: 3 }).packs).toEqual({ state: 'ready', stamp: 3 });
    expect(sessionAfter({ type: 'packsFailed', trouble: 'denied' }).packs).toEqual({
      state: 'failed',
      trouble: 'denied',
    });
  });
});

describe('answers of the engine', () => {
  const choose: SessionEvent = { type: 'tabChosen', where: here };
  const answerTo = (number: number, stamp: number, problem = ''): SessionEvent => ({
    type: 'answered',
    wanted: { ...here, number, stamp, turn: 1 },
    answer: { ok: false, problem },
  });
  const ready = (stamp: number): SessionEvent => ({ type: 'packsReady', stamp });

  const found: Extract<SessionEvent, { type: 'seenKept' }> = {
    type: 'seenKept',
    about: read.address,
    seen: new Map([['p/bobbin', 'long']]),
  };

  it('are wanted once there are a reading, packs and what was seen before', () => {
    expect(wantedAudit(sessionAfter(choose, found, tell(read)))).toBeNull();
    expect(wantedAudit(sessionAfter(choose, found, ready(1), tell(reading)))).toBeNull();
    expect(wantedAudit(sessionAfter(choose, ready(1), tell(read)))).toBeNull();
    const session = sessionAfter(choose, ready(1), tell(read), found);
    const wanted = { ...here, number: 1, stamp: 1, turn: 1 };
    expect(wantedAudit(session)).toEqual({ wanted, reading: read, seen: found.seen });
    expect(screenOf(session).screen).toBe('reading');
  });

  it('are wanted again when packs have changed, and the earlier one stays meanwhile', () => {
    const session = sessionAfter(choose, found, ready(1), tell(read), answerTo(1, 1));
    expect(wantedAudit(session)).toBeNull();
    const changed = step(session, ready(2));
    expect(wantedAudit(changed)?.wanted.stamp).toBe(2);
    expect(screenOf(changed).screen).toBe('broken');
  });

  it('count only for the press that they answer', () => {
    const second: Reading = { ...read, number: 2 };
    for (const events of [
      [tell(second), answerTo(1, 1)],
      [tell(read), answerTo(1, 1), tell(second)],
    ]) {
      const session = sessionAfter(choose, found, ready(1), ...events);
      expect(screenOf(session).screen).toBe('reading');
      expect(wantedAudit(session)?.wanted.number).toBe(2);
    }
  });

  it('never replace one to newer packs', () => {
    const session = sessionAfter(choose, ready(2), tell(read), answerTo(1, 2, 'new'), answerTo(1, 1, 'old'));
    expect(screenOf(session)).toEqual({ screen: 'broken', problem: 'new' });
  });

  it('are forgotten with their tab and when the page is left', () => {
    const session = sessionAfter(choose, ready(1), tell(read), answerTo(1, 1));
    expect(screenOf(step(session, tell(left))).screen).toBe('left');
    expect(step(session, { type: 'forgotten', where: here }).answers.size).toBe(0);
  });

  it('say nothing while the packs can’t be read', () => {
    const session = sessionAfter(choose, ready(1), tell(read), answerTo(1, 1), {
      type: 'packsFailed',
      trouble: 'full',
    });
    expect(screenOf(session)).toEqual({ screen: 'packs-failed', trouble: 'full' });
  });
});

describe('what was seen', () => {
  const choose: SessionEvent = { type: 'tabChosen', where: here };
  const about = read.address;
  const kept: SessionEvent = { type: 'seenKept', about, seen: new Map() };
  const saw = (value: string | null, attribute = 'p/bobbin'): SessionEvent => ({
    type: 'saw',
    about,
    attribute,
    value,
  });
  const tookBack: SessionEvent = { type: 'tookBack', about, attribute: 'p/bobbin' };
  const answer: SessionEvent = {
    type: 'answered',
    wanted: { ...here, number: 1, stamp: 1, turn: 1 },
    answer: { ok: false, problem: 'first' },
  };
  const shown = sessionAfter(choose, { type: 'packsReady', stamp: 1 }, tell(read), kept, answer);

  it('is asked for once a page has been read', () => {
    expect(wantedSeen(sessionAfter(choose, tell(reading)))).toBeNull();
    const session = sessionAfter(choose, tell(read));
    expect(wantedSeen(session)).toBe(about);
    expect(wantedSeen(step(session, kept))).toBeNull();
  });

  it('makes an audit wanted again, and the earlier one stays meanwhile', () => {
    expect(wantedAudit(shown)).toBeNull();
    const session = step(shown, saw('long'));
    expect(wantedAudit(session)?.seen).toEqual(new Map([['p/bobbin', 'long']]));
    expect(wantedAudit(session)?.wanted.turn).toBe(2);
    expect(screenOf(session).screen).toBe('broken');
  });

  it('is replaced by what is said again of the same thing, and taken back', () => {
    const session = [saw('long'), saw(null, 'p/shank'), saw('round')].reduce(step, shown);
    expect([...(wantedAudit(session)?.seen ?? [])]).toEqual([
      ['p/shank', null],
      ['p/bobbin', 'round'],
    ]);
    expect(wantedAudit(step(session, tookBack))?.seen).toEqual(new Map([['p/shank', null]]));
  });

  it('changes nothing where it says what is known already, or takes back what was never said', () => {
    expect(step(shown, tookBack)).toBe(shown);
    const session = step(shown, saw('long'));
    expect(step(session, saw('long'))).toBe(session);
    expect(step(session, { type: 'seenKept', about, seen: new Map([['p/bobbin', 'long']]) })).toBe(session);
  });

  it('is never followed by an answer to less of it', () => {
    const later: SessionEvent = {
      type: 'answered',
      wanted: { ...here, number: 1, stamp: 1, turn: 2 },
      answer: { ok: false, problem: 'second' },
    };
    const session = [saw('long'), later, answer].reduce(step, shown);
    expect(screenOf(session)).toEqual({ screen: 'broken', problem: 'second' });
  });

  it('belongs to one page', () => {
    const session = [saw('long'), tell({ ...read, number: 2, address: 'https://a.example/other' })].reduce(step, shown);
    expect(wantedSeen(session)).toBe('https://a.example/other');
  });
});
