import { byWords } from '../../text/by-words';

/** Names of elements that hold a price. English; German; French; Dutch; Italian; Spanish; Nordic; Polish, Czech; Finnish. */
const PRICE_WORDS = byWords(
  /\b(?:prix|pris|cena|preco|hinta|amount|amt|bedrag|importe|importo|montant|betrag|sum|somme|summa|cifra|cost|euro|valor)\b/,
);
const WITHIN = /price|preis|prijs|precio|prezzo/;
export const PRICE_NAMES = { test: (names: string): boolean => WITHIN.test(names) || PRICE_WORDS.test(names) };
/** Names of what it was or would cost otherwise: where nothing else stands there, of what it costs. */
const OLD_WORDS = byWords(/\b(?:old|was|before|regular|original|list-price|price-list)\b/);
const OLD_WITHIN = /(?:old|was)-?price|price-?(?:old|was)/;
export const OLD_NAMES = { test: (names: string): boolean => OLD_WORDS.test(names) || OLD_WITHIN.test(names) };
/** Names of amounts that are no price: what is saved or compared, postage, instalments. */
export const OTHER_NAMES = byWords(
  /\b(?:compare|save|savings?|discount|retail|strike\w*|struck|crossed|uvp|rrp|msrp|alt|alter|vecchio|viejo|anterior|precedente|listino|ancien|barre|tachado|shipping|delivery|postage|versand|livraison|frakt|fragt|instal?lments?|monthly|finan\w*|fees?|(?:excl|excluding|without)-(?:tax|vat)|tax-excl\w*|estimate|estimation|approx|converted)\b/,
);
