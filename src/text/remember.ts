/** Shorter texts are looked for among the last few, one by one: there are thousands of them, and each is soon read. */
const SHORTEST = 64;
const FEW = 4;
/** The fields of one advert, and a few more. */
const MOST = 8;

/**
 * The same reader, which remembers its answers for the last texts: the readers of years, serials, weights and money
 * ask for each other's readings of one advert over and over. Only for pure readers whose answers nobody changes.
 */
export function remembering<A extends object>(read: (text: string) => A): (text: string) => A {
  const known = new Map<string, A>();
  const shortTexts: string[] = [];
  const shortAnswers: A[] = [];
  let count = 0;
  return (text) => {
    if (text.length < SHORTEST) {
      const place = shortTexts.indexOf(text);
      if (place >= 0) return shortAnswers[place]!;
      const made = read(text);
      const next = count++ % FEW;
      shortTexts[next] = text;
      shortAnswers[next] = made;
      return made;
    }
    const there = known.get(text);
    if (there) return there;
    const made = read(text);
    if (known.size >= MOST) known.delete(known.keys().next().value ?? text);
    known.set(text, made);
    return made;
  };
}
