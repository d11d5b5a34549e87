import { createRequire } from 'node:module';
import cldr from 'cldr-numbers-full/package.json';
import { describe, expect, it } from 'vitest';
import { minorUnits } from '../../src/quantity/currencies';
import { findMoney, readMoney } from '../../src/quantity/money';

/**
 * Unicode CLDR 48: number symbols, currency patterns and currency signs from the npm package cldr-numbers-full 48.2.0
 * (Unicode-3.0 licence). Amounts are laid out here by those patterns (UTS 35, part 3: number patterns), and again by
 * the runtime's own Intl.NumberFormat, whose CLDR is an older one; both must be read back.
 */
interface Numbers {
  defaultNumberingSystem: string;
  minimumGroupingDigits: string;
  currencies: Record<string, { symbol?: string }>;
  [key: `symbols-numberSystem-${string}`]: Record<string, string>;
  [key: `currencyFormats-numberSystem-${string}`]: {
    standard: string;
    currencySpacing: { beforeCurrency: { insertBetween: string }; afterCurrency: { insertBetween: string } };
  };
}

const load = createRequire(import.meta.url);

function numbersOf(locale: string): Numbers {
  const main = load(`cldr-numbers-full/main/${locale}/numbers.json`).main[locale].numbers;
  const { currencies } = load(`cldr-numbers-full/main/${locale}/currencies.json`).main[locale].numbers;
  return { ...main, currencies };
}

