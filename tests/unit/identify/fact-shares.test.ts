import { describe, expect, it } from 'vitest';
import { CONVERTED_SHARE, FIRM_SHARE, USUAL_SHARE } from '../../../src/identify/assumptions';
import { factShares } from '../../../src/identify/fact-shares';
import { leavesOf } from '../../../src/identify/leaves';
import type { FactKnown } from '../../../src/pack/knowledge';
import { demo } from '../audit/support/demo';

const frame = leavesOf(demo.attributes.get('trade/frame')!)!;
const bobbin = leavesOf(demo.attributes.get('trade/bobbin')!)!;
const drive = leavesOf(demo.attributes.get('trade/drive')!)!;
const fact = (leaves: typeof frame, values: string[], over: Partial<FactKnown> = {}): FactKnown => ({
  ...{ attribute: leaves.attribute, allowed: { kind: 'values', values: new Set(values) }, when: null, always: true },
  ...{ necessary: false, pack: 'p', entry: 'm', source: null },
  ...over,
});
const shares = (leaves: typeof frame, ...facts: { fact: FactKnown; share: number }[]) =>
  Array.from(factShares(facts, leaves));

describe('how likely each value is under the facts', () => {
  it('nothing known: all alike', () => expect(shares(frame)).toEqual([0.5, 0.5]));
  it('a firm fact leaves little, a usual one more', () => {
    expect(shares(frame, { fact: fact(frame, ['cast-iron']), share: 1 })[0]).toBeCloseTo(FIRM_SHARE, 9);
    expect(shares(frame, { fact: fact(frame, ['cast-iron'], { always: false }), share: 1 })[0]).toBeCloseTo(
      USUAL_SHARE,
      9,
    );
  });
  it('a wide value is shared by its kinds', () => {
    const [long, ...round] = shares(bobbin, { fact: fact(bobbin, ['round']), share: 1 });
    expect(long).toBeCloseTo(1 - FIRM_SHARE, 9);
    for (const one of round) expect(one).toBeCloseTo(FIRM_SHARE / 3, 9);
  });
  it('what can be changed often was', () => {
    const crank = drive.covers.get('hand-crank')![0]!;
    expect(shares(drive, { fact: fact(drive, ['hand-crank']), share: 1 })[crank]).toBeCloseTo(1 - CONVERTED_SHARE, 9);
  });
  it('a conditional fact takes its share, the general one what is left; together one whole', () => {
    const all = shares(
      frame,
      { fact: fact(frame, ['cast-iron']), share: 1 },
      { fact: fact(frame, ['aluminium'], { when: { made: { from: 1955 } } }), share: 0.25 },
    );
    expect(all[1]).toBeCloseTo(0.25 * FIRM_SHARE + 0.75 * (1 - FIRM_SHARE), 9);
    expect(all[0]! + all[1]!).toBeCloseTo(1, 9);
  });
  it('conditions whose shares pass one whole are scaled down to it', () => {
    const late = fact(frame, ['aluminium'], { when: { made: { from: 1955 } } });
    const early = fact(frame, ['cast-iron'], { when: { made: { to: 1955 } } });
    expect(shares(frame, { fact: late, share: 0.9 }, { fact: early, share: 0.9 })[0]).toBeCloseTo(0.5, 9);
  });
});
