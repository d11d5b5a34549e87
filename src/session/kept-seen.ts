import type { KeptAnswer } from '../keep/schema';
import type { Seen, SeenValue } from './seen';

/** What was seen of one attribute, as it is kept. @param about the address of the page, or the id of the draft */
export function keptSeen(about: string, attribute: string, value: SeenValue, at: string): KeptAnswer {
  return { about, attribute, answer: JSON.stringify(value), at };
}

/** What is kept as what was seen, in the order in which it was said. What can't be read is left out. */
export function seenFrom(kept: readonly KeptAnswer[]): Seen {
  const seen = new Map<string, SeenValue>();
  for (const { attribute, answer } of [...kept].sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))) {
    const value = valueFrom(answer);
    if (value !== undefined) seen.set(attribute, value);
  }
  return seen;
}

function valueFrom(answer: string): SeenValue | undefined {
  try {
    const value: unknown = JSON.parse(answer);
    return value === null || typeof value === 'boolean' || typeof value === 'string' ? value : undefined;
  } catch {
    return undefined;
  }
}
