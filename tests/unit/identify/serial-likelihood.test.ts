import { describe, expect, it } from 'vitest';
import { fieldOf } from '../../../src/identify/field';
import { serialEvidence } from '../../../src/identify/serial-likelihood';
import { demo } from '../audit/support/demo';

const covering = new Set(['trade', 'grindlewade-circle']);
const field = fieldOf(demo, covering);
const of = (normal: string, over = {}) => serialEvidence({ normal, stated: true, ...over }, field, demo, covering);
const at = (normal: string, model: string, over = {}) =>
  of(normal, over).logs[field.positionOf(model, 'grindlewade-circle') ?? field.hypotheses.length - 1]!;
const type = 'trade/full-size-iron-round';

describe('what a serial says', () => {
  it('of the model in whose run it lies; its narrowest run is kept', () => {
    expect(at('KD318472', 'cressiter')).toBeGreaterThan(at('KD318472', 'wendelow') + 3);
    expect(of('KD318472').numbered.get('grindlewade-circle/cressiter')?.number).toBe(318472);
  });
  it('in no run, but of the maker’s form: rather a maker’s own than any', () =>
    expect(at('KD999999', 'cressiter')).toBeGreaterThan(at('KD999999', type)));
  it('where the tables are complete, a gap is less likely', () => {
    // Brindfold's tables of before the war are not said to be complete.
    expect(at('KD999999', 'tullawick')).toBeLessThan(at('B999999', 'tullawick'));
  });
  it('of no maker’s form: for makers that no pack knows', () => {
    expect(at('XQ12', type)).toBeGreaterThan(at('XQ12', 'cressiter') + 1.5);
    expect(at('XQ12', type)).toBe(at('XQ12', 'none-of-them'));
  });
  it('a slip for a known number speaks for its model', () => {
    // I for 1: no scheme has that form.
    expect(at('B53I877', 'tullawick')).toBeGreaterThan(at('B53I877', 'wendelow'));
  });
  it('one that is doubted tells less', () => {
    const gap = (over = {}) => at('KD318472', 'cressiter', over) - at('KD318472', type, over);
    expect(gap({ doubted: true })).toBeLessThan(gap());
  });
});
