import { expect, it } from 'vitest';
import { formOf, ODD, printedAs } from '../../../../src/pack/serials/printed';

const scheme = { id: 'k', prefix: 'K', digits: [5, 6] as [number, number], suffix: 'B' };

it.each([
  ['201', 201],
  ['00201', 201],
  ['K00201B', 201],
  ['K123456B', 123_456],
  ['123456', 123_456],
])('%s is printed in a usual way and comes back so', (printed, number) => {
  const form = formOf(scheme, printed, number);
  expect(form).not.toBe(ODD);
  expect(printedAs(form, scheme, number)).toBe(printed);
});

it.each([
  ['K 00201 B', 201],
  ['000201', 201],
  ['k00201b', 201],
  ['K000201B', 201],
])('%s is kept as it is', (printed, number) => {
  expect(formOf(scheme, printed, number)).toBe(ODD);
});
