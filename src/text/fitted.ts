import { remembering } from './remember';

/** Capital letters between the small ones of Latin Extended-A, and the two beyond it that Romanian has. */
const CAPITALS = Array.from({ length: 0x80 }, (_, at) => String.fromCharCode(0x100 + at))
  .filter((letter) => letter !== letter.toLowerCase())
  .join('');
// What Unicode's properties come to among the characters of `EUROPEAN`, each inside a class.
const AMONG_EUROPEAN = new Map([
  ['\\p{L}', 'A-Za-zªµºÀ-ÖØ-öø-ſȘ-țЀ-ґ'],
  ['\\p{Lu}', `A-ZÀ-ÖØ-Þ${CAPITALS}ȘȚЀ-ЯҐ`],
  ['\\p{N}', '\\d²³¹¼-¾'],
  ['\\p{Sc}', '$¢-¥₠-⃀'],
]);
/** Latin and Cyrillic letters, punctuation, signs and pictures: what most adverts are written in. */
const EUROPEAN =
  /^[\ufe0f\0-\u017f\u0218-\u021b\u0400-\u045f\u0490\u0491\u2010-\u205f\u20a0-\u20c0\u2116\u2122\u2190-\u245f\u2500-\u2775\u2794-\u27bf\u{1f300}-\u{1faff}]*$/u;

const YES = { isEuropean: true };
const NO = { isEuropean: false };
/** Of one text, whole and in pieces, many patterns are asked in turns. */
const lettersOf = remembering((text: string) => (EUROPEAN.test(text) ? YES : NO));

type Written<T> = (source: TemplateStringsArray, ...parts: readonly string[]) => T;

/**
 * A pattern, soon ready: letters as Unicode knows them are 650 ranges, which take a browser 35 microseconds wherever a
 * pattern names them, and up to half a millisecond until it is used. Of a text in European characters a pattern of a few
 * ranges says the same, and mostly no other is made. Not with the flag g (see `fittingTo`), and not to split by.
 */
export const fitted =
  (flags: string): Written<RegExp> =>
  (source, ...parts) => {
    const its = fittingTo(flags)(source, ...parts);
    const pattern = new RegExp('', flags);
    pattern.exec = (text) => {
      const fitting = its(text);
      if (!pattern.sticky) return fitting.exec(text);
      fitting.lastIndex = pattern.lastIndex;
      const found = fitting.exec(text);
      pattern.lastIndex = fitting.lastIndex;
      return found;
    };
    return pattern;
  };

/** Which pattern to take for a text. */
export const fittingTo =
  (flags: string): Written<(text: string) => RegExp> =>
  (source, ...parts) => {
    const whole = String.raw(source, ...parts);
    let european: RegExp | undefined;
    let any: RegExp | undefined;
    return (text) => {
      if (lettersOf(text).isEuropean) {
        european ??= new RegExp(amongEuropean(whole), flags);
        return european;
      }
      any ??= new RegExp(whole, flags);
      return any;
    };
  };

/** A property stands in a class already, or makes one. */
function amongEuropean(source: string): string {
  let inClass = false;
  return source.replace(/\\p\{\w+\}|\\.|[[\]]/gs, (part) => {
    if (part === '[') inClass = true;
    if (part === ']') inClass = false;
    const its = AMONG_EUROPEAN.get(part);
    return its === undefined ? part : inClass ? its : `[${its}]`;
  });
}
