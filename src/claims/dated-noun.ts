import { beginningWithin, hitsOver } from './hits';
import { clauseAt, FARTHEST } from './part-text';
import { strangerAt } from './stranger';
import type { PartReading } from './values';

const COPULA = /^(?:is|was|are|were|ist|war|sind|hat|est|sont|etait|a|ont|dates?)$/;

/** "It replaced the model of 1950", "patent dates 1879 to 1888": the year is that one's. Folded; English, German, French. */
const FOLLOWS =
  /^(?:patent(?:s|ed|e|en)?|brevets?|replac(?:es|ed|ing)|succeed(?:s|ed)|supersed(?:es|ed)|predates?|ersetzte?|loste|folgte|remplac(?:e|ait)|succed(?:e|ait))$/;

/** "Motor is from 1955", "the house is over 100 years old": what the clause speaks of before its verb isn't the thing. */
export function isOfAnother({ part, hits }: PartReading, first: number): boolean {
  const clause = clauseAt(part, first);
  if (!clause) return false;
  const from = Math.max(clause.first, first - FARTHEST);
  // "School built 1911".
  if (/^(?:built|erected|founded|opened|extended)$/.test(part.tokens[first - 1]?.folded ?? '') && first - 1 > from)
    return isOther({ part, hits }, first - 2);
  if (part.tokens.slice(from, first).some(({ folded }) => FOLLOWS.test(folded))) return true;
  let verb = first - 1;
  while (verb > from && !COPULA.test(part.tokens[verb]!.folded)) verb--;
  if (verb <= from) return false;
  const isThing = beginningWithin(hits, from, verb).some((hit) => hit.value.kind === 'thing' && hit.lastToken < verb);
  if (isThing) return false;
  return isOther({ part, hits }, verb - 1);
}

function isOther({ part, hits }: Pick<PartReading, 'part' | 'hits'>, at: number): boolean {
  const isPart = hitsOver(hits, at).some((hit) => hit.value.kind === 'part');
  return isPart || strangerAt({ part, hits }, at) !== null;
}

/** Papers and finds that lie in a case or drawer. Folded. */
const FOUND =
  /^(?:news ?papers?|papers?|magazines?|books?|catalogues?|adverts?|advertisements?|photos?|photographs?|pictures?|letters?|receipts?|invoices?|calendars?|coins?|stamps?|posters?|cards?|postcards?|leaflets?|brochures?|patterns?|zeitung|zeitungen|zeitschrift|buch|katalog|anzeige|werbung|foto|bild|brief|quittung|rechnung|kalender|munze|plakat|karte|postkarte|prospekt|schnittmuster|journal|journaux|livre|annonce|publicite|photo|lettre|facture|calendrier|piece|affiche|carte|brochure|patron)$/;

/** "A belt motor from the fifties": of a part. */
function isPartFrom({ part, hits }: PartReading, first: number): boolean {
  const article = /^(?:the|den|der|les|des)$/.test(part.tokens[first - 1]?.folded ?? '') ? 1 : 0;
  const of = first - 1 - article;
  if (!/^(?:from|of|von|aus|de|des)$/.test(part.tokens[of]?.folded ?? '')) return false;
  const clause = clauseAt(part, first);
  const isThing = clause && beginningWithin(hits, clause.first, of).some(({ value }) => value.kind === 'thing');
  return !isThing && hitsOver(hits, of - 1).some(({ value }) => value.kind === 'part');
}

/** "A newspaper of 1932 lined the case." */
export function isOfFound(reading: PartReading, first: number): boolean {
  const { part } = reading;
  const [noun, of] = part.tokens.slice(Math.max(0, first - 2), first);
  if (isPartFrom(reading, first)) return true;
  if (of?.folded === 'dated' && isOther(reading, first - 2)) return true;
  return /^(?:of|from|dated|von|aus|vom|de|du)$/.test(of?.folded ?? '') && FOUND.test(noun?.folded ?? '');
}
