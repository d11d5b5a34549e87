const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** A count as a person says it: "three", and digits from 13 on. */
export function number(n: number): string {
  return SMALL[n] ?? String(n);
}

/** "one thing", "three things". */
export function counted(n: number, one: string, many: string): string {
  return `${number(n)} ${n === 1 ? one : many}`;
}

export function sentenceCase(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
