import type { Listing } from '../listing/types';
import type { Knowledge } from '../pack/knowledge';
import { findSerialShapes, findSerials, normaliseSerial } from '../quantity/serials';
import { clauseAt, quoteOf, type TextPart, tokenAt } from './part-text';
import type { SerialClaim } from './reading';
import type { StanceReader } from './stance';

const MOST = 20;

/**
 * Serials that an advert states: in fields of their own, called so in the text, or written in the form of a scheme
 * that some pack knows (letters and digits; digits alone are never taken for a serial without a word that says so).
 */
export function serialsOf(
  listing: Listing,
  parts: readonly TextPart[],
  knowledge: Knowledge,
  stances: ReadonlyMap<TextPart, StanceReader>,
): SerialClaim[] {
  const out: SerialClaim[] = [];
  const add = (claim: SerialClaim): void => {
    const there = out.find((one) => one.normal === claim.normal);
    if (!there && out.length < MOST) out.push(claim);
    else if (there) there.stated ||= claim.stated;
  };
  for (const part of parts) {
    for (const found of findSerials(part.text))
      if (isOfThis(part, found.start, stances))
        add({ ...quoteOf(part, found.start, found.end), normal: found.normal, stated: true });
    for (const found of findSerialShapes(part.text)) {
      const lettered = /^[A-Z]/.test(found.normal) && knowledge.serials.schemesOf(found.normal).length > 0;
      if (lettered && isOfThis(part, found.start, stances))
        add({ ...quoteOf(part, found.start, found.end), normal: found.normal, stated: false });
    }
  }
  for (const written of listing.serials) {
    const normal = normaliseSerial(written);
    if (normal) add({ field: 'serials', quote: written, start: 0, end: written.length, normal, stated: true });
  }
  return out;
}

function isOfThis(part: TextPart, start: number, stances: ReadonlyMap<TextPart, StanceReader>): boolean {
  const token = tokenAt(part, start);
  if (!clauseAt(part, token)) return true;
  const stance = stances.get(part)?.at(token, token);
  return stance?.subject !== 'other';
}
