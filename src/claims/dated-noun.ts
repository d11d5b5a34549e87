import { beginningWithin, hitsOver } from './hits';
import { type ClauseRange, clauseAt, clauseIndexAt, FARTHEST, openingAt, type TextPart } from './part-text';
import { strangerAt } from './stranger';
import { PERSON_DE } from './topic';
import type { PartReading } from './values';

const COPULA = /^(?:is|was|are|were|ist|war|sind|hat|stammt|stammen|est|sont|etait|ont|dates?)$/;

/** "It replaced the model of 1950", "patent dates 1879 to 1888": the year is that one's. Folded; English, German, French. */
const FOLLOWS =
  /^(?:ended|ceased|discontinued|patent(?:s|ed|e|en)?|brevets?|replac(?:es|ed|ing)|succeed(?:s|ed)|supersed(?:es|ed)|predates?|ersetzte?|loste|folgte|remplac(?:e|ait)|succed(?:e|ait)|(?:pro)?vien(?:t|nent))$/;

/** "Motor is from 1955", "the house is over 100 years old": what the clause speaks of before its verb isn't the thing. */
export function isOfAnother({ part, hits }: PartReading, first: number, last = first): boolean {
  const clause = clauseAt(part, first);
  if (!clause) return false;
  const from = Math.max(clause.first, first - FARTHEST);
  // "School built 1911".
  if (/^(?:built|erected|founded|opened|extended)$/.test(part.tokens[first - 1]?.folded ?? '') && first - 1 > from)
    return isOther({ part, hits }, first - 2);
  // "Schule Baujahr 1902": nothing but its noun stands before.
  if (/^(?:baujahr|bj)$/.test(part.tokens[first - 1]?.folded ?? '') && first - 2 === from)
    return isOther({ part, hits }, from);
  if (part.tokens.slice(from, first).some(({ folded }) => FOLLOWS.test(folded))) return true;
  if (isOfPerson(part, clause, first) || isInverted({ part, hits }, last + 1)) return true;
  let verb = first - 1;
  while (verb > from && !COPULA.test(part.tokens[verb]!.folded) && !isBeen(part, verb)) verb--;
  if (verb <= from) return goesOn({ part, hits }, clause) || isAfterRelative({ part, hits }, clause);
  const isThing = beginningWithin(hits, from, verb).some((hit) => hit.value.kind === 'thing' && hit.lastToken < verb);
  // "Baujahr ist 1963", "the number dates it to 1936".
  const isAnothers = /^(?:catalogue|catalog|patent|part|phone)$/.test(part.tokens[verb - 2]?.folded ?? '');
  if (
    isThing ||
    (!isAnothers &&
      /^(?:baujahr|jahrgang|year|date|datum|annee|model|modell|modele|number|serial|nummer|seriennummer|numero)$/.test(
        part.tokens[verb - 1]!.folded,
      ))
  )
    return false;
  return isOther(
    { part, hits },
    RELATIVE.test(part.tokens[verb - 1]!.folded) ? lastWordBefore(part, clause) : verb - 1,
  );
}

const RELATIVE = /^(?:which|that|qui)$/;

/** "My uncle, born 1935", "der Sohn, Bj. 1938": right behind somebody. */
function isOfPerson(part: TextPart, clause: ClauseRange, first: number): boolean {
  const before = part.clauses[clauseIndexAt(part, clause.first) - 1];
  return (
    before?.sentence === clause.sentence &&
    /^(?:jahrgang|bj|jg|baujahr)$/.test(part.tokens[clause.first]!.folded) &&
    first - clause.first <= 2 &&
    before.tokens.some(({ folded }) => PERSON.test(folded))
  );
}

const PERSON = new RegExp(`${PERSON_DE}$`);

