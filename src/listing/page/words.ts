import { fold } from '../../text/fold';

/** Longer than any label. */
const LABEL_MOST = 48;

/**
 * Reads labels: folded words in lists of "a|b|c", "*" at the end of a word for any ending. The first list that has the
 * word decides.
 */
export function labelReader<Label extends string>(lists: Record<Label, string>) {
  const exact = new Map<string, Label>();
  const beginnings: [string, Label][] = [];
  for (const label of Object.keys(lists) as Label[]) {
    for (const word of lists[label].split('|')) {
      if (word.endsWith('*')) beginnings.push([word.slice(0, -1), label]);
      else if (!exact.has(word)) exact.set(word, label);
    }
  }
  /** `exactly`: without the words that only begin a label. */
  return (text: string, exactly = false): Label | null => {
    if (text === '' || text.length > LABEL_MOST) return null;
    const word = bare(text);
    return exact.get(word) ?? (exactly ? null : (beginnings.find(([start]) => word.startsWith(start))?.[1] ?? null));
  };
}

const bare = (text: string) =>
  fold(text)
    .text.replace(/^[\s*\u2022\u00b7-]+|[\s:*.\u2026-]+$/g, '')
    .replace(/ +/g, ' ');
