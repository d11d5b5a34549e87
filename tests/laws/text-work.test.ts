import { describe, expect, it } from 'vitest';
import { clauses } from '../../src/text/clauses';
import { PhraseIndex } from '../../src/text/phrases';
import { type Token, tokenise } from '../../src/text/tokens';
import { HOSTILE } from './hostile-repeats';

/** A text that counts how often it is looked at, and how much is cut from it. */
function countingText(text: string) {
  const count = { looks: 0 };
  const counting = {
    length: text.length,
    codePointAt(at: number) {
      count.looks++;
      return text.codePointAt(at);
    },
    charCodeAt(at: number) {
      count.looks++;
      return text.charCodeAt(at);
    },
    slice(start: number, end: number) {
      count.looks += Math.max(1, end - start);
      return text.slice(start, end);
    },
  };
  return { count, text: counting as unknown as string };
}

/** Tokens that count how often they are looked at. */
function countingTokens(tokens: readonly Token[]) {
  const count = { looks: 0 };
  const get = (target: Token, key: keyof Token) => {
    count.looks++;
    return target[key];
  };
  const watched = tokens.map((token) => new Proxy(token, { get } as ProxyHandler<Token>));
  return { count, tokens: watched };
}

const ONCE = 400;
/** Twice the text may take twice the work, and a little for its ends. */
const atMostTwice = (once: number) => 2.1 * once + 100;

describe('the work grows with the text, not faster', () => {
  const looks = (run: (times: number) => number) => [run(ONCE), run(2 * ONCE)] as const;

  it.each(HOSTILE)('tokenise: %j over and over', (part) => {
    const [once, twice] = looks((times) => {
      const { count, text } = countingText(part.repeat(times));
      tokenise(text);
      return count.looks;
    });
    expect(once).toBeGreaterThan(0);
    expect(twice).toBeLessThanOrEqual(atMostTwice(once));
  });

  it.each(HOSTILE)('clauses: %j over and over', (part) => {
    const [once, twice] = looks((times) => {
      const text = part.repeat(times);
      const { count, tokens } = countingTokens(tokenise(text));
      clauses(text, tokens);
      return count.looks;
    });
    expect(twice).toBeLessThanOrEqual(atMostTwice(once));
  });

  it.each(HOSTILE)('phrases: %j over and over', (part) => {
    const index = new PhraseIndex<number>();
    for (const phrase of ['cast iron', 'made in', `${part} ${part}`, part.repeat(30)]) index.add(phrase, 1);
    const [once, twice] = looks((times) => {
      const { count, tokens } = countingTokens(tokenise(part.repeat(times)));
      index.search(tokens);
      return count.looks;
    });
    expect(twice).toBeLessThanOrEqual(atMostTwice(once));
  });
});

describe('many phrases cost no more than few', () => {
  it('ten thousand that do not occur add not one look at a token', () => {
    const text = 'a cast-iron machine with 12 bobbins, class 15, made in 1954. '.repeat(50);
    const work = (phrases: readonly string[]) => {
      const index = new PhraseIndex<number>();
      for (const [at, phrase] of phrases.entries()) index.add(phrase, at);
      const { count, tokens } = countingTokens(tokenise(text));
      const found = index.search(tokens).length;
      return { found, looks: count.looks };
    };
    const few = ['cast iron', 'class 15', 'bobbin', 'made in'];
    const many = Array.from({ length: 10_000 }, (_, at) => `phrase q${at.toString(36)}x with ${at} words`);
    const with4 = work(few);
    expect(with4.found).toBe(200);
    expect(work([...few, ...many])).toEqual(with4);
  });
});