function group(whole: string, pattern: string, separator: string, fewest: number): string {
  const sizes = pattern
    .split('.')[0]!
    .split(',')
    .slice(1)
    .map((part) => part.replace(/[^#0]/g, '').length);
  const primary = sizes.at(-1);
  if (!primary || whole.length < primary + fewest) return whole;
  const secondary = sizes.length > 1 ? sizes.at(-2)! : primary;
  const groups = [whole.slice(-primary)];
  for (let rest = whole.slice(0, -primary); rest; rest = rest.slice(0, -secondary))
    groups.unshift(rest.slice(-secondary));
  return groups.join(separator);
}

/** The amount by the locale's standard currency pattern, in Latin digits. */
function layOut(locale: string, amount: string, currency: string): string {
  const numbers = numbersOf(locale);
  const symbols =
    numbers['symbols-numberSystem-latn'] ?? numbers[`symbols-numberSystem-${numbers.defaultNumberingSystem}`]!;
  const { standard, currencySpacing } = numbers['currencyFormats-numberSystem-latn']!;
  const pattern = standard.split(';')[0]!;
  const decimalSign = symbols.currencyDecimal ?? symbols.decimal!;
  const groupSign = symbols.currencyGroup ?? symbols.group!;
  const [whole, decimals] = amount.split('.') as [string, string?];
  const number =
    group(whole, pattern, groupSign, Number(numbers.minimumGroupingDigits)) + (decimals ? decimalSign + decimals : '');
  const sign = numbers.currencies[currency]?.symbol ?? currency;
  const isLetter = (character: string) => /[^\p{S}\p{Z}]/u.test(character);
  const body = pattern.replace(/[#0.,]+/, number);
  const at = body.indexOf('¤');
  // UTS 35: a currency that ends in a letter is kept apart from the digits.
  const before =
    at > 0 && /\d/.test(body[at - 1]!) && isLetter(sign[0]!) ? currencySpacing.beforeCurrency.insertBetween : '';
  const after =
    /\d/.test(body[at + 1] ?? '') && isLetter(sign.at(-1)!) ? currencySpacing.afterCurrency.insertBetween : '';
  return body.replace('¤', `${before}${sign}${after}`);
}

const LOCALES: [locale: string, currencies: string[]][] = [
  ['en', ['USD', 'GBP', 'EUR']],
  ['en-GB', ['GBP', 'EUR', 'USD']],
  ['en-IE', ['EUR', 'GBP']],
  ['en-CA', ['CAD', 'USD']],
  ['en-AU', ['AUD', 'USD', 'GBP']],
  ['en-NZ', ['NZD']],
  ['en-IN', ['INR']],
  ['en-ZA', ['ZAR', 'EUR']],
  ['de', ['EUR', 'CHF', 'USD', 'GBP']],
  ['de-AT', ['EUR']],
  ['de-CH', ['CHF', 'EUR']],
  ['fr', ['EUR', 'USD', 'CAD', 'GBP']],
  ['fr-CH', ['CHF']],
  ['fr-CA', ['CAD', 'USD', 'AUD', 'GBP']],
  ['es', ['EUR']],
  ['es-MX', ['MXN', 'USD']],
  ['es-CL', ['CLP']],
  ['es-CO', ['COP']],
  ['es-AR', ['ARS']],
  ['it', ['EUR']],
  ['nl', ['EUR']],
  ['pt', ['BRL', 'EUR']],
  ['pt-PT', ['EUR']],
  ['sv', ['SEK', 'EUR']],
  ['da', ['DKK']],
  ['nb', ['NOK']],
  ['is', ['ISK']],
  ['fi', ['EUR']],
  ['pl', ['PLN', 'EUR']],
  ['cs', ['CZK', 'EUR']],
  ['hu', ['HUF']],
  ['ro', ['RON']],
  ['bg', ['EUR']],
  ['el', ['EUR']],
  ['ru', ['RUB']],
  ['uk', ['UAH']],
  ['tr', ['TRY', 'EUR']],
  ['he', ['ILS']],
  ['hi', ['INR']],
  ['bn', ['BDT']],
  ['ja', ['JPY', 'USD']],
  ['zh', ['CNY', 'JPY']],
  ['ko', ['KRW']],
  ['th', ['THB']],
  ['vi', ['VND']],
  ['id', ['IDR']],
  ['lv', ['EUR']],
  ['en', ['KWD', 'TND']],
  ['fr', ['TND']],
  ['ar-KW', ['KWD']],
  ['fa', ['IRR']],
  ['am', ['ETB']],
];

/** Left out, with why; tested below to be unread still, so that this list can't outlive its reasons. */
const LEFT_OUT = [
  { locale: 'ar-KW', currency: 'KWD', why: 'Arabic names of currencies, abbreviated with full stops, are not read' },
  { locale: 'fa', currency: 'IRR', why: 'the rial is a word here, which is not read' },
  { locale: 'am', currency: 'ETB', why: 'the birr is a word here, which is not read' },
];
/** Left out only where nothing is known of the page. */
const ONLY_WHERE_EXPECTED = new Map([['HUF', '"Ft" is feet to a reader who does not expect forints']]);

const AMOUNTS = ['5', '45', '450', '1340', '12500', '120000', '1234567'];
const CENTS = ['00', '50', '99', '05'];

function amountsIn(currency: string): string[] {
  const digits = minorUnits(currency)!;
  if (digits === 0) return AMOUNTS;
  const cents = CENTS.map((cent) => cent.padEnd(digits, '0'));
  return AMOUNTS.flatMap((amount) => cents.map((cent) => `${amount}.${cent}`));
}

const isLeftOut = (locale: string, currency: string) =>
  LEFT_OUT.some((one) => one.locale === locale && one.currency === currency);
const CASES = LOCALES.flatMap(([locale, currencies]) =>
  currencies.filter((currency) => !isLeftOut(locale, currency)).map((currency) => ({ locale, currency })),
);

const viaIntl = (locale: string, amount: string, currency: string) =>
  new Intl.NumberFormat(locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: minorUnits(currency)!,
    maximumFractionDigits: minorUnits(currency)!,
  }).format(amount as unknown as number);

describe('CLDR currency formats', () => {
  it('are those of the version named above', () => {
    expect([cldr.version, cldr.cldrVersion]).toEqual(['48.2.0', '48']);
  });

  it('are of more than twenty locales', () => {
    expect(new Set(CASES.map(({ locale }) => locale)).size).toBeGreaterThan(20);
  });

  it.each(CASES)('$locale, $currency: laid out by the patterns, read back', ({ locale, currency }) => {
    for (const amount of amountsIn(currency)) {
      const text = layOut(locale, amount, currency);
      const read = readMoney(text, { currency, language: locale });
      expect({ text, amount: read?.amount, currency: read?.currency }).toEqual({ text, amount, currency });
      // In running text too, between other words.
      const found = findMoney(`abc ${text} xyz`, { currency, language: locale });
      expect({ text, found: found.map((money) => money.amount) }).toEqual({ text, found: [amount] });
    }
  });

  it.each(CASES)('$locale, $currency: laid out by the runtime, read back', ({ locale, currency }) => {
    for (const amount of amountsIn(currency)) {
      const text = viaIntl(locale, amount, currency);
      const read = readMoney(text, { currency, language: locale });
      expect({ text, amount: read?.amount, currency: read?.currency }).toEqual({ text, amount, currency });
    }
  });

  const plain = CASES.filter(({ currency }) => !ONLY_WHERE_EXPECTED.has(currency));
  it.each(plain)('$locale, $currency: a reader that knows nothing of the page', ({ locale, currency }) => {
    // Three decimals can't be told from thousands without knowing the language.
    if (minorUnits(currency) === 3 && locale !== 'en') return;
    for (const amount of amountsIn(currency)) {
      const text = layOut(locale, amount, currency);
      const read = readMoney(text);
      expect({ text, amount: read?.amount }).toEqual({ text, amount });
      // The currency is right, or left open: never another one.
      expect([currency, null]).toContain(read!.currency);
    }
  });

  it.each(LEFT_OUT)('$locale, $currency: left out, because $why', ({ locale, currency }) => {
    const texts = amountsIn(currency).map((amount) => layOut(locale, amount, currency));
    expect(texts.flatMap((text) => findMoney(text, { currency, language: locale }))).toEqual([]);
  });

  it.each([...ONLY_WHERE_EXPECTED])('%s: left out where nothing is known of the page, because %s', (currency) => {
    const { locale } = CASES.find((one) => one.currency === currency)!;
    expect(readMoney(layOut(locale, '450.00', currency))).toBeNull();
  });
});
