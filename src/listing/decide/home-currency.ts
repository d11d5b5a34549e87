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
 * The currency that a page's readers take a sign for that several share, or null: by the country of its language tag
 * (BCP 47, "de-ch"), its language, or the country of its host.
 */
export function homeCurrency(language: string | null, url: string | null): string | null {
  const [tongue = '', ...parts] = (language ?? '').toLowerCase().split('-');
  const region = parts.find((part) => /^[a-z]{2}$/.test(part));
  if (region) return OF_COUNTRY.get(region) ?? null;
  const country = /^https?:\/\/[^/:]*\.([a-z]{2})(?:[/:]|$)/i.exec(url ?? '')?.[1]?.toLowerCase() ?? '';
  return OF_LANGUAGE.get(tongue) ?? OF_COUNTRY.get(country) ?? null;
}
