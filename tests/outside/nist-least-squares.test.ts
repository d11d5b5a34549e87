import { describe, expect, it } from 'vitest';
import { posterior } from '../../src/price/conjugate';
import { leastSquares } from '../../src/price/least-squares';

// NIST Statistical Reference Datasets, linear regression: Norris (lower difficulty) and Longley (higher difficulty),
// data and certified values from memory. They vouch for each other: a slip in either could not agree to nine digits.

const DIGITS = 9;

/** Digits in common with the certified value: -log10 of the relative error, NIST's own measure. */
function agreeing(value: number, certified: number): number {
  return value === certified ? 16 : -Math.log10(Math.abs(value - certified) / Math.abs(certified));
}

const NORRIS = `0.1 0.2;338.8 337.4;118.1 118.2;888.0 884.6;9.2 10.1;228.1 226.5;668.5 666.3;998.5 996.3;449.1 448.6;
778.9 777.0;559.2 558.2;0.3 0.4;0.1 0.6;778.1 775.5;668.8 666.9;339.3 338.0;448.9 447.5;10.8 11.6;557.7 556.0;
228.3 228.1;998.0 995.8;888.8 887.6;119.6 120.2;0.3 0.3;0.6 0.3;557.6 556.8;339.3 339.1;888.0 887.2;998.5 999.0;
778.9 779.0;10.2 11.1;117.6 118.3;228.9 229.2;668.4 669.1;449.2 448.9;0.2 0.5`;

const LONGLEY = `60323 83.0 234289 2356 1590 107608 1947;61122 88.5 259426 2325 1456 108632 1948;
60171 88.2 258054 3682 1616 109773 1949;61187 89.5 284599 3351 1650 110929 1950;
63221 96.2 328975 2099 3099 112075 1951;63639 98.1 346999 1932 3594 113270 1952;
64989 99.0 365385 1870 3547 115094 1953;63761 100.0 363112 3578 3350 116219 1954;
66019 101.2 397469 2904 3048 117388 1955;67857 104.6 419180 2822 2857 118734 1956;
68169 108.4 442769 2936 2798 120445 1957;66513 110.8 444546 4681 2637 121950 1958;
68655 112.6 482704 3813 2552 123366 1959;69564 114.2 502601 3931 2514 125368 1960;
69331 115.7 518173 4806 2572 127852 1961;70551 116.9 554894 4007 2827 130081 1962`;

function read(table: string): { y: number[]; rows: number[][] } {
  const lines = table.split(';').map((line) => line.trim().split(' ').map(Number));
  return { y: lines.map(([y]) => y!), rows: lines.map(([, ...x]) => [1, ...x]) };
}

describe.each([
  {
    name: 'Norris',
    table: NORRIS,
    certified: [-0.262323073774029, 1.00211681802045],
    deviation: 0.884796396144373,
  },
  {
    name: 'Longley',
    table: LONGLEY,
    certified: [
      -3482258.63459582, 15.0618722713733, -0.035819179292591, -2.02022980381683, -1.03322686717359,
      -0.0511041056535807, 1829.15146461355,
    ],
    deviation: 304.854073561965,
  },
])('NIST StRD $name', ({ table, certified, deviation }) => {
  const { y, rows } = read(table);

  it.each(certified.map((value, at) => [at, value]))(`coefficient %i to ${DIGITS} digits`, (at, value) => {
    const found = leastSquares(rows, y)!.coefficients[at!]!;
    expect(agreeing(found, value!)).toBeGreaterThan(DIGITS);
  });

  it('the residual standard deviation', () => {
    const { residual } = leastSquares(rows, y)!;
    expect(agreeing(Math.sqrt(residual / (y.length - certified.length)), deviation)).toBeGreaterThan(DIGITS);
  });

  it('is what the conjugate update comes to where nothing was known before', () => {
    const nothing = { means: certified.map(() => 0), worth: certified.map(() => 0), freedom: 0, variance: 0 };
    const found = posterior(
      nothing,
      rows,
      y,
      y.map(() => 1),
    )!;
    found.coefficients.forEach((value, at) => {
      expect(agreeing(value, certified[at]!)).toBeGreaterThan(DIGITS);
    });
    expect(agreeing(Math.sqrt(found.variance), deviation)).toBeGreaterThan(DIGITS);
  });
});
