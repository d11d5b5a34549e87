import { describe, expect, it } from 'vitest';
import {
  describedMachine,
  hasBegun,
  type MachineEvent,
  NOTHING_ASKED,
  stepMachine,
} from '../../../src/session/machine-asked';

const saidAfter = (...events: MachineEvent[]) => events.reduce(stepMachine, NOTHING_ASKED);
const saw: MachineEvent = { type: 'saw', attribute: 'p/bobbin', value: 'long' };

describe('what is said of a machine before somebody', () => {
  it('adds up, answer by answer, and is taken back', () => {
    const both = saidAfter(saw, { type: 'saw', attribute: 'p/shank', value: null });
    expect([...both.seen]).toEqual([
      ['p/bobbin', 'long'],
      ['p/shank', null],
    ]);
    const back = stepMachine(both, { type: 'tookBack', attribute: 'p/bobbin' });
    expect([...back.seen]).toEqual([['p/shank', null]]);
    expect(stepMachine(back, { type: 'tookBack', attribute: 'p/bobbin' })).toBe(back);
  });

  it('is forgotten with another thing, but the number stays', () => {
    const asked = saidAfter({ type: 'thingChosen', thing: 'a' }, saw, { type: 'numberAsked', serial: '12', name: 'N' });
    expect(stepMachine(asked, { type: 'thingChosen', thing: 'a' })).toBe(asked);
    const other = stepMachine(asked, { type: 'thingChosen', thing: 'b' });
    expect(other).toEqual({ thing: 'b', seen: new Map(), serial: '12', name: 'N', text: '' });
  });

  it('begins again with the same thing', () => {
    const asked = saidAfter({ type: 'thingChosen', thing: 'a' }, saw, { type: 'numberAsked', serial: '12', name: 'N' });
    expect(hasBegun(asked)).toBe(true);
    expect(hasBegun(stepMachine(asked, { type: 'startedAgain' }))).toBe(false);
    expect(stepMachine(asked, { type: 'startedAgain' })).toEqual({ ...NOTHING_ASKED, thing: 'a' });
  });

  it('is described with its number where there is one', () => {
    expect(describedMachine(saidAfter(saw), 'sewing machine')).toEqual({ what: 'sewing machine' });
    const numbered = saidAfter({ type: 'numberAsked', serial: ' 12 ', name: ' N ' });
    expect(describedMachine(numbered, 'sewing machine')).toEqual({
      what: 'sewing machine',
      serial: '12',
      text: 'N',
    });
  });

  it('keeps somebody’s words apart from what can be read on it', () => {
    const told = saidAfter({ type: 'numberAsked', serial: '', name: 'N' }, { type: 'textTaken', text: ' Rare. ' });
    expect(hasBegun(told)).toBe(true);
    expect(describedMachine(told, 'sewing machine')).toEqual({ what: 'sewing machine', text: 'N', said: 'Rare.' });
    expect(stepMachine(told, { type: 'textTaken', text: ' Rare. ' })).toBe(told);
    expect(stepMachine(told, { type: 'startedAgain' }).text).toBe('');
  });
});
