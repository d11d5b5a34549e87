/**
 * Of a list in order, the place of the first one that no longer lies before what is sought; the list's length where all
 * do. Halves the list: an advert may have thousands of whatever it has.
 */
export function firstNotBefore<T>(list: readonly T[], isBefore: (one: T) => boolean): number {
  let low = 0;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if (isBefore(list[middle]!)) low = middle + 1;
    else high = middle;
  }
  return low;
}
