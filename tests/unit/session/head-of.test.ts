import { describe, expect, it } from 'vitest';
import { headOf } from '../../../src/session/head-of';

describe('what a text says first', () => {
  it.each([
    ['Cast iron is heavy: lift it with both hands.', 'Cast iron is heavy', 'Lift it with both hands.'],
    ['Money sent ahead is often gone. Pay on seeing.', 'Money sent ahead is often gone.', 'Pay on seeing.'],
    ['Meet in a public place, and pay on seeing it.', 'Meet in a public place, and pay on seeing it.', ''],
    ['About 1.5 kg: too short a head is none; so is this.', 'About 1.5 kg', 'Too short a head is none; so is this.'],
    ['Mind: old wiring can kill. Ask first.', 'Mind: old wiring can kill.', 'Ask first.'],
    ['', '', ''],
  ])('%s', (text, head, rest) => {
    expect(headOf(text)).toEqual({ head, rest });
  });
});
