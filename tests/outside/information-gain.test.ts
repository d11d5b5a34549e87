import { describe, expect, it } from 'vitest';
import { entropy, expectedInformation } from '../../src/identify/information';

/**
 * The PlayTennis table: Mitchell, Machine Learning (McGraw-Hill 1997), table 3.2, after Quinlan (1986); from memory.
 * Section 3.4.1.2 gives Entropy([9+, 5-]) = 0.940 and the gains 0.246 (outlook), 0.151 (humidity), 0.048 (wind), 0.029
 * (temperature), cut and not rounded; to four places they are 0.2467, 0.1518, 0.0481, 0.0292.
 */
const DAYS = `
sunny hot high weak no
sunny hot high strong no
overcast hot high weak yes
rain mild high weak yes
rain cool normal weak yes
rain cool normal strong no
overcast cool normal strong yes
sunny mild high weak no
sunny cool normal weak yes
rain mild normal weak yes
sunny mild normal strong yes
overcast mild high strong yes
overcast hot normal weak yes
rain mild high strong no`
  .trim()
  .split('\n')
  .map((line) => line.split(' '));
const PLAY = ['yes', 'no'];

const share = (of: string[][], column: number, value: string): number =>
  of.filter((day) => day[column] === value).length / of.length;

/** The gain of a column about whether to play: as a question whose answer depends on which of the two it is. */
function gain(column: number): number {
  const values = [...new Set(DAYS.map((day) => day[column]!))];
  const shares = PLAY.map((play) => share(DAYS, 4, play));
  const chances = PLAY.flatMap((play) => {
    const days = DAYS.filter((day) => day[4] === play);
    return values.map((value) => share(days, column, value));
  });
  return expectedInformation(shares, chances, values.length);
}

describe('information on the PlayTennis table', () => {
  it('has the entropy that the book has', () =>
    expect(entropy(PLAY.map((play) => share(DAYS, 4, play)))).toBeCloseTo(0.94, 3));
  it.each([
    ['outlook', 0, 0.2467],
    ['temperature', 1, 0.0292],
    ['humidity', 2, 0.1518],
    ['wind', 3, 0.0481],
  ])('%s gains what it gains in the book', (_name, column, bits) => {
    expect(Math.abs(gain(column) - bits)).toBeLessThanOrEqual(0.00005);
  });
});
