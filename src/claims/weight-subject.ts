import { UNDER } from './dated-noun';
import { beginningWithin, type Hit, hitsOver } from './hits';
import { type ClauseRange, clauseAt, clauseIndexAt, FARTHEST, openingAt, type TextPart, writtenAt } from './part-text';
import { OF_THE_THING, strangerAt, strangerIn } from './stranger';
import type { PartReading } from './values';

const set = (words: string): ReadonlySet<string> => new Set(words.trim().split(/\s+/));

const WEIGHING = set('weighs weigh weighed weighing wiegt wog wiegen pese pesee pesait pesant pesent weegt woog');

/** Right after a weight these make it the weight of something else: "12 kg parcel", "400 g of thread". */
const AFTER = set(`
  empty leer vide of apiece each per parcel package packed packaged boxed crated shipping postage courier crate thread fabric cloth box trolley limit
  more extra mehr zusatzlich lighter heavier less leichter schwerer band versand paket karton garn stoff colis emballage fil tissu de
`);

/**
 * Is a stated weight of something else than the thing on sale? With a weighing verb, what stands right before the verb
 * (or, where a language turns that round, after it) is weighed. Without one, any noun before the weight that isn't the
 * thing's own leaves it open, and an open weight is not held against the machine.
 * @returns the word that says so, or null when the thing itself is meant.
 */
export function otherWeighed(reading: PartReading, first: number, last: number): string | null {
  const { part } = reading;
  const whole = clauseAt(part, first);
  if (!whole) return null;
  const clause = { ...whole, first: Math.max(whole.first, first - FARTHEST) };
  const after = part.tokens[last + 1];
  if (
    after?.kind === 'word' &&
    (AFTER.has(after.folded) || /(?:stoff|leder|garn)$/.test(after.folded)) &&
    !isOfMetal(part, last + 1)
  )
    return writtenAt(part, last + 1);
  const whose = attributed(reading, first, last);
  if (whose !== null) return whose;
  const before = relatedTo(reading, whole) ?? beforeBare(reading, whole, first, last);
  if (before !== null) return before;
  const verb = lastWeighing(part, clause, first);
  if (verb < 0) {
    if (isLifted(part, first)) return writtenAt(part, first - 1);
    return isSaidOf(part, clause.first, first) ? null : strangerIn(reading, clause.first, first);
  }
  const opening = openingNoun(reading, clause, verb);
  if (opening !== null) return opening;
  for (let i = verb + 1; i < first; i++) if (isPronoun(part.tokens[i]!.folded)) return null;
  const subject = lastWord(part, clause.first, beforeAdverbs(part, verb));
  if (subject >= 0 && isPronoun(part.tokens[subject]!.folded)) return null;
  return strangerIn(reading, clause.first, verb);
}

/** "14 kg of solid cast iron": of what the thing is made. */
function isOfMetal({ tokens }: TextPart, of: number): boolean {
  const next = /^(?:solid|pure|old|good|heavy|british|proper)$/.test(tokens[of + 1]?.folded ?? '') ? of + 2 : of + 1;
  const noun = tokens[next]?.folded ?? '';
  return tokens[of]!.folded === 'of' && /^(?:cast|iron|metal|steel|machine|engineering|quality)$/.test(noun);
}

/** "A 12 kg dumbbell": between an article and a noun the weight is the noun's. */
function attributed(reading: PartReading, first: number, last: number): string | null {
  const { part } = reading;
  if (!/^(?:a|an|the|my|this|ein|eine|einen|einem|einer|der|dem|die)$/.test(part.tokens[first - 1]?.folded ?? ''))
    return null;
  return part.tokens[last + 1]?.kind === 'word' ? strangerAt(reading, last + 1) : null;
}

/** "The cabinet (24 kg)", "the case is of fibre, about 2 kg": a bare weight is of what its sentence spoke of before. */
function beforeBare(reading: PartReading, clause: ClauseRange, first: number, last: number): string | null {
  const { part } = reading;
  const previous = part.clauses[clauseIndexAt(part, clause.first) - 1];
  if (!isBare(part, clause, first, last) || previous?.sentence !== clause.sentence || part.field === 'title')
    return null;
  const bracket = openBracket(part, clause.first, first);
  if (bracket >= 0) {
    const outside = clauseAt(part, bracket - 1);
    return outside && nounBefore(reading, outside);
  }
  const at = previous.tokens.findIndex(
    ({ kind, folded }) => kind === 'word' && !/^(?:the|its|a|der|die|das|la|le|les|un|une|sa|son)$/.test(folded),
  );
  if (at < 0) return null;
  const parcels = previous.tokens.findIndex(({ folded }) => PARCELS.test(folded));
  if (parcels >= 0) return writtenAt(part, previous.first + parcels);
  if (saysWhat(part, clause) || isFeature(reading, previous)) return null;
  // "Two bags of wool, 12 kg": of several things.
  if (SEVERAL.test(previous.tokens[at]!.folded) && !/^quarters?$/.test(previous.tokens[at + 1]?.folded ?? ''))
    return writtenAt(part, previous.first + at);
  // "The irons are what they are, 30 kg".
  if (UNDER.test(previous.tokens[at]!.folded)) return writtenAt(part, previous.first + at);
  const opening = partAt(reading, previous.first + at) ?? tableOf(reading, clause);
  if (opening !== null || strangerAt(reading, previous.first + at) === null) return opening;
  // "Flaps of the table, 9 kg": no word of it is the thing's.
  const inside = hitsIn(reading, previous);
  const isOfPart = inside.length > 0 && inside.every(({ value }) => value.kind === 'part');
  return isOfPart ? writtenAt(part, previous.first + at) : null;
}

