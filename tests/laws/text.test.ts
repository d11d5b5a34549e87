import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clauses } from '../../src/text/clauses';
import { fold } from '../../src/text/fold';
import { isWholeAt, roleOf, singulars, waysToWrite } from '../../src/text/phrase-keys';
import { PhraseIndex } from '../../src/text/phrases';
import { type Token, tokenise } from '../../src/text/tokens';
import { TIMES } from './pack-arbitrary/times';
import { advertText, anyText, text, wording } from './text-arbitraries';

const holds = <Values extends [unknown, ...unknown[]]>(property: fc.IProperty<Values>) =>
  fc.assert(property, { numRuns: 500 * TIMES });

describe('fold', () => {
  it('folds what is folded to itself', () => {
    holds(
      fc.property(text, (written) => {
        const once = fold(written).text;
        expect(fold(once).text).toBe(once);
      }),
    );
  });

  it('folds a part as it folds it inside the whole, for every whole letter', () => {
    holds(
      fc.property(text, (written) => {
        const folded = fold(written);
        for (let at = 0; at < folded.text.length; at++) {
          const { start, end } = folded.toOriginal(at, at + 1);
          expect(end).toBeGreaterThan(start);
          // "10½": the space between them is the half's.
          expect(` ${fold(written.slice(start, end)).text}`).toContain(folded.text[at]);
        }
      }),
    );
  });

  it('keeps order: later parts come from no earlier places', () => {
    holds(
      fc.property(text, (written) => {
        const folded = fold(written);
        let before = { start: 0, end: 0 };
        for (let at = 0; at < folded.text.length; at++) {
          const span = folded.toOriginal(at, at + 1);
          expect(span.start).toBeGreaterThanOrEqual(before.start);
          expect(span.end).toBeGreaterThanOrEqual(before.end);
          expect(folded.toOriginal(0, at + 1)).toEqual({ start: folded.toOriginal(0, 1).start, end: span.end });
          before = span;
        }
      }),
    );
  });

  it('is the same by the fast way and by the slow one', () => {
    holds(
      fc.property(fc.string({ unit: 'binary-ascii', maxLength: 60 }), (written) => {
        // One character that is not ASCII takes the slow way.
        expect(fold(`${written}é`).text).toBe(`${fold(written).text}e`);
      }),
    );
  });

  it('is the same by runs of plain letters and letter by letter', () => {
    holds(
      fc.property(fc.array(text, { maxLength: 3 }), (parts) => {
        const written = parts.join(' plain 12 ');
        const slow = foldedByLetters(written);
        const folded = fold(written);
        expect(folded.text).toBe(slow.map(({ unit }) => unit).join(''));
        for (const [at, { start, end }] of slow.entries()) {
          expect(folded.toOriginal(at, at + 1)).toEqual({ start, end });
          expect(folded.toOriginal(0, at + 1)).toEqual({ start: slow[0]!.start, end });
        }
        expect(folded.toOriginal(slow.length, slow.length)).toEqual({ start: written.length, end: written.length });
      }),
    );
  });

  it('does not care how letters are composed', () => {
    holds(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), (written) => {
        expect(fold(written.normalize('NFD')).text).toBe(fold(written.normalize('NFC')).text);
      }),
    );
  });
});

/** Each unit of a folded text with the stretch that it came from, by folding one character at a time. */
function foldedByLetters(written: string): { unit: string; start: number; end: number }[] {
  const units: { unit: string; start: number; end: number }[] = [];
  let at = 0;
  for (const character of written) {
    const end = at + character.length;
    const piece = fold(character).text;
    // A number that is written as one character doesn't run into the digits before it.
    const parted = /\p{Nd}$/u.test(units.at(-1)?.unit ?? '') && /^\p{Nd}/u.test(piece) && !/^\p{Nd}$/u.test(character);
    for (const unit of ((parted ? ' ' : '') + piece).split('')) units.push({ unit, start: at, end });
    if (piece === '' && !/^\p{Default_Ignorable_Code_Point}$/u.test(character) && units.length > 0)
      units[units.length - 1] = { ...units.at(-1)!, end };
    at = end;
  }
  return units;
}

const INVISIBLE = /^[\s\p{Default_Ignorable_Code_Point}]*$/u;

