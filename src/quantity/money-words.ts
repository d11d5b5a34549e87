import { fitted } from '../text/fitted';
import type { Money } from './types';

// All patterns here are tried on a short stretch of folded text beside an amount, never on a whole page.

const FROM = fitted(
  'u',
)`(?:^|[^\p{L}])(?:from|ab|starting (?:at|from)|prices? from|a partir de|between|zwischen|entre)(?: only| nur)?[: ]*$`;
const BID = fitted(
  'u',
)`(?:^|[^\p{L}])(?:bids?|gebote?|startgebot|mindestgebot|hochstgebot|startpreis|starting price|encheres?|mise a prix)(?: (?:is|of|at|from|now|currently|so far|von|ab|liegt bei|de|actuelle))*[: ]*$`;
const BID_AFTER = fitted(
  'u',
)`^ {0,2}\(?(?:(?:starting|current|opening|minimum|highest) )?(?:bids?|gebot|startgebot|enchere)(?!\p{L})`;
const SOLD = fitted(
  'u',
)`(?:^|[^\p{L}])(?:sold|verkauft|vendue?s?|hammer price|zuschlag)(?: (?:for|at|fur|um|pour|a|bei|price))*[: ]*$`;
const SOLD_AFTER = fitted('u')`^ {0,2}\(?(?:sold|verkauft|vendue?)(?!\p{L})(?! (?:as|wie))`;
const TO_BE_SOLD = fitted('u')`(?:^|[^\p{L}])(?:be|being|to be|not|get|getting) sold(?: (?:for|at))*[: ]*$`;

/** How an amount is meant, by the folded words right before and after it. */
export function howMeant(before: string, after: string): Money['how'] {
  if (BID.test(before) || BID_AFTER.test(after)) return 'bid';
  if ((SOLD.test(before) && !TO_BE_SOLD.test(before)) || SOLD_AFTER.test(after)) return 'sold';
  return FROM.test(before) ? 'from' : 'asking';
}

const OPEN_TO_OFFERS =
  'o\\.?n\\.?o|o\\.?v\\.?n\\.?o|o\\.?b\\.?o|o\\.?i\\.?r\\.?o|v\\.?h?\\.?b|or (?:very )?near(?:est)? offer|or (?:best|nearest) offer|(?:or )?offers?' +
  '|verhandlungsbasis|verhandlungssache|verhandelbar|negotiable|neg|a debattre|negociable|ou offre';
const OFFERS_AFTER = fitted('u')`^[ ,(/-]{0,4}(?:price )?(?:${OPEN_TO_OFFERS})(?!\p{L})`;
const OFFERS_BEFORE = fitted(
  'u',
)`(?:^|[^\p{L}])(?:vh?b|v\.h?\.?b\.?|verhandlungsbasis|offers (?:around|over|near|in the region of)|oiro)[:. ]*$`;

/** May the price be argued about, by the words right beside it? */
export function isNegotiable(before: string, after: string): boolean {
  return OFFERS_AFTER.test(after) || OFFERS_BEFORE.test(before);
}

const BEFORE_NUMBER_ONLY = fitted('u')`^ ?\(?(?:o\.?n\.?o|o\.?v\.?n\.?o|o\.?b\.?o|v\.?h?\.?b)(?!\p{L})`;

/** "450 VB", "450 ono": words that only ever stand after a price. */
export function followsPriceOnly(after: string): boolean {
  return BEFORE_NUMBER_ONLY.test(after);
}

const PRICE_WORD = fitted(
  'u',
)`(?:^|[^\p{L}])(?:asking|price|preis|kaufpreis|sofortkauf|festpreis|fp|vh?b|verhandlungsbasis|prix|buy it now|only|just|nur|now|jetzt|for|fur|pour|offers (?:over|around))(?: (?:price|is|of|now|at|for|only|nur|ist|liegt bei|de|est|von|ca|approx|around|about|fest))*[.: ]*$`;

/** "asking 450", "Preis: 450": in a price field, words that make a bare number the price. */
export function namesPrice(before: string): boolean {
  return PRICE_WORD.test(before) || howMeant(before, '') !== 'asking';
}

const SECONDARY = fitted(
  'u',
)`(?:^|[^\p{L}])(?:was|were|statt|rrp|r\.r\.p\.|uvp|np|neupreis|originalpreis|instead of|au lieu de|originally|cost me|cost new|cost|paid|bezahlt|postage|post|delivery|shipping|courier|carriage|versand|versandkosten|porto|livraison|frais de port|p&p|p \+ p|deposit|anzahlung|plus|zzgl|worth|wert|valued at|valeur|save|reduced from)(?: (?:is|of|at|for|from|new|by|von|in hohe von|me|extra|costs?|will be|would be|around|about))*[.: ]*$|\+ ?$`;
const SECONDARY_AFTER = fitted(
  'u',
)`^ ?(?:for |fur |pour )?(?:(?:postage|post|delivery|shipping|courier|p&p|versand|porto|livraison|deposit|extra)(?= ?(?:[,.;!)+\n]|$))|off(?!\p{L})|discount|rabatt|per (?:km|mile|hour|week|month)|\/ ?(?:km|mile|hour|h)(?!\p{L}))`;

/** Is it another amount than the price: what it was, what it cost new, what sending costs? */
export function isSecondary(before: string, after: string): boolean {
  return namesOther(before) || SECONDARY_AFTER.test(after);
}

/** "RRP £200", "Versand 5 €": the words before it say that it is not the price. */
export function namesOther(before: string): boolean {
  return SECONDARY.test(before);
}

const NOW = fitted('u')`(?:^|[^\p{L}])(?:now|now only|reduced to|jetzt|jetzt nur|maintenant)[: ]*$`;

/** "was £60, now £40": the word that says which of several prices holds. */
export function isCurrent(before: string): boolean {
  return NOW.test(before);
}

const FREE = fitted(
  'u',
)`(?:^|[^\p{L}])(?:free(?! (?:delivery|postage|post|p&p|shipping|local|arm|motion|returns?|uk|courier|of|from|hand|case|gift|bobbins?))|for nothing|giveaway|gratis|gratuite?|umsonst|kostenlos|geschenkt|zu verschenken|a donner)(?!\p{L}|-)`;

/** Where a price field says that the thing costs nothing: the folded span of the word, or null. */
export function findFree(folded: string): { start: number; end: number } | null {
  const match = FREE.exec(folded);
  if (!match) return null;
  const lead = /^[^\p{L}]/u.test(match[0]) ? 1 : 0;
  return { start: match.index + lead, end: match.index + match[0].length };
}