/** "1929 wurde die Werkstatt gebaut", "vor 1945 wurde in … gebaut": behind the verb at `at`, of what, or nobody says. */
export function isInverted(reading: Pick<PartReading, 'part' | 'hits'>, at: number): boolean {
  const words = foldedOf(reading.part, at, at + 2);
  if (/^(?:wurden?|entstand) (?:in|hier|dort|noch|nur|auch)$/.test(words)) return true;
  return /^(?:wurden?|entstand) (?:d(?:ie|er|as)|eine?)$/.test(words) && isOther(reading, at + 2);
}

/** "Das Haus, in dem sie stand, ist von 1904": what the relative clause before is of. */
function isAfterRelative(reading: Pick<PartReading, 'part' | 'hits'>, clause: ClauseRange): boolean {
  const { part } = reading;
  const relative = part.clauses[clauseIndexAt(part, clause.first) - 1];
  if (relative?.sentence !== clause.sentence || !COPULA.test(part.tokens[clause.first]!.folded)) return false;
  const opens = relative.tokens
    .slice(0, 2)
    .some(({ folded }) => /^(?:d(?:er|ie|as|em|en)|wo|which|where|qui|que)$/.test(folded));
  const subject = lastWordBefore(part, relative);
  return opens && subject >= 0 && clauseAt(part, subject)?.sentence === clause.sentence && isOther(reading, subject);
}

/** The last word before a clause, or -1. */
function lastWordBefore(part: TextPart, { first }: ClauseRange): number {
  let at = first - 1;
  while (at >= 0 && part.tokens[at]!.kind === 'mark') at--;
  return at;
}

/** "The table is light, folding, from the seventies": without a verb it goes on about what its sentence opened with. */
function goesOn(reading: Pick<PartReading, 'part' | 'hits'>, clause: ClauseRange): boolean {
  const { part } = reading;
  if (!OF.test(clause.tokens.find(({ kind }) => kind === 'word')?.folded ?? '')) return false;
  const opening = part.clauses[openingAt(part, clauseIndexAt(part, clause.first), MOST_CLAUSES)]!;
  const verb = opening.tokens.findIndex(({ folded }) => COPULA.test(folded));
  return opening !== clause && verb > 0 && isOther(reading, opening.first + verb - 1);
}

const MOST_CLAUSES = 4;

/** "Le meuble a été fait en 1920": English has the word as an article. */
function isBeen({ tokens }: TextPart, at: number): boolean {
  return tokens[at]!.folded === 'a' && tokens[at + 1]?.folded === 'ete';
}

function isOther({ part, hits }: Pick<PartReading, 'part' | 'hits'>, at: number): boolean {
  const isPart = hitsOver(hits, at).some((hit) => hit.value.kind === 'part');
  return isPart || strangerAt({ part, hits }, at) !== null;
}

/** Papers and finds that lie in a case or drawer. Folded. */
export const FOUND =
  /^(?:news ?papers?|papers?|magazines?|books?|catalogues?|adverts?|advertisements?|photos?|photographs?|pictures?|letters?|receipts?|invoices?|calendars?|coins?|stamps?|posters?|cards?|postcards?|leaflets?|brochures?|patterns?|zeitung|zeitungen|zeitschrift|buch|katalog|anzeige|werbung|foto|bild|brief|quittung|rechnung|kalender|munze|plakat|karte|postkarte|prospekt|schnittmuster|journal|journaux|livre|annonce|publicite|photo|lettre|facture|calendrier|piece|affiche|carte|brochure|patron)$/;

/** What a head is put on or into. Folded. */
export const UNDER = /^(?:treadle|base|irons|legs|stand|gestell|tretgestell|pedalier|pietement|pied)$/;

/** "A belt motor from the fifties", "on a treadle from 1912": of a part. */
function isPartFrom({ part, hits }: PartReading, first: number): boolean {
  const article = /^(?:the|den|der|les|des)$/.test(part.tokens[first - 1]?.folded ?? '') ? 1 : 0;
  const of = first - 1 - article;
  if (!/^(?:from|of|von|aus|de|des)$/.test(part.tokens[of]?.folded ?? '')) return false;
  const clause = clauseAt(part, first);
  const isThing = clause && beginningWithin(hits, clause.first, of).some(({ value }) => value.kind === 'thing');
  if (isThing) return false;
  return (
    hitsOver(hits, of - 1).some(({ value }) => value.kind === 'part') || UNDER.test(part.tokens[of - 1]?.folded ?? '')
  );
}

