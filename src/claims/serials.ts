import type { Listing } from '../listing/types';
import type { Knowledge } from '../pack/knowledge';
import { lookAlikes } from '../pack/misreadings';
import { findSerialShapes, findSerials, normaliseSerial } from '../quantity/serials';
import type { SerialMention } from '../quantity/types';
import { visible } from '../text/visible';
import { bareNumbers } from './bare-numbers';
import { isOtherNumber, OTHER_NUMBERS, wordsBefore } from './other-numbers';
import { clauseAt, quoteOf, type TextPart, tokenAt } from './part-text';
import type { SerialClaim } from './reading';
import { schemeCodes } from './scheme-codes';
import { spacedNumbers } from './spaced-numbers';
import type { StanceReader } from './stance';

const MOST = 20;
const NUMBER_WORDS = new Set(
  "number number's numbered no nr nos stamped reads nummer nummern numero n° nº num plate plakette plaque".split(' '),
);
const CALLED_WITHIN = 12;

/** Is it of the form of a scheme, or like an allotted number, in a pack that covers the advert? */
type IsKnown = (normal: string) => boolean;

/**
 * Serials that an advert states: in fields of their own, called so in the text, or written in the form of a scheme
 * that some pack knows: with letters wherever it stands, digits alone only near a word for a number, and in a table.
 */
export function serialsOf(
  listing: Listing,
  parts: readonly TextPart[],
  knowledge: Knowledge,
  stances: ReadonlyMap<TextPart, StanceReader>,
  covering: ReadonlySet<string>,
  named: ReadonlySet<string>,
): SerialClaim[] {
  const isKnown: IsKnown = (normal) => knowledge.serials.schemesOf(normal).some(({ pack }) => covering.has(pack));
  const isAllotted: IsKnown = (normal) => knowledge.serials.find(normal).some(({ pack }) => named.has(pack));
  const isLike: IsKnown = (normal) => lookAlikes(normal, knowledge, covering).length > 0;
  const schemes = knowledge.serials.schemes.filter(({ pack }) => covering.has(pack)).map(({ scheme }) => scheme);
  const out: SerialClaim[] = [];
  const add = (claim: SerialClaim): void => {
    const there = out.find((one) => one.normal === claim.normal);
    if (!there && out.length < MOST) out.push(claim);
    else if (there) there.stated ||= claim.stated;
  };
  for (const part of parts) {
    const codes = schemeCodes(part.text, schemes);
    const codeOver = (found: SerialMention) => codes.find(({ start, end }) => start < found.end && end > found.start);
    const addFound = (found: SerialMention, stated: boolean, named?: boolean): void => {
      const { start, end, normal } = found;
      if (isOfThis(part, start, stances))
        add({
          field: part.field,
          quote: part.text.slice(start, end),
          start,
          end,
          normal,
          stated,
          ...(named && { named }),
        });
    };
    for (const found of findSerials(part.text)) addFound(codeOver(found) ?? found, true, !isWondered(part, found.end));
    for (const code of codes)
      if (!isOtherNumber(part, code.start, isAllotted(code.normal) ? RIGHT_BEFORE : undefined))
        addFound(code, isCalledNumber(part, code.start));
    let names: Set<number> | null = null;
    for (const shape of findSerialShapes(part.text)) {
      if (codeOver(shape) || !isKnown(shape.normal)) continue;
      // "Name 245000": a number right after a model's name.
      names ??= modelNamesEnd(part, knowledge);
      const followsName = names.has(tokenAt(part, shape.start) - 1);
      if (followsName || isCalledNumber(part, shape.start)) addFound(shape, true);
    }
  }
  for (const part of parts) for (const code of calledCodes(part, stances, isKnown, isLike)) add(code);
  for (const part of parts)
    for (const claim of spacedNumbers(part, knowledge, covering))
      if (!isWithin(claim, out) && isCalledNumber(part, claim.start) && isOfThis(part, claim.start, stances))
        add(claim);
  if (out.length === 0)
    for (const { part, claim } of bareNumbers(parts, knowledge, covering, named))
      if (isOfThis(part, claim.start, stances)) add(claim);
  for (const written of listing.serials) {
    const normal = normaliseSerial(written);
    if (normal) add({ field: 'serials', quote: written, start: 0, end: written.length, normal, stated: true });
  }
  return out.map((claim) => Object.assign(claim, { doubted: isDoubted(claim, parts) }));
}

/** "Motor with belt number K 20417": a number that a table has isn't the motor's. In tokens. */
const RIGHT_BEFORE = 1;

function isWithin(claim: SerialClaim, others: readonly SerialClaim[]): boolean {
  return others.some(({ field, start, end }) => field === claim.field && start < claim.end && end > claim.start);
}

