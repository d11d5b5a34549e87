import { describe, expect, it } from 'vitest';
import type { Audit } from '../../../src/audit/types';
import { followsText, likelyText, settleText } from '../../../src/cli/likely-text';

const audit = (over: Partial<Audit> = {}) =>
  ({
    likely: [
      {
        ...{ model: 'p/m', label: 'Model M', kind: 'model', probability: 0.998 },
        for: [{ text: 'You saw: frame: iron.', bits: 4.2 }],
        against: [{ text: 'The advert denies it.', bits: -1.3 }],
        follows: [{ attribute: 'p/frame', name: 'frame', text: 'iron', usually: true, source: null }],
      },
    ],
    nextEvidence: [
      {
        ...{ attribute: 'p/frame', name: 'frame', bits: 0.5, effort: 'photo', ask: 'Does a magnet stick?' },
        ...{ where: 'The arm.', see: null, place: null },
        options: [{ value: 'iron', text: 'cast iron', explain: null }],
      },
    ],
    ...over,
  }) as Audit;

describe('what it most likely is, for a terminal', () => {
  it('with what speaks for it and against it, and how much', () => {
    const text = likelyText(audit(), 80).join('\n');
    expect(text).toMatch(/^ *>99 % {2}Model M$/m);
    expect(text).toMatch(/for it: +You saw: frame: iron\. \(4\.2 bits\)/);
    expect(text).toMatch(/against it: +The advert denies it\. \(1\.3 bits\)/);
  });
  it('what is known of it, and what would settle it', () => {
    expect(followsText(audit().likely[0], 80).at(-1)).toBe('frame  usually iron');
    const settle = settleText(audit(), 80).join('\n');
    expect(settle).toContain('frame, to see on a photo [frame; 0.50 bits]');
    expect(settle).toMatch(/answers: +iron \(cast iron\)/);
    expect(settleText(audit(), 80, true).join('\n')).not.toContain('photo');
  });
  it('says so where nothing is left to look at, and nothing where nothing is known', () => {
    expect(settleText(audit({ nextEvidence: [] }), 80).at(-1)).toMatch(/No further look would change this/);
    expect(settleText(audit({ likely: [] }), 80)).toEqual([]);
    expect(likelyText(audit({ likely: [] }), 80)).toEqual([]);
  });
  it('no line is wider than the page', () => {
    const long = audit();
    long.likely[0]!.label = 'A very long name '.repeat(20);
    for (const line of [...likelyText(long, 72), ...settleText(long, 72), ...followsText(long.likely[0], 72).slice(2)])
      expect(line.length).toBeLessThanOrEqual(72);
  });
});
