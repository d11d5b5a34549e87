import { describe, expect, it } from 'vitest';
import { seenWords, usableSeen } from '../../../src/session/seen-words';
import { sureWords } from '../../../src/session/sureness';
import { demo } from '../audit/support/demo';

describe('how sure it is, in words', () => {
  it('says on what it rests where that is the number alone', () => {
    expect(sureWords({ probability: 0.995, restsOn: null })).toBe('This is virtually certain.');
    expect(sureWords({ probability: 0.995, restsOn: 'serial' })).toMatch(
      /^By its number this is virtually certain, if the number is read rightly and the plate is its own\./,
    );
  });
});

describe('the number on the machine, as something seen', () => {
  const seen = (value: string | boolean | null) => new Map([['serial', value]]);
  it('is taken as it reads, and told in words', () => {
    expect(usableSeen(seen('KD318472'), demo)).toEqual({ serial: 'KD318472' });
    expect(seenWords(seen('KD318472'), demo)).toMatchObject([{ name: 'the number on the machine', text: 'KD318472' }]);
    expect(seenWords(seen('other'), demo)[0]?.text).toBe('It reads otherwise, or isn’t there');
  });
  it.each([[true], ['1'.repeat(41)]])('nothing else is: %s', (value) =>
    expect(usableSeen(seen(value), demo)).toEqual({}),
  );
});
