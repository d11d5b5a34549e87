/**
 * Positions of a longest increasing subsequence, in order: of numbers that each occur once, which can stay where they
 * are so that the fewest have to move?
 *
 * Example: 2 0 1 3 -> positions 1, 2, 3 (0 1 3 stay, 2 moves).
 * Method: patience sorting (Schensted 1961): `ends[k]` is the position of the smallest number that ends an increasing
 * subsequence of length k + 1; each number finds its place there by halving. n log n steps.
 */
export function increasing(numbers: readonly number[]): number[] {
  const ends: number[] = [];
  const before = new Int32Array(numbers.length).fill(-1);
  for (let i = 0; i < numbers.length; i++) {
    let low = 0;
    let high = ends.length;
    // Most often nothing has moved, and each number is the largest so far.
    if (high > 0 && numbers[ends[high - 1]!]! < numbers[i]!) low = high;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (numbers[ends[middle]!]! < numbers[i]!) low = middle + 1;
      else high = middle;
    }
    if (low > 0) before[i] = ends[low - 1]!;
    ends[low] = i;
  }
  const found: number[] = [];
  for (let i = ends.at(-1) ?? -1; i >= 0; i = before[i]!) found.push(i);
  return found.reverse();
}
