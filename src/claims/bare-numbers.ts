import type { Knowledge } from '../pack/knowledge';
import { findSerialShapes } from '../quantity/serials';
import { isOtherNumber } from './other-numbers';
import { clauseAt, quoteOf, type TextPart, tokenAt } from './part-text';
import type { SerialClaim } from './reading';

/** What may follow such a number; before any other word it counts something ("123456 happy customers"). */
const FOLLOWS = new Set(
  (
    'stamped engraved my i it its she he was is on at by under underneath inside outside below behind right left in so which that this says puts makes means dates from and as ' +
    'works working sews needs with has comes eingeschlagen eingestanzt gestempelt ist auf am an unter hinter laut also und mit aus ' +
    'grave gravee frappe est sur sous dans derriere donc et avec de selon'
  ).split(' '),
);
/** Words that make a number one to be rung. */
const RUNG = new Set(
  'call ring text whatsapp sms contact reach message anrufen anruf rufen appeler appelez'.split(' '),
);

/** Shorter numbers are too easily counts, years or prices. */
const FEWEST_DIGITS = 5;

/**
 * Digits alone that no word calls a number ("214532 stamped by the pillar"): a serial only where they lie in an
 * allotted run of a pack whose maker, family or model the advert names. The last resort, where nothing else is one.
 * @param named from `packsNamed`
 */
export function bareNumbers(
  parts: readonly TextPart[],
  knowledge: Knowledge,
  covering: ReadonlySet<string>,
  named: ReadonlySet<string>,
): { part: TextPart; claim: SerialClaim }[] {
  return parts.flatMap((part) =>
    findSerialShapes(part.text)
      .filter(({ normal }) => /^\d+$/.test(normal) && normal.length >= FEWEST_DIGITS)
      .filter(({ start, end }) => !isOtherNumber(part, start) && standsAlone(part, start, end))
      .filter(({ normal }) => knowledge.serials.find(normal).some(({ pack }) => covering.has(pack) && named.has(pack)))
      .map(({ start, end, normal }) => ({ part, claim: { ...quoteOf(part, start, end), normal, stated: false } })),
  );
}

/** Nothing behind it is what it counts, and nobody is asked to ring it. */
export function standsAlone(part: TextPart, start: number, end: number): boolean {
  const next = part.tokens[tokenAt(part, end)];
  if (next?.kind === 'word' && !FOLLOWS.has(next.folded)) return false;
  const clause = clauseAt(part, tokenAt(part, start));
  return !clause?.tokens.some(({ folded }) => RUNG.has(folded));
}
