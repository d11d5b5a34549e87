import { describe, expect, it } from 'vitest';
import { fieldOf } from '../../../src/identify/field';
import { placeLogs, yearLogs } from '../../../src/identify/made-likelihood';
import { demo } from '../audit/support/demo';
import { readingOf } from '../claims/support/reading';

const reading = (description: string) =>
  readingOf({ title: 'Grindlewade sewing machine', description, language: 'en' });
function at(logs: Float64Array | null | undefined, model: string, description: string): number {
  const field = fieldOf(demo, reading(description).covering);
  return logs![field.positionOf(model, 'grindlewade-circle')!]!;
}
const year = (description: string, model: string) => {
  const read = reading(description);
  return at(yearLogs(read, fieldOf(demo, read.covering).hypotheses), model, description);
};
const place = (description: string, model: string) => {
  const read = reading(description);
  return at(placeLogs(read, fieldOf(demo, read.covering).hypotheses), model, description);
};

describe('the year and the place that an advert gives', () => {
  it('are of a model made then', () => {
    expect(year('Made in 1955.', 'cressiter')).toBeGreaterThan(year('Made in 1955.', 'quarrendle') + 2);
    expect(year('Made in 1955.', 'quarrendle')).toBeLessThan(year('Made in 1955.', 'trade/full-size-iron-round'));
  });
  it('“about” reaches some years further', () =>
    expect(year('Made about 1964.', 'cressiter')).toBeGreaterThan(year('Made in 1964.', 'cressiter')));
  it('are of a model made there', () =>
    expect(place('Made at Brindfold.', 'cressiter')).toBeGreaterThan(place('Made at Brindfold.', 'fennicote') + 2));
  it('none, nothing', () => expect(yearLogs(reading('It works.'), [])).toBeNull());
});
