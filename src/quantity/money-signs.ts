import { currencyOfCode } from './currencies';

/** A sign or word for money: what it means by itself, and what else it means where that is expected. */
interface Sign {
  usual: string | null;
  also: readonly string[];
}

const list = (text: string) => text.split(' ');
const DOLLARS = list(
  'USD CAD AUD NZD HKD SGD TWD MXN CLP COP ARS UYU DOP CUP NIO BBD BMD BND BSD BZD FJD GYD JMD KYD LRD NAD SBD SRD TTD XCD',
);
const CROWNS = list('SEK NOK DKK ISK CZK');
const POUNDS = list('GBP EGP FKP GIP LBP SDG SHP SSP SYP');
const FRANCS = list('CHF BIF CDF DJF GNF KMF RWF XAF XOF XPF');
const RUPEES = list('INR PKR LKR NPR MUR SCR');
const PESOS = list('MXN CLP COP ARS UYU PHP DOP CUP');

const one = (currency: string): Sign => ({ usual: currency, also: [] });
const oneOf = (usual: string | null, also: readonly string[]): Sign => ({ usual, also });

/** Folded signs and words -> what they mean. Signs that several currencies share mean none unless one is expected. */
const SIGNS = new Map<string, Sign>([
  ['€', one('EUR')],
  ['£', oneOf('GBP', POUNDS)],
  ['$', oneOf(null, DOLLARS)],
  ['¥', oneOf('JPY', ['JPY', 'CNY'])],
  ...Object.entries({
    us$: 'USD',
    u$s: 'USD',
    usd$: 'USD',
    a$: 'AUD',
    au$: 'AUD',
    aud$: 'AUD',
    c$: 'CAD',
    ca$: 'CAD',
    can$: 'CAD',
    cad$: 'CAD',
    cdn$: 'CAD',
    nz$: 'NZD',
    hk$: 'HKD',
    s$: 'SGD',
    sg$: 'SGD',
    nt$: 'TWD',
    r$: 'BRL',
    mx$: 'MXN',
    mex$: 'MXN',
    ar$: 'ARS',
    cl$: 'CLP',
    clp$: 'CLP',
    co$: 'COP',
    col$: 'COP',
    cop$: 'COP',
    $us: 'USD',
    $ca: 'CAD',
    $au: 'AUD',
    $nz: 'NZD',
    $hk: 'HKD',
    $sg: 'SGD',
    $mx: 'MXN',
    $ar: 'ARS',
    $cl: 'CLP',
    $co: 'COP',
    '£gb': 'GBP',
    '£e': 'EGP',
    'cn¥': 'CNY',
    'jp¥': 'JPY',
    'e£': 'EGP',
    '₹': 'INR',
    '₽': 'RUB',
    '₺': 'TRY',
    '₩': 'KRW',
    '₪': 'ILS',
    '₫': 'VND',
    '₴': 'UAH',
    '₦': 'NGN',
    '₱': 'PHP',
    '₡': 'CRC',
    '₲': 'PYG',
    '₸': 'KZT',
    '₮': 'MNT',
    '₵': 'GHS',
    '฿': 'THB',
    '₭': 'LAK',
    '៛': 'KHR',
    '₼': 'AZN',
    '₾': 'GEL',
    '֏': 'AMD',
    '৳': 'BDT',
  }).map(([sign, currency]): [string, Sign] => [sign, one(currency)]),
]);