/** "The treadle table, iron legs, 30 kg": of what the sentence opened with, where that is a part. */
function tableOf(reading: PartReading, clause: ClauseRange): string | null {
  const { part } = reading;
  const at = clauseIndexAt(part, clause.first);
  const opening = openingAt(part, at, MOST_CLAUSES);
  const first = part.clauses[opening]!;
  return opening < at - 1 && !isFeature(reading, first) ? openingPart(reading, first) : null;
}

/** "Head 12.5 kg". */
function saysWhat(part: TextPart, { first, last }: ClauseRange): boolean {
  return part.tokens
    .slice(first, last + 1)
    .some(({ folded }) => /^(?:head|machine|kopf|maschine|tete|it|sie|elle)$/.test(folded));
}

/** "Boat shuttle, 11.5 kg": a clause that is all one feature is an item of a list. */
function isFeature(reading: PartReading, clause: ClauseRange): boolean {
  const words = clause.tokens.filter(({ kind }) => kind === 'word').length;
  const covers = ({ firstToken, lastToken }: Hit): boolean => lastToken - firstToken + 1 >= words;
  const whole = hitsIn(reading, clause).filter(covers);
  return whole.some(({ value }) => value.kind === 'value') && !whole.some(({ value }) => value.kind === 'part');
}

function hitsIn({ hits }: PartReading, { first, last }: ClauseRange): readonly Hit[] {
  return beginningWithin(hits, first, last);
}

/** The token of the bracket in which a weight stands, or -1. */
function openBracket({ tokens }: TextPart, from: number, to: number): number {
  for (let i = to; i >= 0 && to - i <= IN_BRACKETS + to - from; i--) {
    const { kind, folded } = tokens[i]!;
    if (kind === 'break' || folded === ')') return -1;
    if (folded === '(') return i;
  }
  return -1;
}

const SEVERAL =
  /^(?:two|three|four|five|six|ten|several|some|zwei|drei|vier|funf|mehrere|einige|deux|trois|quatre|cinq|plusieurs|quelques)$/;
const PARCELS = /^(?:parcels?|packages?|boxes|pakete?n?|colis)$/;
const IN_BRACKETS = 8;
const RELATIVE = /^(?:which|that|der|die|das|welcher|welche|welches|qui)$/;

/** "Without the cabinet, which weighs 28 kg": a relative clause is of the part that ends the clause before. */
function relatedTo(reading: PartReading, clause: ClauseRange): string | null {
  const { part } = reading;
  const opens = clause.tokens.find(({ kind }) => kind === 'word');
  const previous = part.clauses[clauseIndexAt(part, clause.first) - 1];
  if (!opens || !RELATIVE.test(opens.folded) || previous?.sentence !== clause.sentence) return null;
  return partAt(reading, lastWord(part, previous.first, previous.last + 1));
}

/** "The cabinet is of oak, and weighs 35 kg": without a subject of its own the verb goes on about the sentence's first. */
function openingNoun(reading: PartReading, clause: ClauseRange, verb: number): string | null {
  const { part } = reading;
  for (let i = clause.first; i < verb; i++) {
    const { kind, folded } = part.tokens[i]!;
    if (kind === 'word' && !/^(?:and|but|also|und|aber|auch|et|mais|aussi)$/.test(folded)) return null;
  }
  const at = clauseIndexAt(part, clause.first);
  const opening = openingAt(part, at, MOST_CLAUSES);
  if (opening === at) return null;
  const first = part.clauses[opening]!;
  return openingPart(reading, first) ?? pricedThing(reading, first);
}

/** "Bread oven £15, weighs 11 kg": another thing on sale. */
function pricedThing(reading: PartReading, clause: ClauseRange): string | null {
  const { part } = reading;
  const isPriced = /\p{Sc}|\d ?(?:eur|euro)/iu.test(part.text.slice(clause.start, clause.end));
  const isThing = hitsIn(reading, clause).some(({ value }) => value.kind === 'thing');
  return isPriced && !isThing ? strangerIn(reading, clause.first, clause.last) : null;
}

