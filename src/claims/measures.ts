import type { AttributeKnown } from '../pack/knowledge';
import { findLengths, findWeights } from '../quantity/measures';
import type { Measure } from '../quantity/types';
import { ofKind } from './hits';
import { type ClauseRange, clauseAt, quoteOf, tokenAt } from './part-text';
import type { MeasureClaim } from './reading';
import type { PartReading } from './values';

/** Words by which a weight is of a parcel or of what a machine can take, not of the machine. Folded. */
const OF_SOMETHING_ELSE = new Set(
  'parcel package packed packaged boxed shipping postage courier crate post thread fabric cloth denim leather canvas box crated kiste karton boite carton paket verpackt versand karton colis emballage oil stand'.split(
    ' ',
  ),
);
/** Words by which more than the head was on the scale. */
const WITH_MORE = new Set(
  'case cased cabinet table base lid treadle box total altogether everything koffer haube tisch schrank gesamt coffret meuble table total'.split(
    ' ',
  ),
);

const WITHOUT = new Set('without no not excluding excl minus ohne sans hors out'.split(' '));
const OFF = new Set('off removed'.split(' '));

/** Stated weights and lengths, each with the attribute it speaks of and whether more than the thing was weighed. */
export function measuresIn(
  reading: PartReading,
  attributes: readonly AttributeKnown[],
  language: string | null,
): MeasureClaim[] {
  const { part } = reading;
  const weights = attributes.filter((attribute) => isIn(attribute, 'kg'));
  const out: MeasureClaim[] = [];
  for (const measure of findWeights(part.text, { language }))
    for (const attribute of weights) out.push(claimOf(reading, measure, attribute));
  for (const measure of findLengths(part.text, { language })) {
    const attribute = lengthMeant(reading, measure);
    if (attribute) out.push(claimOf(reading, measure, attribute));
  }
  return out;
}

function isIn(attribute: AttributeKnown, unit: string): boolean {
  return attribute.def.kind === 'measure' && attribute.def.unit === unit;
}

/** A length is of an attribute only where that attribute's words stand in the same clause. */
function lengthMeant({ part, hits }: PartReading, measure: Measure): AttributeKnown | null {
  const clause = clauseAt(part, tokenAt(part, measure.start));
  if (!clause) return null;
  const hit = ofKind(hits, 'measured').find(
    (one) => one.firstToken >= clause.first && one.lastToken <= clause.last && isIn(one.value.attribute, 'mm'),
  );
  return hit?.value.attribute ?? null;
}

function claimOf(reading: PartReading, measure: Measure, attribute: AttributeKnown): MeasureClaim {
  const { part, stances } = reading;
  const first = tokenAt(part, measure.start);
  const last = tokenAt(part, measure.end - 1);
  const clause = clauseAt(part, first);
  const words = clause ? part.tokens.slice(clause.first, clause.last + 1).map((token) => token.folded) : [];
  const stance = stances.at(first, last);
  const subjectNoun = clause
    ? (subjectPart(reading, clause.first, first) ?? otherSubject(reading, clause.first, first))
    : null;
  const isWeight = isIn(attribute, 'kg');
  const other =
    stance.subject === 'other' ||
    (isWeight && (isOfSomethingElse(reading, clause, first, last) || subjectNoun !== null));
  return {
    ...quoteOf(part, measure.start, measure.end),
    ...stance,
    subject: other ? 'other' : 'this',
    trigger: stance.trigger ?? (subjectNoun || null),
    attribute,
    low: measure.low,
    high: measure.high,
    approximate: measure.approximate,
    withMore: isWithMore(words),
  };
}

/** A word for a parcel, cloth and so on before the weight in its clause, or right after it ("12 kg parcel"). */
function isOfSomethingElse({ part }: PartReading, clause: ClauseRange | null, first: number, last: number): boolean {
  const from = clause?.first ?? first;
  return part.tokens
    .slice(from, last + 3)
    .some((token, i) => (from + i < first || from + i > last) && OF_SOMETHING_ELSE.has(token.folded));
}

/** "In its case", but not "without the case" or "with the case off". */
function isWithMore(words: readonly string[]): boolean {
  return words.some((word, i) => {
    if (!WITH_MORE.has(word)) return false;
    const before = words.slice(Math.max(0, i - 3), i);
    return !before.some((one) => WITHOUT.has(one)) && !OFF.has(words[i + 1] ?? '');
  });
}

const WEIGHING = new Set('weighs weigh weighed weighing wiegt wog wiegen pese pesait pesant pesent'.split(' '));
/** What may stand right before "weighs" when the machine is meant. Folded. */
const MACHINE = new Set(
  (
    'it she he machine head which that this and itself alone only just total actually really complete altogether but also one iron body thing beast currently still ' +
    'sie es maschine kopf die das und nur insgesamt allein diese elle il machine tete qui et seule ensemble celle ci bati corps'
  ).split(' '),
);
const PRONOUNS = new Set('it she sie es elle il diese maschine machine'.split(' '));

/** "The trolley weighs 6 kg": a noun right before the weighing word that is neither the machine nor a name of it. */
function otherSubject({ part, hits }: PartReading, from: number, to: number): string | null {
  const words = part.tokens.slice(from, to);
  const verb = words.findLastIndex((token) => WEIGHING.has(token.folded));
  const before = words[verb - 1];
  if (verb < 1 || before?.kind !== 'word' || MACHINE.has(before.folded)) return null;
  if (words.slice(verb + 1).some((token) => PRONOUNS.has(token.folded))) return null;
  const at = from + verb - 1;
  const isThing = hits.some((hit) => hit.value.kind !== 'part' && hit.firstToken <= at && hit.lastToken >= at);
  const isName =
    /^\p{Lu}|\d/u.test(part.text.slice(before.start, before.end)) &&
    !hits.some((hit) => hit.firstToken <= at && hit.lastToken >= at);
  return isThing || isName ? null : part.text.slice(before.start, before.end);
}

/** "The case weighs 4 kg": the part that the clause speaks of, when no word for the thing stands before the weight. */
function subjectPart({ part, hits }: PartReading, from: number, to: number): string | null {
  const within = (hit: { firstToken: number; lastToken: number }): boolean =>
    hit.firstToken >= from && hit.lastToken < to;
  if (ofKind(hits, 'thing').some(within)) return null;
  const noun = ofKind(hits, 'part').find(within);
  if (!noun) return null;
  // "with case 14 kg" is of the machine in its case.
  const before = part.tokens[noun.firstToken - 1]?.folded;
  if (before && /^(with|in|incl|including|mit|im|samt|avec|dans|\+|&)$/.test(before)) return null;
  return part.text.slice(noun.start, noun.end);
}
