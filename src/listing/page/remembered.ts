const KNOWN_MOST = 3000;
const LONG = 200;

/**
 * The same pattern, which remembers what it said of a text: the many elements of a page have few different names, and the
 * patterns that look for a word among them are long. Only for patterns without the flags g and y.
 */
export function remembered(pattern: RegExp): Pick<RegExp, 'test'> {
  const known = new Map<string, boolean>();
  return {
    test(text) {
      if (text === '' || text.length > LONG) return pattern.test(text);
      let answer = known.get(text);
      if (answer === undefined) {
        answer = pattern.test(text);
        if (known.size >= KNOWN_MOST) known.clear();
        known.set(text, answer);
      }
      return answer;
    },
  };
}
