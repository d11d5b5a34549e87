import type { Knowledge } from '../pack/knowledge';
import { normaliseSerial } from '../quantity/serials';
import { standsAlone } from './bare-numbers';
import { isOtherNumber } from './other-numbers';
import { quoteOf, type TextPart } from './part-text';
import type { SerialClaim } from './reading';

/**
 * Digits alone in groups of any length ("37 21 18"), as they are read off a plate; by threes they are read anyway. Letters
 * before them would belong to them.
 */
const SPACED =
  /(?<![\p{L}\p{N}\p{Sc}]|(?<!\p{L})\p{Lu}{1,3}[ -]|[\p{N}\p{Sc}][ .,/-])\d{1,4}(?:\p{Zs}\d{1,4}){1,4}(?![\p{L}\p{N}]|[.,/-]\d|\p{Zs}?[\d\p{Sc}%])/gu;
const FEWEST_DIGITS = 5;
/** A year beside a count is none of it: "1954 12 bobbins". */
const YEAR = /(?:^|\p{Zs})(?:1[5-9]|20)\d\d(?:\p{Zs}|$)/u;

/**
 * Numbers that a seller parted as he read them: a serial only where all of it together lies in an allotted run of a pack
 * that covers the advert. Whether words call it the number, the caller asks.
 */
export function spacedNumbers(part: TextPart, knowledge: Knowledge, covering: ReadonlySet<string>): SerialClaim[] {
  const claims: SerialClaim[] = [];
  for (const { index, 0: written } of part.text.matchAll(SPACED)) {
    const normal = normaliseSerial(written);
    const end = index + written.length;
    if (normal.length < FEWEST_DIGITS || YEAR.test(written)) continue;
    if (isOtherNumber(part, index) || !standsAlone(part, index, end)) continue;
    if (knowledge.serials.find(normal).some(({ pack }) => covering.has(pack)))
      claims.push({ ...quoteOf(part, index, end), normal, stated: true });
  }
  return claims;
}
