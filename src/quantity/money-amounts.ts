import { fitted } from '../text/fitted';
import type { Folded } from '../text/fold';
import type { Span } from '../text/span';
import { minorUnits } from './currencies';
import { matchAt } from './match-at';
import { digitFollows, type Expectation, type Reading, signAfter, signBefore } from './money-beside';
import type { Meaning } from './money-signs';
import { decimalMark, type Numeral, readNumeral, scanNumerals } from './numerals';
import { arePoundsWeight } from './pounds';

/** An amount in a folded text, before it is known whether it is meant as money. */
export interface Amount extends Span {
  value: string;
  currency: string | null;
  /** A sign, word or code of a currency, or a price's dash, stands beside it. */
  isPrice: boolean;
  isRange: boolean;
}

/** "1.340" is thousands in every currency but those with three decimals, where the page's language decides. */
function threeDigits(currency: string | null, language: string | null) {
  return (separator: string) => {
    if (currency === null || minorUnits(currency) !== 3) return 'group' as const;
    return separator === (decimalMark(language) ?? '.') ? ('decimals' as const) : ('group' as const);
  };
}

function timesThousand(value: string): string {
  const [whole, decimals = ''] = value.split('.') as [string, string?];
  const digits = `${whole}${decimals.padEnd(3, '0').slice(0, 3)}`.replace(/^0+(?=\d)/, '');
  return decimals.length > 3 ? `${digits}.${decimals.slice(3)}` : digits;
}

const MODEL_BEFORE = fitted(
  'u',
)`(?<!\p{L})(?:class|klasse|classe|model|modell|modele|type|typ|no|nr|mark|mk|size)\.? $`;

/** "class 15 450 €" is class 15 for 450: the space is not one between thousands. */
function withoutModel(folded: string, number: Numeral): Numeral {
  if (number.separators[0] !== ' ' || !MODEL_BEFORE.test(folded.slice(Math.max(0, number.start - 12), number.start)))
    return number;
  const skipped = number.groups[0]!.length + 1;
  return {
    ...number,
    start: number.start + skipped,
    groups: number.groups.slice(1),
    separators: number.separators.slice(1),
  };
}

const THOUSANDS = fitted('uy')`k(?![\p{L}\d])| ?k(?=€)| (?:thousand|tausend|tsd\.?|mille)(?!\p{L})`;
const DASH = /[,.:]-{1,2}(?!\d)|\/-{1,2}(?!\d)/y;
const LONGEST_WHOLE = 15;

/** One number with what stands beside it, or null where it is part of a word ("K20417") or of a percentage. */
function readAmount(reading: Reading, number: Numeral, free: number): (Amount & { inThousands: boolean }) | null {
  const folded = reading.folded.text;
  const found = signBefore(reading, number.start);
  const before = found && found.start >= free ? found : null;
  if (!before && /[\p{L}\p{N}]$/u.test(folded.slice(Math.max(0, number.start - 1), number.start))) return null;
  const first = readNumeral(number, threeDigits(before?.meaning.currency ?? reading.expected, reading.language));
  const thousands = matchAt(THOUSANDS, folded, first.end);
  const inThousands = thousands !== null;
  let end = first.end + (thousands?.[0].length ?? 0);
  const dash = matchAt(DASH, folded, end);
  if (dash) end += dash[0].length;
  // Behind a sign that several currencies share, any code says which: "$450 CAD".
  const after = signAfter(before ? { ...reading, isPriceField: true } : reading, end);
  if (/^ ?%/.test(folded.slice(end, end + 2))) return null;
  let meaning = before?.meaning ?? null;
  const start = before?.start ?? number.start;
  if (
    after &&
    (!before || (after.isWord && settles(before.meaning, after.meaning) && digitFollows(folded, after.end) === null))
  ) {
    if (!before && /pounds?$/.test(folded.slice(end, after.end)) && arePoundsWeight(folded, start, after.end))
      return null;
    meaning = after.meaning;
    end = after.end;
  }
  const country = before && !after ? countryAfter(reading, end, before.meaning) : null;
  if (country) {
    meaning = { currency: country.currency, shared: [] };
    end = country.end;
  }
  const { value } = meaning ? readNumeral(number, threeDigits(meaning.currency, reading.language)) : first;
  if (value.split('.')[0]!.length > LONGEST_WHOLE) return null;
  const currency = meaning ? withDecimals(meaning, value, reading.expected) : reading.expected;
  const isPrice = meaning !== null || dash !== null;
  // "12.05.2020" by itself is a date, not twelve and five hundredths.
  if (!isPrice && first.end !== number.end) return null;
  return {
    start,
    end,
    value: inThousands ? timesThousand(value) : value,
    currency,
    isPrice,
    isRange: false,
    inThousands,
  };
}

