import type { AttributeKnown } from '../pack/knowledge';
import { findLengths, findWeights } from '../quantity/measures';
import type { Measure } from '../quantity/types';
import { LENGTHS } from '../quantity/units';
import { fold } from '../text/fold';
import { boundOf } from './bounds';
import { beginningWithin, ofKind } from './hits';
import { ofAnother } from './other-thing';
import { type ClauseRange, clauseAt, FARTHEST, type TextPart, tokenAt } from './part-text';
import type { MeasureClaim } from './reading';
import type { StanceOf } from './stance';
import { stancedQuote } from './stanced-quote';
import { bracketed } from './subject';
import type { PartReading } from './values';
import { otherWeighed } from './weight-subject';

/** Words by which more than the head was on the scale. */
const WITH_MORE = new Set(
  'packing packaging packed wrapped crate verpackung verpackt karton emballage emballe carton valise mallette plateau pietement accessoires couvercle pallet palette case cased cabinet table base lid treadle box total altogether everything koffer haube tisch schrank gesamt coffret meuble table total'.split(
    ' ',
  ),
);

const HEAD_ALONE =
  /\b(?:head|machine|kopf|maschine|tete)(?: unit)? (?:alone|only|by itself|on its own|allein|seule|nue)\b|\b(?:bare|just the|only the|nur der|nackte) (?:head|kopf)\b/;

/** In tokens: as far from a weight as a word for more on the scale is said of it. */
const WITHIN = 6;
const WITHOUT = new Set('without no not excluding excl minus ohne sans hors out'.split(' '));
const OFF = new Set('off removed'.split(' '));

/** Stated weights and lengths, each with the attribute it speaks of and whether more than the thing was weighed. */
export function measuresIn(
  reading: PartReading,
  attributes: readonly AttributeKnown[],
  language: string | null,
): MeasureClaim[] {
  const { part } = reading;
  const weights = attributes.filter(isWeight);
  const out: MeasureClaim[] = [];
  for (const measure of findWeights(part.text, { language }))
    for (const attribute of weights) out.push(claimOf(reading, measure, attribute));
  for (const measure of findLengths(part.text, { language })) {
    const attribute = lengthMeant(reading, measure);
    if (attribute) out.push(claimOf(reading, measure, attribute));
  }
  return out;
}

/** How many millimetres the unit of an attribute is, or null where it is of no length. */
function inMillimetres({ def }: AttributeKnown): number | null {
  return def.kind === 'measure' ? (LENGTHS.get(fold(def.unit).text)?.size ?? null) : null;
}

function isWeight({ def }: AttributeKnown): boolean {
  return def.kind === 'measure' && def.unit === 'kg';
}

/** A length is of an attribute only where that attribute's words stand in the same clause. */
function lengthMeant({ part, hits }: PartReading, measure: Measure): AttributeKnown | null {
  const clause = clauseAt(part, tokenAt(part, measure.start));
  if (!clause) return null;
  const { first, last } = around(clause, tokenAt(part, measure.start));
  const hit = ofKind(beginningWithin(hits, first, last), 'measured').find(
    (one) => one.lastToken <= clause.last && inMillimetres(one.value.attribute) !== null,
  );
  return hit?.value.attribute ?? null;
}

/** Of a clause, the tokens that can have to do with one of it. */
function around({ first, last }: ClauseRange, token: number): { first: number; last: number } {
  return { first: Math.max(first, token - FARTHEST), last: Math.min(last, token + FARTHEST) };
}

function claimOf(reading: PartReading, measure: Measure, attribute: AttributeKnown): MeasureClaim {
  const { part, stances } = reading;
  const first = tokenAt(part, measure.start);
  const last = tokenAt(part, measure.end - 1);
  const clause = clauseAt(part, first);
  const near = clause && around(clause, first);
  const beside = near && { first: Math.max(near.first, first - WITHIN), last: Math.min(near.last, last + WITHIN) };
  const words = beside ? part.tokens.slice(beside.first, beside.last + 1).map((token) => token.folded) : [];
  const stance = notWithout(stances.at(first, last));
  const inBrackets = bracketed(part, reading.hits, first);
  const weighed = !isWeight(attribute)
    ? null
    : inBrackets
      ? part.text.slice(inBrackets.start, inBrackets.end)
      : otherWeighed(reading, first, last);
  const bound = boundOf(
    foldedNear(part, measure.start - BESIDE, measure.start),
    foldedNear(part, measure.end, measure.end + BESIDE),
  );
  const scale = inMillimetres(attribute) ?? 1;
  const claim = stancedQuote(
    part,
    measure.start,
    measure.end,
    weighed === null || stance.subject === 'other' ? stance : ofAnother(stance, 'weighed', weighed),
  );
  return Object.assign(claim, {
    attribute,
    low: measure.low / scale,
    high: measure.high / scale,
    approximate: measure.approximate || bound === 'about',
    // "Zigzag up to 7 mm" is how wide it gets, where that is asked.
    bound: bound === 'about' || (bound === 'most' && isOfMost(attribute)) ? null : bound,
    withMore: isWithMore(words),
    alone:
      HEAD_ALONE.test(words.join(' ')) ||
      words.some((word, i) => WITHOUT.has(word) && words.slice(i + 1, i + 4).some((one) => WITH_MORE.has(one))),
  });
}

const OF_MOST =
  /\b(?:widest|longest|largest|biggest|greatest|max(?:imum|imal)?|most|grosste|breiteste|langste|maximale)\b/;

function isOfMost({ def }: AttributeKnown): boolean {
  return OF_MOST.test(fold(typeof def.label === 'string' ? def.label : Object.values(def.label).join(' ')).text);
}

/** As far as a word for a bound may stand from its measure. */
const BESIDE = 20;

function foldedNear(part: TextPart, from: number, to: number): string {
  return fold(part.text.slice(Math.max(0, from), to)).text;
}

/** "Ohne Koffer wiegt sie 15 kg": what is left off is the case, not the weight. */
function notWithout(stance: StanceOf): StanceOf {
  const isWithout = /^(?:without|w\/o|minus|less|ohne|sans|hors|no|kein|keine|missing)\b/i.test(stance.trigger ?? '');
  return stance.stance === 'denies' && isWithout ? { stance: 'says', subject: stance.subject, trigger: null } : stance;
}

/** "In its case", but not "without the case" or "with the case off". */
function isWithMore(words: readonly string[]): boolean {
  return words.some((word, i) => {
    if (!WITH_MORE.has(word)) return false;
    const before = words.slice(Math.max(0, i - 3), i);
    return !before.some((one) => WITHOUT.has(one)) && !OFF.has(words[i + 1] ?? '');
  });
}
