import { fitted } from '../text/fitted';
import type { Amount } from './money-amounts';
import { followsPriceOnly, namesPrice } from './money-words';
import { isPhoneNumber } from './phones';

const OTHER_UNIT = fitted(
  'u',
)`^ ?(?:%|°|kg|kilos?|g|lbs?|oz|st|mm|cm|m|km|in|inch|inches|ft|feet|foot|"|v|volts?|w|watts?|hz|amps?|rpm|stitch|stitches|years?|yrs?|jahre?|ans|days?|hours?|hrs?|miles?|mins?|minutes?|pieces?|pcs|stuck|bobbins?|needles?|machines?|x(?= ?\d)|er(?!\p{L})|s(?!\p{L})|th|rd|nd|am|pm|uhr|p|pence|cents?|ct|lakh|million|mio|mrd|bn)(?!\p{L})`;
const OTHER_NUMBER = fitted(
  'u',
)`(?:^|[^\p{L}])(?:model|modell|modele|mod|class|klasse|type|typ|no|nr|num|number|nummer|serial|size|grosse|taille|part|lot|item|ref|tel|telephone|phone|call|ring|text|mobile|mob|handy|year|baujahr|circa|made|built|from the)[.: #]*$`;
const YEAR = /^(?:1[5-9]|20)\d\d$/;
const SURELY_PRICE = fitted(
  'u',
)`(?:^|[^\p{L}])(?:asking|(?:kauf|fest)?preis|price|prix|vh?b|offers (?:over|around))(?: (?:is|of|price))*[: ]*$`;
/** What may stand beside a number that looks like a year without making it one. */
const ONLY_NUMBER = fitted('u')`^[^\p{L}\p{N}]*$`;
const LONGEST = 7;

/**
 * In a price field, is the number a price although no currency stands beside it? Not where it is a phone number, a
 * measure, a model, a percentage, or a year among other words.
 */
export function isPlainPrice(folded: string, { start, end, value }: Amount): boolean {
  const before = folded.slice(Math.max(0, start - 40), start);
  const after = folded.slice(end, end + 40);
  if (followsPriceOnly(after)) return true;
  if (/[\p{L}\p{N}#/.,+:-]$/u.test(before) && !/(?:\p{L}[:.]|[ (]-|: ?)$/u.test(before)) return false;
  if (OTHER_UNIT.test(after) || /^[\p{L}\p{N}/-]/u.test(after)) return false;
  const whole = value.split('.')[0]!;
  const written = folded.slice(start, end);
  if (/^0\d/.test(written) || whole.length > LONGEST || isPhoneNumber(folded, start)) return false;
  if (YEAR.test(written)) return ONLY_NUMBER.test(before + after) || SURELY_PRICE.test(before);
  if (namesPrice(before)) return true;
  return !OTHER_NUMBER.test(before);
}