/** Countries as they stand behind a dollar sign and its amount: "$1,850.00 US". */
const COUNTRIES: Record<string, string> = {
  US: 'USD',
  CAN: 'CAD',
  AU: 'AUD',
  AUS: 'AUD',
  NZ: 'NZD',
  HK: 'HKD',
  SG: 'SGD',
};
const COUNTRY_AFTER = fitted('uy')` ?(us|can|aus?|nz|hk|sg)(?![\p{L}\p{N}])`;

function countryAfter({ text, folded }: Reading, end: number, sign: Meaning): { currency: string; end: number } | null {
  const match = matchAt(COUNTRY_AFTER, folded.text, end);
  if (!match) return null;
  const to = end + match[0].length;
  const span = folded.toOriginal(to - match[1]!.length, to);
  const currency = COUNTRIES[text.slice(span.start, span.end)];
  return currency && (sign.shared.includes(currency) || sign.currency === currency) ? { currency, end: to } : null;
}

/** "¥450.50" is no yen, which have no smaller unit: where a sign is shared, decimals tell the currencies apart. */
function withDecimals({ currency, shared }: Meaning, value: string, expected: string | null): string | null {
  if (currency === null || currency === expected || !value.includes('.') || minorUnits(currency) !== 0) return currency;
  const others = shared.filter((code) => minorUnits(code) !== 0);
  return others.length === 1 ? others[0]! : currency;
}

/** "$450 CAD": the code says which of the dollars it is. */
function settles(sign: Meaning, code: Meaning): boolean {
  return code.currency !== null && (sign.currency === code.currency || sign.shared.includes(code.currency));
}

const isYear = ({ value }: Amount) => /^(?:1[5-9]|20)\d\d$/.test(value);

/** "450-500" alone in a price field: no more apart than a seller's hopes, so that "20-417" is none. */
function bareRange(isPriceField: boolean, low: Amount, high: Amount): boolean {
  return isPriceField && !isYear(low) && !isYear(high) && Number(high.value) <= 3 * Number(low.value);
}

const RANGE_WORD = /^(?: ?-{1,2} ?| to | bis | a | and | und | et )$/;

/** "£40-£60", "40 bis 60 Euro": one amount, the lower, where the second is no less and one of them is a price. */
function joinRange(
  folded: string,
  isPriceField: boolean,
  low: Amount & { inThousands: boolean },
  high: Amount & { inThousands: boolean },
): Amount | null {
  const between = folded.slice(low.end, high.start);
  if (!RANGE_WORD.test(between) || !(high.isPrice || low.isPrice || bareRange(isPriceField, low, high))) return null;
  const opened = /(?:between|zwischen|entre|von|from) (?:\p{L}{0,3}\p{Sc} ?)?$/u.test(
    folded.slice(Math.max(0, low.start - 12), low.start),
  );
  if (/and|und|et/.test(between) && !opened) return null;
  if (low.isPrice && high.isPrice && low.currency !== high.currency) return null;
  const value = high.inThousands && !low.inThousands && Number(low.value) < 1000 ? timesThousand(low.value) : low.value;
  if (Number(value) >= Number(high.value)) return null;
  return {
    start: low.start,
    end: high.end,
    value,
    currency: high.isPrice ? high.currency : low.currency,
    isPrice: low.isPrice || high.isPrice,
    isRange: true,
  };
}

/** All numbers of a text that can be amounts, in order, with their currencies; ranges as one. */
export function readAmounts(text: string, folded: Folded, expectation: Expectation): Amount[] {
  const { expected, language, isPriceField } = expectation;
  const reading: Reading = { expected, language, isPriceField, text, folded };
  const singles: (Amount & { inThousands: boolean })[] = [];
  let free = 0;
  for (const number of scanNumerals(folded.text)) {
    if (number.start < free) continue;
    const amount = readAmount(reading, withoutModel(folded.text, number), free);
    if (!amount) continue;
    singles.push(amount);
    free = amount.end;
  }
  const amounts: Amount[] = [];
  for (let at = 0; at < singles.length; at++) {
    const low = singles[at]!;
    const high = singles[at + 1];
    const range = high && joinRange(folded.text, expectation.isPriceField, low, high);
    if (range) at++;
    amounts.push(range ?? low);
  }
  return amounts;
}
