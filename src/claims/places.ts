import { PhraseIndex } from '../text/phrases';
import { FOUND, isInverted } from './dated-noun';
import { beginningWithin, type Hit, ofKind } from './hits';
import { isOfTheFirm } from './of-the-firm';
import { type ClauseRange, clauseAt, clauseIndexAt, quoteOf, type TextPart } from './part-text';
import type { PlaceClaim } from './reading';
import type { PartReading } from './values';

/** Words that make a place the place made. "From" alone doesn't: sellers write where they live. */
const MADE = new PhraseIndex<true>();
for (const words of 'foundry|put together at|put together in|made|made in|made at|built in|built at|built|manufactured in|manufactured at|manufactured|produced in|produced at|produced|assembled in|assembled at|cast at|factory|works|left the|came out of|plant at|plant in|stammt aus|construite en|gebaut in|gebaut|hergestellt in|hergestellt|gefertigt in|gefertigt|produziert|produktion|fertigung|werk|fabrik|aus dem werk|aus der fabrik|fabriquée à|fabriqué à|fabriquée en|fabriquée|fabrication|produite à|sortie de|sorti de|sortis de|sorties de|usine de|usine'.split(
  '|',
))
  MADE.add(words, true);
const REACH = 4;
/** "One of only 600 made, at the works": the clause goes on with where. */
const OPENS_PLACE = /^(?:at|in|by|im|zu|a|en|au)$/;

/** Where the advert says that the thing was made: a place that some pack knows, beside words for making. */
export function placesIn(reading: PartReading): PlaceClaim[] {
  const { part, hits, stances } = reading;
  const made = MADE.search(part.tokens);
  return ofKind(hits, 'place').flatMap((hit: Hit<'place'>) => {
    const clause = clauseAt(part, hit.firstToken);
    // A row ("Works: …"): the word for making is its label.
    const label = clause && part.clauses[clauseIndexAt(part, clause.first) - 1];
    const isRow = label?.sentence === clause?.sentence && label?.tokens.at(-1)?.folded === ':';
    const goesOn = clause && label && label.sentence === clause.sentence && OPENS_PLACE.test(clause.tokens[0]!.folded);
    const from = clause && (isRow || goesOn ? label!.first : clause.first);
    const cue = made.find((one) => {
      const same = clause && one.firstToken >= from! && one.lastToken <= clause.last;
      const gap = one.lastToken < hit.firstToken ? hit.firstToken - one.lastToken : one.firstToken - hit.lastToken;
      return same && gap >= 1 && gap <= REACH;
    });
    if (!cue || !clause || isOfAnother(part, hits, clause, cue.firstToken)) return [];
    const quote = quoteOf(part, Math.min(cue.start, hit.start), Math.max(cue.end, hit.end));
    const [first, last] = [Math.min(cue.firstToken, hit.firstToken), Math.max(cue.lastToken, hit.lastToken)];
    // "Made in one, not the other": what stands before the place alone.
    const own = stances.at(hit.firstToken, hit.lastToken);
    const stance = own.stance === 'says' && own.subject === 'this' ? stances.at(first, last) : own;
    const isTold = reading.framer?.isMakingTold(first, last);
    return [{ ...quote, ...stance, ...(isTold ? { aside: true } : {}), place: hit.value.place, pack: hit.value.pack }];
  });
}

/** Words of living and working there, in clauses that tell of people. Folded; English, German, French. */
const PEOPLE =
  /^(?:grew|born|trained|retired|aufgewachsen|geboren|grandi|nee?|live|lives|lived|living|worked|collect|visit|wohne|wohnt|arbeitete|gearbeitet|habite|habitait|travaillait|travaille)$/;

const WHERE = /^(?:where|wo|ou)$/;

const ALL_MADE = /^\S+ (?:these|them)\b|\bfirst$/;

/** "Motor made in …", "I live near the … works": the place is of a part, or of people. */
function isOfAnother(part: TextPart, hits: readonly Hit[], clause: ClauseRange, cue: number): boolean {
  const whole = part.tokens.slice(clause.first, clause.last + 1);
  // "Built at the … factory, where my aunt worked".
  const where = whole.findIndex(({ folded }, at) => clause.first + at > cue && WHERE.test(folded));
  const words = where < 0 ? whole : whole.slice(0, where);
  // "Der Prospekt zeigt das Werk".
  const told = part.tokens.slice(clause.first, cue);
  if (words.some(({ folded }) => PEOPLE.test(folded)) || told.some(({ folded }) => FOUND.test(folded))) return true;
  // "The works at … made iron ones": what they made, not where this was made.
  if (part.tokens[clause.first]!.folded === 'the' && cue === clause.first + 1) return true;
  // "They made these at … first, then moved": of all that was made there.
  const behind = part.tokens.slice(cue, clause.last + 1);
  if (ALL_MADE.test(behind.map(({ folded }) => folded).join(' '))) return true;
  // "L'usine de Name fermait": the works are what it speaks of.
  if (/^l'?$/.test(part.tokens[clause.first]!.folded) && cue === clause.first + 1) return true;
  // "Bis 1929 war das Werk in …"; from there it is "aus dem Werk".
  if (isOfTheFirm(part, cue) || /^(?:das|die)$/.test(part.tokens[cue - 1]?.folded ?? '')) return true;
  if (words.some(({ kind }, at) => kind === 'number' && isInverted({ part, hits }, clause.first + at + 1))) return true;
  const before = beginningWithin(hits, clause.first, cue).filter(({ lastToken }) => lastToken < cue);
  const isPart = before.some(({ value }) => value.kind === 'part');
  return isPart && !before.some(({ value }) => value.kind === 'thing');
}