const ADJECTIVES = 2;

/** The part by which a clause opens, or null. */
function openingPart(reading: PartReading, { first, last }: ClauseRange): string | null {
  for (let i = first, words = 0; i <= last && words <= ADJECTIVES; i++) {
    const { kind, folded } = reading.part.tokens[i]!;
    if (kind !== 'word' || /^(?:the|its|a|an|my|der|die|das|den|la|le|les|un|une|sa|son|ein|eine)$/.test(folded))
      continue;
    const found = partAt(reading, i);
    // "Dark oak table".
    if (found !== null || strangerAt(reading, i) === null) return found;
    words++;
  }
  return null;
}

/** "I lift 14 kg", "ich trage 14 kg": what somebody can carry. */
function isLifted({ tokens }: TextPart, first: number): boolean {
  const [who, does] = tokens.slice(Math.max(0, first - 2), first);
  return (
    /^(?:i|we|he|she|you|ich|wir|er|man|je|on|nous)$/.test(who?.folded ?? '') &&
    /^(?:lift|lifts|carry|carries|press|trage|heb|hebe|tragt|stemme|porte|souleve)$/.test(does?.folded ?? '')
  );
}

const HANDLES = /^(?:carry|lift|handle|move|shift|manage)$/;

/** "Which is why it is only 7 kg", "easy to carry at 4 kg". */
function isSaidOf({ tokens }: TextPart, from: number, first: number): boolean {
  let i = first - 1;
  while (i > from && /^(?:only|just|about|under|barely|is|'s|at|nur|ist|gerade|est|que|a)$/.test(tokens[i]!.folded))
    i--;
  if (i === first - 1) return false;
  // "I can lift it in and out on my own at 22 kg."
  const lifted = tokens.slice(from, i).findIndex(({ folded }) => HANDLES.test(folded));
  if (tokens[i + 1]!.folded === 'at' && lifted >= 0 && /^(?:it|her|this)$/.test(tokens[from + lifted + 1]!.folded))
    return true;
  if (HANDLES.test(tokens[i]!.folded) && tokens[i - 1]?.folded === 'to') return true;
  return /^(?:it|it's|she|she's|sie|elle|manageable|liftable|portable)$/.test(tokens[i]!.folded);
}

const MOST_CLAUSES = 8;

/** The word at a place, where it is of a part's phrase. */
function partAt({ part, hits }: PartReading, at: number): string | null {
  if (at < 0) return null;
  const isPart = hitsOver(hits, at).some((hit) => hit.value.kind === 'part');
  return isPart ? writtenAt(part, at) : null;
}

const BEFORE_BRACKET = 4;

/** "A transformer, included (heavy, 5 kg)": the nearest word before the bracket that can be what is weighed. */
function nounBefore(reading: PartReading, { first, last }: ClauseRange): string | null {
  for (let i = last; i >= first && last - i < BEFORE_BRACKET; i--) {
    const stranger = strangerAt(reading, i);
    if (stranger !== null && !/ed$/.test(reading.part.tokens[i]!.folded)) return stranger;
  }
  return null;
}

/** Nothing but the weight and words that say nothing of what is weighed. */
function isBare(part: TextPart, clause: ClauseRange, first: number, last: number): boolean {
  if (clause.last - clause.first > FARTHEST) return false;
  for (let i = clause.first; i <= clause.last; i++) {
    const { kind, folded } = part.tokens[i]!;
    // "30 kilos and worth having for itself".
    if (i === last + 1 && JOINS.test(folded)) return true;
    if ((i < first || i > last) && kind === 'word' && !OF_THE_THING.has(folded)) return false;
  }
  return true;
}

const JOINS = /^(?:and|but|so|und|aber|et|mais)$/;

const isPronoun = (folded: string): boolean =>
  /^(?:it|she|he|sie|es|elle|il|machine|maschine|which|that|this|die|qui|ze|zij|hij)$/.test(folded);

function lastWeighing(part: TextPart, clause: ClauseRange, before: number): number {
  for (let i = before - 1; i >= clause.first; i--) if (WEIGHING.has(part.tokens[i]!.folded)) return i;
  return -1;
}

/** "The whole machine only weighs": back over what stands between a subject and its verb. */
function beforeAdverbs({ tokens }: TextPart, verb: number): number {
  let i = verb;
  while (i > 0 && /^(?:only|just|still|actually|really|itself|alone)$/.test(tokens[i - 1]!.folded)) i--;
  return i;
}

function lastWord(part: TextPart, from: number, to: number): number {
  for (let i = to - 1; i >= from; i--) if (part.tokens[i]!.kind === 'word') return i;
  return -1;
}
