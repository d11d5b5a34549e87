import { describe, expect, it } from 'vitest';
import { cressiter, found } from '../audit/support/demo';

// A Cressiter is of cast iron, sews straight only and loads from the front.
describe('a row says what its label is of', () => {
  it.each([
    ['Shank: slant\nColour: green', []],
    ['Loading: front', ['agrees: front']],
    ['Loading – side', ['disproved: side']],
  ])('%s', (rows, expected) => {
    const all = found('claim-fact', cressiter(rows as string));
    for (const one of expected as string[]) expect(all).toContain(one);
    if ((expected as string[]).length === 0) expect(all.filter((one) => one.startsWith('agrees'))).toEqual([]);
  });

  it('and a phrase that says it all is read once', () =>
    expect(found('claim-fact', cressiter('Loading: side loading'))).toEqual(['disproved: side loading']));

  it.each(['Bed: oak, for the cat', 'Loading: by two men', 'Sleeping: side'])('nothing by “%s”', (row) =>
    expect(found('claim-fact', cressiter(row))).toEqual([]),
  );
});
