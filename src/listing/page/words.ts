import { fold } from '../../text/fold';

/** Longer than any label. */
const LABEL_MOST = 48;
const KNOWN_MOST = 4000;

/**
 * Reads labels: folded words in lists of "a|b|c", "*" at the end of a word for any ending. The first list that has the
 * word decides.
 */
export function labelReader<Label extends string>(lists: Record<Label, string>) {
  const exact = new Map<string, Label>();
  /** By their first character. */
  const beginnings = new Map<string, [string, Label][]>();
  for (const label of Object.keys(lists) as Label[]) {
    for (const word of lists[label].split('|')) {
      if (word.endsWith('*')) {
        const same = beginnings.get(word[0]!);
        if (same) same.push([word.slice(0, -1), label]);
        else beginnings.set(word[0]!, [[word.slice(0, -1), label]]);
      } else if (!exact.has(word)) exact.set(word, label);
    }
  }
  /** A page says the same short texts again and again, and each is asked about by several readers. */
  const known = new Map<string, Label | null>();
  const find = (text: string, exactly: boolean): Label | null => {
    const word = bare(text);
    const [first, ...others] = word.split(' / ').map((one) => exact.get(one));
    return (
      exact.get(word) ??
      (first && others.every((one) => one === first) ? first : null) ??
      (exactly ? null : (beginnings.get(word[0] ?? '')?.find(([start]) => word.startsWith(start))?.[1] ?? null))
    );
  };
  /** `exactly`: without the words that only begin a label. */
  return (text: string, exactly = false): Label | null => {
    if (text === '' || text.length > LABEL_MOST) return null;
    const key = exactly ? `=${text}` : text;
    let label = known.get(key);
    if (label === undefined) {
      label = find(text, exactly);
      if (known.size >= KNOWN_MOST) known.clear();
      known.set(key, label);
    }
    return label;
  };
}

/** As the lists have it: a number is "nr", whatever it is called ("engine no", "N° moteur", "Motornummer"). */
const bare = (text: string) =>
  fold(text)
    .text.replace(/^[\s*\u2022\u00b7-]+|[\s:*.\u2026-]+$/g, '')
    .replace(/ \(\d+\)$/, '')
    .replace(/(^| )(?:n[°º]|(?:number|numero|numer|no|nr|n)(?!\w)\.?|#)|-?nummer\b|-nr\b/g, '$1nr')
    .replace(/ +/g, ' ');