/** Words between a noun and its year: "from the early 1950s", "aus dem Jahr 1951". Folded. */
const BETWEEN =
  /^(?:the|den|dem|der|die|das|les|l'|early|mid|late|about|around|circa|ca|c|jahr|jahre|jahren|annees?|years?)$/;
const OF = /^(?:of|from|dated|von|aus|vom|de|du|des|d')$/;
/** What a seller may call the thing itself. Folded. */
const THE_THING =
  /^(?:piece|example|beauty|classic|item|survivor|veteran|lady|gem|antique|original|thing|number|serial|relic|heirloom|treasure|workhorse|girl|stuck|schatz|schmuckstuck|erbstuck|klassiker|nummer|seriennummer|dame|piece|merveille|ancetre|numero|beaute|is|it's|this|it|she|he|dates?|stammt|ist|est|date|are|was|built|made|all|und|and|et|old|alt|alte|ancienne|circa|datee?|datant|dated)$/;
const ANOTHER_ONE = /^(?:has|have|had|got|owns|owned|another|previous|other|second|bought|sold|keep|kept|older|newer)$/;

/** "A newspaper of 1932 lined the case", "two from the twenties": of the noun before, where that isn't the thing. */
export function isOfFound(reading: PartReading, first: number): boolean {
  const { part, hits } = reading;
  if (isPartFrom(reading, first)) return true;
  let of = first - 1;
  while (of > 0 && first - of < FARTHEST_OF && BETWEEN.test(part.tokens[of]!.folded)) of--;
  if (isOfOthersBefore(part, of)) return true;
  const noun = part.tokens[of - 1];
  if (!noun || !OF.test(part.tokens[of]!.folded) || noun.kind === 'mark' || noun.kind === 'break') return false;
  if (FOUND.test(noun.folded) || /^(?:those|celles|ceux)$/.test(noun.folded)) return true;
  if (isGoverned(part, of)) return true;
  // "Die von 1968 sehen anders aus".
  if (noun.folded === 'die' && !/^(?:stammt?|ist|war)$/.test(part.tokens[first + 1]?.folded ?? '')) return true;
  if (/^ones?$/.test(noun.folded)) return noun.folded === 'ones' || ANOTHER_ONE.test(part.tokens[of - 2]?.folded ?? '');
  if (noun.kind === 'number' || /^(?:two|three|four|both|some|several|zwei|drei|deux|trois)$/.test(noun.folded))
    return true;
  return !THE_THING.test(noun.folded) && strangerAt({ part, hits }, of - 1) !== null;
}

/** "Ersatz für eine von 1903", "mit einer elektrischen Zickzackmaschine von 1975": one of its kind, and another. */
function isGoverned(part: TextPart, of: number): boolean {
  return /\b(?:fur|mit|neben|gegen|statt|zu|nach|von) ein(?:e[mnr]?)?(?: \S+){0,2}$/.test(foldedOf(part, of - 4, of));
}

const foldedOf = ({ tokens }: TextPart, from: number, to: number): string =>
  tokens
    .slice(Math.max(0, from), to)
    .map(({ folded }) => folded)
    .join(' ');

const FARTHEST_OF = 6;

/** "Her mother's previous one, from 1911". */
function isOfOthersBefore(part: TextPart, of: number): boolean {
  const clause = clauseAt(part, of);
  const before = clause?.first === of ? part.clauses[clauseIndexAt(part, of) - 1] : undefined;
  return (
    before !== undefined &&
    before.sentence === clause!.sentence &&
    before.tokens.some(({ folded }) => /^(?:previous|another|other|andere[nrs]?|autre)$/.test(folded))
  );
}