/** Right after the number, what takes it back or gives it to a part: "210999? I make it 230999", "… on the motor". */
const TAKEN_BACK =
  /^\s*(?:\?|(?:\w+\s?)?(?:\.{2,3}|…)\s*sorry\b|\.?\s*no,? wait\b|(?:\.\.\.|…|,|-|–)?\s*(?:no|nein|non|sorry|correction|oder|or rather|pardon)\b|\s+(?:is not|isn['’]t) (?:mine|ours|this|its|the|it)\b|\s+(?:was|is) my (?:old|other|previous|last|first)\b|\s+is (?:the|my|his|her)\s+[a-z]+['’]s|,? or (?:possibly|maybe|perhaps|it could be|could be|else)\b|\s+(?:is |was )?(?:stamped |printed )?on (?:the|its|my) (?:motor|pedal|case|cabinet|other|treadle|irons|table|lamp|lid|controller|stand)\b)/i;

/** "Sorry, it's 453000": what takes the other one's place. */
const CORRECTED =
  /(?:\bit(?:['’]s| is)|\bshould (?:be|read)|\b(?:mean|meant|make that|make it|correction:?|rather)) $/i;

/** "Serial no. T-44/9. That's all I can find on it and it's engraved by hand so maybe a school's". */
const WONDERED =
  /\b(?:maybe|perhaps|might|could be|possibly|(?:all|only one) (?:that )?I can (?:find|see)|vielleicht|evtl|wohl|peut-être)\b/i;
const WONDERED_WITHIN = 90;

function isWondered(part: TextPart, end: number): boolean {
  return WONDERED.test(part.text.slice(end, end + WONDERED_WITHIN));
}

/** "…, or possibly 297810": of two readings neither is sure. */
const OR_ELSE = /\bor (?:possibly|maybe|perhaps|it could be|could be) $/i;

function isDoubted(claim: SerialClaim, parts: readonly TextPart[]): boolean {
  const part = parts.find((one) => one.field === claim.field);
  if (part && CORRECTED.test(part.text.slice(Math.max(0, claim.start - 16), claim.start))) return false;
  if (!part) return false;
  return (
    OR_ELSE.test(part.text.slice(Math.max(0, claim.start - 24), claim.start)) ||
    TAKEN_BACK.test(part.text.slice(claim.end, claim.end + 24))
  );
}

/** "Number", "no.", "stamped" stand shortly before: weaker than "serial", enough for a number that a table has. */
function isCalledNumber(part: TextPart, start: number): boolean {
  const before = wordsBefore(part, start, CALLED_WITHIN);
  return !before.some((word) => OTHER_NUMBERS.has(word)) && before.some((word) => NUMBER_WORDS.has(word));
}

/** Shorter codes are too easily something else. */
const FEWEST_UNCALLED = 6;
/** A code that words call the number and no scheme knows: misread, or of no known form. */
const CODE = /(?<![A-Za-z0-9])[A-Z]{0,3} ?(?=(?:[A-Z]*\d){3})[0-9OISB]{4,9}[A-Z]?(?![A-Za-z0-9])/g;

function calledCodes(
  part: TextPart,
  stances: ReadonlyMap<TextPart, StanceReader>,
  isKnown: IsKnown,
  isLike: IsKnown,
): SerialClaim[] {
  const seen = visible(part.text);
  const codes: SerialClaim[] = [];
  for (const found of seen.text.matchAll(CODE)) {
    const { start, end } = seen.toOriginal(found.index, found.index + found[0].length);
    const normal = normaliseSerial(found[0]);
    const isNew = /[A-Z]/.test(normal) && !isKnown(normal);
    if (!isNew || !isOfThis(part, start, stances)) continue;
    if (/^(?:1[5-9]|20)\d\dS$/.test(normal)) continue;
    const isLong = normal.length >= FEWEST_UNCALLED;
    if (!isCalledNumber(part, start) && !(isLong && isLike(normal))) continue;
    codes.push({ ...quoteOf(part, start, end), normal, stated: true });
  }
  return codes;
}

/** The last tokens of models' names that stand by themselves. */
function modelNamesEnd(part: TextPart, knowledge: Knowledge): Set<number> {
  const models = knowledge.names
    .search(part.tokens)
    .filter(({ value }) => 'model' in value.of && value.stands === 'alone');
  return new Set(models.map(({ lastToken }) => lastToken));
}

function isOfThis(part: TextPart, start: number, stances: ReadonlyMap<TextPart, StanceReader>): boolean {
  const token = tokenAt(part, start);
  if (!clauseAt(part, token)) return true;
  const stance = stances.get(part)?.at(token, token);
  return stance?.subject !== 'other' || stance.stance === 'likens';
}
