/** Where a text looks like money: offsets, end exclusive. A space behind it may belong to it. */
export interface Spot {
  start: number;
  end: number;
}

// Letters of the scripts that adverts are written in, as the inside of a class. `\p{L}` has 650 ranges, and a pattern
// that names it takes a browser up to half a millisecond to get ready, with the flag i fifty; these take none.
const LETTER = 'A-Za-zªµºÀ-ÖØ-öø-ۓऄ-ῼぁ-힣';
/** What no number that begins an amount stands right behind. */
const HELD = new RegExp(`[${LETTER}\\d.,]`);

/** Signs, codes and names of currencies, in small letters. */
const SIGN = `(?:us|au|ca|nz|a|c)?[$]|[€£¥₹₽₺₴₩₪₸₾₼₫₱₦฿]|(?:eur|usd|gbp|chf|cad|aud|nzd|sgd|hkd|sek|nok|dkk|isk|pln|czk|huf|ron|bgn|try|uah|rub|jpy|cny|inr|zar|brl|mxn|ars|clp|cop|uyu|pen|aed|ils)(?![a-z])|(?:euros?|pounds|quid|dollars?|bucks|francs?|franken|pesos?|rupees?|yen|yuan|kronor|kroner|korun[ay]?|z[lł]otych|forint|lei|fr\\.|sfr\\.?|kč|zł|ft|kr\\.?|rs\\.?|円|元|руб|грн|лв|тг|тенге|дин|ден)(?![${LETTER}])`;
/** What an engine lets out, by the norm of the year: "Euro 5". */
const NORM = /^euro ?[1-7]$/;
/** Characters of the longest sign and a space behind it. */
const SIGN_MOST = 10;
const NUMBER = `\\d(?:(?:[\\d.,'’]|[ \\u00a0\\u202f](?=\\d{3}(?!\\d))){0,18}\\d)?(?:[.,]?\\s?[-–—]{1,2}(?!\\s?[\\d$¢-¥₠-⃀]))?\\s?k?(?![${LETTER}\\d])`;

const NUMBER_BEGINS = /(?<!\d)\d/g;
const SIGN_BEFORE = new RegExp(`(?:${SIGN})\\s?$`);
const NUMBER_HERE = new RegExp(NUMBER, 'y');
const SIGN_BEHIND = new RegExp(`\\s?(?:${SIGN})(?!\\s?\\d)`, 'y');
/** The sign in the place of the point; a number and its sign; a number that ends in dashes for the cents. */
const BY_THEMSELVES = [
  /\d{1,3}(?:[ .]?\d{3})*€\d{2}(?!\d)/y,
  new RegExp(`${NUMBER}\\s?(?:${SIGN})(?!\\d[\\d.,])`, 'y'),
  /\d[\d.'’]*[,.][-–—]{1,2}/y,
];
const ALONE = new RegExp(`^(?:${SIGN})$`);
/** What begins with a currency: "euro, of 2 spaarkaarten", "CHF, negotiable". */
const BEGINS = new RegExp(`^(${SIGN})(?![${LETTER}\\d])(?!\\s?\\d)`);

/**
 * With the capitals of currencies small, all in its place: a pattern that minds no case takes a browser twice as long to
 * get ready.
 */
const inSmall = (text: string): string => text.replace(/[A-ZČŁА-Я]+/g, (capitals) => capitals.toLowerCase());

/** Where `pattern`, a sticky one, ends from there on, or -1. */
function endOf(pattern: RegExp, text: string, from: number): number {
  pattern.lastIndex = from;
  return pattern.test(text) ? pattern.lastIndex : -1;
}

/**
 * The spots of a text that look like money, from left to right. Light on purpose: reading it is for `settle`. In small
 * patterns, tried where a number begins: all in one takes longer to get ready than a page to read.
 */
export function moneySpots(written: string, most: number): Spot[] {
  const text = inSmall(written);
  const found: Spot[] = [];
  NUMBER_BEGINS.lastIndex = 0;
  for (let at = 0; found.length < most && NUMBER_BEGINS.test(text); ) {
    const number = NUMBER_BEGINS.lastIndex - 1;
    const spot = spotAt(text, number, at);
    if (!spot || isLength(written.slice(spot.start, spot.end))) continue;
    found.push(spot);
    at = spot.end;
    NUMBER_BEGINS.lastIndex = at;
  }
  return found;
}

/** The money whose number begins there. `from`: where its sign may begin. */
function spotAt(text: string, number: number, from: number): Spot | null {
  const before = text.slice(Math.max(from, number - SIGN_MOST), number);
  const sign = before === '' ? null : SIGN_BEFORE.exec(before);
  const end = sign ? endOf(NUMBER_HERE, text, number) : -1;
  if (sign && end >= 0 && !NORM.test(text.slice(number - sign[0].length, end)))
    return { start: number - sign[0].length, end: Math.max(end, endOf(SIGN_BEHIND, text, end)) };
  if (number > 0 && HELD.test(text[number - 1]!)) return null;
  for (const pattern of BY_THEMSELVES) {
    const end = endOf(pattern, text, number);
    if (end >= 0) return { start: number, end };
  }
  return null;
}

/** "25 ft": feet, unless there are as many of them, written so, as no forint price goes without. */
const isLength = (spot: string): boolean => /^(?:\d{1,2}(?:[.,]\d*)?\s?[Ff][Tt]|\d{3}\s?(?:ft|FT|fT))$/.test(spot);

/** A sign, code or name of a currency, and nothing else. */
export const isCurrency = (text: string): boolean => ALONE.test(inSmall(text));

/** The currency that a text begins with, where no amount of it follows; null for none. */
export const currencyBefore = (text: string): string | null => {
  const its = BEGINS.exec(inSmall(text))?.[1];
  return its === undefined ? null : text.slice(0, its.length);
};
