import { describe, expect, it } from 'vitest';
import { UNKNOWN_CONDITION } from '../../../src/identify/assumptions';
import { conditionShare } from '../../../src/identify/condition-share';
import type { FactKnown } from '../../../src/pack/knowledge';
import type { When } from '../../../src/pack/schema/models';
import { demo } from '../audit/support/demo';

/** Made 1949 to 1962 at Brindfold. */
const cressiter = demo.models.get('grindlewade-circle/cressiter')!;
const quarrendle = demo.models.get('grindlewade-circle/quarrendle')!;
const share = (when: When | null, model = cressiter, serial: string | null = null) => {
  const fact = { when, pack: 'grindlewade-circle' } as FactKnown;
  const run = serial === null ? undefined : demo.serials.find(serial)[0];
  const number = run && demo.serials.schemesOf(serial!).find(({ scheme }) => scheme.id === run.scheme.id)!.number;
  return conditionShare(fact, model, run ? { run, number: number! } : null);
};

describe('how likely a condition holds', () => {
  it('none always does', () => expect(share(null)).toBe(1));
  it('of the years made, the part that is named', () => {
    expect(share({ made: { from: 1949, to: 1955 } })).toBeCloseTo(7 / 14, 9);
    expect(share({ made: { from: 1963 } })).toBe(0);
    expect(share({ made: { to: 1970 } })).toBe(1);
  });
  it('of the places made, likewise', () => {
    expect(share({ places: ['brindfold'] })).toBe(1);
    expect(share({ places: ['Brindfold'] }, quarrendle)).toBe(0.5);
    expect(share({ places: ['Holtsund'] })).toBe(0);
  });
  it('both must hold', () => expect(share({ made: { to: 1955 }, places: ['Brindfold'] })).toBeCloseTo(7 / 14, 9));
  it('numbers are even, until the serial is known', () => {
    const serials = [{ scheme: 'brindfold-post-war', first: '298001', last: '322000' }];
    expect(share({ serials })).toBe(UNKNOWN_CONDITION);
    expect(share({ serials }, cressiter, 'KD318472')).toBe(1);
    expect(share({ serials }, cressiter, 'KD161190')).toBe(0);
  });
  it('the serial’s run decides years and places', () => {
    expect(share({ made: { from: 1953 } }, cressiter, 'KD318472')).toBe(1);
    expect(share({ made: { to: 1952 } }, cressiter, 'KD318472')).toBe(0);
  });
});