const WORDS = new Map<string, Sign>([
  ...list('euro euros eur').map((word): [string, Sign] => [word, one('EUR')]),
  ...list('quid sterling').map((word): [string, Sign] => [word, one('GBP')]),
  ...list('pound pounds').map((word): [string, Sign] => [word, oneOf('GBP', POUNDS)]),
  ...list('dollar dollars bucks').map((word): [string, Sign] => [word, oneOf(null, DOLLARS)]),
  ...list('kr krona kronor krone kroner kronur').map((word): [string, Sign] => [word, oneOf(null, CROWNS)]),
  ...list('sfr franken stutz').map((word): [string, Sign] => [word, one('CHF')]),
  ...list('franc francs').map((word): [string, Sign] => [word, oneOf(null, FRANCS)]),
  ...list('rs rupee rupees').map((word): [string, Sign] => [word, oneOf(null, RUPEES)]),
  ...list('peso pesos').map((word): [string, Sign] => [word, oneOf(null, PESOS)]),
  ...list('zl zloty zlotych zlote').map((word): [string, Sign] => [word, one('PLN')]),
  ...list('kc korun koruny').map((word): [string, Sign] => [word, one('CZK')]),
  ...list('円 yen').map((word): [string, Sign] => [word, one('JPY')]),
  ...list('元 yuan rmb').map((word): [string, Sign] => [word, one('CNY')]),
  ...list('руб рублей').map((word): [string, Sign] => [word, one('RUB')]),
  ...list('грн гривень').map((word): [string, Sign] => [word, one('UAH')]),
  ['лв', one('BGN')],
  ...list('тг тенге').map((word): [string, Sign] => [word, one('KZT')]),
  ...list('дин динара').map((word): [string, Sign] => [word, one('RSD')]),
  ['ден', one('MKD')],
  ['lei', one('RON')],
  ['forint', one('HUF')],
]);

/** Short words that are money only where that currency is expected: "Ft" is feet, "R" and "Fr" are much else. */
const EXPECTED_ONLY = new Map<string, readonly string[]>([
  ['ft', ['HUF']],
  ['r', ['ZAR']],
  ['fr', ['CHF', ...FRANCS]],
  ['f', FRANCS],
  ['tl', ['TRY']],
  ['rm', ['MYR']],
  ['rp', ['IDR']],
  ['din', ['RSD']],
  ['р', ['RUB']],
  ['₨', RUPEES],
  ['le', ['EGP']],
]);

/** Words that stand after a number, never before it. */
const AFTER_ONLY = new Set(
  list('quid pound pounds sterling dollar dollars bucks francs rupees yen yuan lei korun 円 元'),
);

/** May this word for money stand before its number ("Euro 120", "kr 450")? */
export function mayComeFirst(folded: string): boolean {
  return !AFTER_ONLY.has(folded);
}

/** Named dollars: "US dollars". */
const NAMED_DOLLARS = new Map([
  ['us', 'USD'],
  ['american', 'USD'],
  ['canadian', 'CAD'],
  ['australian', 'AUD'],
  ['aussie', 'AUD'],
  ['singapore', 'SGD'],
]);

/** What a sign or word was found to mean; `shared`: it could be several currencies, so that a code beside it settles it. */
export interface Meaning {
  currency: string | null;
  shared: readonly string[];
}

function settle(sign: Sign, expected: string | null): Meaning {
  const currency = expected !== null && sign.also.includes(expected) ? expected : sign.usual;
  return { currency, shared: sign.also };
}

/** A sign such as "£" or "US$" (folded), or null. */
export function meaningOfSign(folded: string, expected: string | null): Meaning | null {
  const sign = SIGNS.get(folded);
  return sign ? settle(sign, expected) : null;
}

/** A word or code for money, or null. `written` keeps the case, which codes are told by. */
export function meaningOfWord(
  folded: string,
  written: string,
  isPriceField: boolean,
  expected: string | null,
): Meaning | null {
  const word = WORDS.get(folded);
  if (word) return settle(word, expected);
  const limited = EXPECTED_ONLY.get(folded);
  if (limited && expected !== null && limited.includes(expected)) return { currency: expected, shared: [] };
  const code = currencyOfCode(written, isPriceField, expected);
  return code === null ? null : { currency: code, shared: [] };
}

/** "US dollars" and their like: the adjective before a word for dollars. */
export function namedDollar(adjective: string): string | null {
  return NAMED_DOLLARS.get(adjective) ?? null;
}