describe('tokenise', () => {
  it('loses nothing that can be seen, and overlaps nowhere', () => {
    holds(
      fc.property(text, (written) => {
        let at = 0;
        for (const token of tokenise(written)) {
          expect(token.start).toBeGreaterThanOrEqual(at);
          expect(written.slice(at, token.start)).toMatch(INVISIBLE);
          expect(token.end).toBeGreaterThan(token.start);
          at = token.end;
        }
        expect(written.slice(at)).toMatch(INVISIBLE);
      }),
    );
  });

  it('is the same by the quick way and by the slow one', () => {
    holds(
      fc.property(fc.oneof(fc.string({ unit: 'binary-ascii', maxLength: 60 }), advertText), (written) => {
        // An invisible character after each has every token found by the slow way; beside an apostrophe it would part.
        const slow = written.replace(/[!-~](?<!['`])(?!['`])/g, '$&\u200b');
        const seen = (text: string) => tokenise(text).map(({ kind, folded, glued }) => [kind, folded, glued]);
        expect(seen(written)).toEqual(seen(slow));
      }),
    );
  });

  it('splits no character, and gives no empty word', () => {
    holds(
      fc.property(anyText, (written) => {
        for (const { start, end, folded } of tokenise(written)) {
          expect(folded).not.toBe('');
          for (const place of [start, end]) {
            const isInside =
              /[\ud800-\udbff]/.test(written[place - 1] ?? '') && /[\udc00-\udfff]/.test(written[place] ?? '');
            expect(isInside).toBe(false);
          }
        }
      }),
    );
  });

  it('says "glued" exactly where nothing that can be seen stands between', () => {
    holds(
      fc.property(text, (written) => {
        const tokens = tokenise(written);
        for (const [at, token] of tokens.entries()) {
          const before = tokens[at - 1];
          const beside = before && token.kind !== 'break' && before.kind !== 'break' ? before : null;
          expect(token.glued).toBe(beside !== null && !/\s/.test(written.slice(beside.end, token.start)));
        }
      }),
    );
  });
});

describe('clauses', () => {
  it('puts every word and number in exactly one clause, in order', () => {
    holds(
      fc.property(text, (written) => {
        const tokens = tokenise(written);
        const isWord = (token: Token) => token.kind === 'word' || token.kind === 'number';
        const all = clauses(written, tokens).flatMap((clause) => clause.tokens.filter(isWord));
        expect(all).toEqual(tokens.filter(isWord));
      }),
    );
  });

  it('spans exactly its tokens, one sentence after the other', () => {
    holds(
      fc.property(text, (written) => {
        let before = { end: 0, sentence: 0 };
        for (const clause of clauses(written, tokenise(written))) {
          expect(clause.start).toBe(clause.tokens[0]!.start);
          expect(clause.end).toBe(clause.tokens.at(-1)!.end);
          expect(clause.start).toBeGreaterThanOrEqual(before.end);
          expect(clause.sentence - before.sentence).toBeOneOf([0, 1]);
          expect(clause.tokens.some((token) => token.kind === 'break')).toBe(false);
          before = clause;
        }
      }),
    );
  });
});

/** What the index must find, by trying each phrase at each place. */
function searchNaively(phrases: readonly string[], tokens: readonly Token[]) {
  const found: { value: string; firstToken: number; lastToken: number }[] = [];
  for (const value of phrases) {
    for (const keys of waysToWrite(value)) {
      for (let first = 0; first < tokens.length; first++) {
        const last = endOfMatch(keys, tokens, first);
        if (last !== null) found.push({ value, firstToken: first, lastToken: last });
      }
    }
  }
  return found;
}

function endOfMatch(keys: readonly string[], tokens: readonly Token[], first: number): number | null {
  if (roleOf(tokens, first) !== 'key' || !isWholeAt(tokens, first, -1)) return null;
  let at = first;
  for (const [index, key] of keys.entries()) {
    if (index > 0) while (at < tokens.length && roleOf(tokens, at) === 'pass') at++;
    if (at >= tokens.length || roleOf(tokens, at) !== 'key') return null;
    const isLast = index === keys.length - 1;
    const { kind, folded } = tokens[at]!;
    const fits = isLast && kind === 'word' ? singulars(folded).includes(key) : folded === key;
    if (!fits || (isLast && !isWholeAt(tokens, at, 1))) return null;
    if (!isLast) at++;
  }
  return at;
}

describe('PhraseIndex', () => {
  it('finds what the naive search finds', () => {
    const phrases = fc.array(fc.oneof(wording, text), { maxLength: 12 });
    holds(
      fc.property(phrases, fc.oneof(wording, advertText), (known, written) => {
        const index = new PhraseIndex<string>();
        for (const phrase of known) index.add(phrase, phrase);
        const tokens = tokenise(written);
        const strip = ({ value, firstToken, lastToken }: { value: string; firstToken: number; lastToken: number }) =>
          JSON.stringify([firstToken, lastToken, value]);
        const indexed = index.search(tokens).map(strip).sort();
        expect(indexed).toEqual(searchNaively(known, tokens).map(strip).sort());
      }),
    );
  });

  it('finds a phrase in itself, however it is spaced and cased', () => {
    const plain = fc.array(fc.constantFrom('cast', 'iron', 'bed', 'shuttle', '15', 'größe'), {
      minLength: 1,
      maxLength: 5,
    });
    holds(
      fc.property(plain, fc.constantFrom(' ', '  ', '-', '\u00a0'), fc.boolean(), (words, space, isLoud) => {
        const index = new PhraseIndex<true>();
        index.add(words.join(' '), true);
        const written = words.join(space);
        const tokens = tokenise(isLoud ? written.toUpperCase() : written);
        expect(
          index.search(tokens).some((match) => match.firstToken === 0 && match.lastToken === tokens.length - 1),
        ).toBe(true);
      }),
    );
  });

  it('finds nothing that is not there: every match has the words of its phrase', () => {
    holds(
      fc.property(fc.array(wording, { maxLength: 8 }), wording, (known, written) => {
        const index = new PhraseIndex<string>();
        for (const phrase of known) index.add(phrase, phrase);
        const tokens = tokenise(written);
        for (const { start, end, firstToken, lastToken } of index.search(tokens)) {
          expect([start, end]).toEqual([tokens[firstToken]!.start, tokens[lastToken]!.end]);
          expect(tokens.slice(firstToken, lastToken + 1).some((token) => token.kind === 'break')).toBe(false);
        }
      }),
    );
  });
});
