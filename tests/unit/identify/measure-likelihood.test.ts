import { describe, expect, it } from 'vitest';
import { fieldOf } from '../../../src/identify/field';
import { measureLogs } from '../../../src/identify/measure-likelihood';
import { demo } from '../audit/support/demo';
import { readingOf } from '../claims/support/reading';

const reading = (description: string) =>
  readingOf({ title: 'Grindlewade sewing machine', description, language: 'en' });
function at(logs: Float64Array | null | undefined, model: string, description: string): number {
  const field = fieldOf(demo, reading(description).covering);
  return logs![field.positionOf(model, 'grindlewade-circle')!]!;
}
const weighing = (description: string, model: string) => {
  const read = reading(description);
  return at(measureLogs(read, fieldOf(demo, read.covering)).get('trade/weight'), model, description);
};
describe('a stated weight', () => {
  it('is of a model in whose range it falls; narrow ranges gain more', () => {
    expect(weighing('It weighs 14.5 kg.', 'cressiter')).toBeGreaterThan(weighing('It weighs 14.5 kg.', 'pellucket'));
    expect(weighing('It weighs 9 kg.', 'pellucket')).toBeGreaterThan(weighing('It weighs 9 kg.', 'cressiter') + 1);
    expect(weighing('It weighs 9 kg.', 'pellucket')).toBeGreaterThan(
      weighing('It weighs 9 kg.', 'trade/three-quarter-iron-vibrating'),
    );
  });
  it('a case on it makes more of a light one', () => {
    const gap = (text: string) => weighing(text, 'cressiter') - weighing(text, 'pellucket');
    expect(gap('It weighs 12.5 kg in its case.')).toBeLessThan(gap('It weighs 12.5 kg.'));
  });
  it('said twice it tells no more', () =>
    expect(weighing('It weighs 9 kg. Weight: 9 kg.', 'pellucket')).toBeCloseTo(
      weighing('It weighs 9 kg.', 'pellucket'),
      9,
    ));
  it('none, nothing', () => {
    const read = reading('It works.');
    expect(measureLogs(read, fieldOf(demo, read.covering)).size).toBe(0);
  });
});
