const KNOWN_MOST = 2000;

/** The same reader, which remembers its answers: a page's many elements have few different classes and names. */
export function onceEach<A>(read: (text: string) => A): (text: string) => A {
  const known = new Map<string, A>();
  return (text) => {
    let answer = known.get(text);
    if (answer === undefined) {
      answer = read(text);
      if (known.size >= KNOWN_MOST) known.clear();
      known.set(text, answer);
    }
    return answer;
  };
}
