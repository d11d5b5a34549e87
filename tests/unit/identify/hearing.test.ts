import { describe, expect, it } from 'vitest';
import { heard, loosened } from '../../../src/identify/hearing';
import { leavesOf } from '../../../src/identify/leaves';
import { demo } from '../audit/support/demo';

const bobbin = leavesOf(demo.attributes.get('trade/bobbin')!)!;
const at = (value: string, denied = false) => Array.from(heard(value, denied, 0.7, bobbin)!);

describe('hearing a value', () => {
  it('right as often as is said, wrong about any other alike', () => {
    const [long, class15, class66] = at('class-15');
    expect(class15).toBeCloseTo(0.7, 9);
    expect(long).toBeCloseTo(0.1, 9);
    expect(class66).toBeCloseTo(0.1, 9);
  });
  it('a wider value is heard of each of its kinds', () => {
    const [long, ...round] = at('round');
    for (const one of round) expect(one).toBeCloseTo(0.9, 9);
    expect(long).toBeCloseTo(0.3, 9);
  });
  it('words that part all that there is make one whole for each leaf', () => {
    const long = at('long');
    at('round').forEach((round, leaf) => {
      expect(round + long[leaf]!).toBeCloseTo(1, 9);
    });
  });
  it('denied is the rest', () => expect(at('long', true)[0]).toBeCloseTo(0.3, 9));
  it('nobody is always right, whatever a pack says, or always wrong', () => {
    for (const sure of [0, 1]) for (const one of heard('long', false, sure, bobbin)!) expect(one).toBeGreaterThan(0);
  });
  it('null where it is no value of the attribute', () => {
    expect(heard('zigzag', false, 0.7, bobbin)).toBeNull();
    expect(heard(true, false, 0.7, bobbin)).toBeNull();
  });
  it('a loose word tells half of what it would over chance', () => {
    expect(loosened(0.9, 0.5, 2)).toBeCloseTo(0.7, 9);
    expect(loosened(0.9, 0, 4)).toBeCloseTo(0.25, 9);
  });
});
