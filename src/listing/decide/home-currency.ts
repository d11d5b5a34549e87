/** Currencies of countries (ISO 4217 by ISO 3166): those where a sign such as "$" or "kr" leaves the currency open. */
const OF_COUNTRY = new Map(
  Object.entries({
    us: 'USD',
    ca: 'CAD',
    au: 'AUD',
    nz: 'NZD',
    sg: 'SGD',
    hk: 'HKD',
    mx: 'MXN',
    ar: 'ARS',
    cl: 'CLP',
    co: 'COP',
    br: 'BRL',
    gb: 'GBP',
    uk: 'GBP',
    ch: 'CHF',
    li: 'CHF',
    se: 'SEK',
    no: 'NOK',
    dk: 'DKK',
    is: 'ISK',
    cz: 'CZK',
    pl: 'PLN',
    hu: 'HUF',
    in: 'INR',
    za: 'ZAR',
    usa: 'USD',
    'united states': 'USD',
    canada: 'CAD',
    australia: 'AUD',
    'new zealand': 'NZD',
  }),
);

/** Languages of one country, or of one that has such a sign. */
const OF_LANGUAGE = new Map(
  Object.entries({
    sv: 'SEK',
    nb: 'NOK',
    nn: 'NOK',
    no: 'NOK',
    da: 'DKK',
    is: 'ISK',
    cs: 'CZK',
    pl: 'PLN',
    hu: 'HUF',
  }),
);

/**
 * The country that an address names in its path: with a language ("/en-ca/"), or by itself where it is no other word's
 * abbreviation ("/ca/" may be a state).
 */
const IN_PATH = /^https?:\/\/[^/]+\/(?:[a-z]{2}[-_]([a-z]{2})|(us|au|nz|sg|hk|mx))(?:[/?#]|$)/i;

/**
 * The currency that a page's readers take a sign for that several share, or null: by the country of its language tag
 * (BCP 47, "de-ch"), its language, or the country of its host; else by the `countries` that it says it is in, or the
 * advert is, its address names, or the `currency` that it names for machines. Null too where these are at odds: a
 * template's "en-us" over an address elsewhere.
 */
export function homeCurrency(
  language: string | null,
  url: string | null,
  countries: readonly string[] = [],
  currency: string | null = null,
): string | null {
  const [, beside, alone] = IN_PATH.exec(url ?? '') ?? [];
  const stated = new Set(
    [...countries, beside ?? alone ?? ''].flatMap((country) => OF_COUNTRY.get(country.toLowerCase()) ?? []),
  );
  if (currency) stated.add(currency);
  const [tongue = '', ...parts] = (language ?? '').toLowerCase().split('-');
  const region = parts.find((part) => /^[a-z]{2}$/.test(part));
  const country = /^https?:\/\/[^/:]*\.([a-z]{2})(?:[/:]|$)/i.exec(url ?? '')?.[1]?.toLowerCase() ?? '';
  const own = region ? OF_COUNTRY.get(region) : (OF_LANGUAGE.get(tongue) ?? OF_COUNTRY.get(country));
  const [first = null] = stated;
  if (own === undefined) return (region && !currency) || stated.size > 1 ? null : first;
  return stated.size === 0 || stated.has(own) ? own : null;
}
