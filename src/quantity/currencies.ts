const codes = (list: string) => list.split(' ');

/**
 * ISO 4217 alphabetic codes of money in use, by how many decimals their minor unit has. Funds, metals, bond units and
 * test codes are left out: no price is asked in them. Held to a registry package in tests/outside.
 */
const BY_MINOR_UNITS: ReadonlyArray<readonly [number, readonly string[]]> = [
  [0, codes('BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF')],
  [3, codes('BHD IQD JOD KWD LYD OMR TND')],
  [
    2,
    codes(
      'AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP CRC ' +
        'CUC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR ' +
        'JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD ' +
        'NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN ' +
        'SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VED VES WST XCD YER ZAR ZMW ' +
        // Gone since, or new: adverts and older packs still say so.
        'ANG BGN XCG ZWG',
    ),
  ],
];

const MINOR_UNITS = new Map(BY_MINOR_UNITS.flatMap(([digits, list]) => list.map((code) => [code, digits] as const)));

/** The decimals of the currency's minor unit (2 for EUR, 0 for JPY, 3 for KWD), or null for a code not in use. */
export function minorUnits(code: string): number | null {
  return MINOR_UNITS.get(code) ?? null;
}

/** All codes that are read as currencies. */
export function currencyCodes(): string[] {
  return [...MINOR_UNITS.keys()];
}

/** Codes that are read in lower case too. */
const EVERYDAY = new Set(codes('EUR GBP USD CHF AUD NZD SEK NOK DKK PLN CZK HUF JPY ZAR'));
/** Codes that are words: in running text they are money only where the page's own currency says so. */
const WORDS = new Set(codes('ALL BAM BOB COP CUP GEL LAK MAD MOP PEN RON SOS TOP TRY ANG CAD LEK'));

/**
 * The currency that letters name as a code, or null. In running text, codes that are words ("ALL 3 bobbins") count
 * only where they are the currency expected.
 */
export function currencyOfCode(written: string, isPriceField: boolean, expected: string | null): string | null {
  const code = written.toUpperCase();
  if (!MINOR_UNITS.has(code)) return null;
  if (written !== code && !EVERYDAY.has(code)) return null;
  return WORDS.has(code) && !isPriceField && code !== expected ? null : code;
}
