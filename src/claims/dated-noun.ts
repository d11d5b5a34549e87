import { beginningWithin, hitsOver } from './hits';
import { clauseAt, FARTHEST } from './part-text';
import { strangerAt } from './stranger';
import type { PartReading } from './values';

const COPULA = /^(?:is|was|are|were|ist|war|sind|hat|est|sont|etait|a|ont|dates?)$/;

/** "Motor is from 1955", "the house is over 100 years old": what the clause speaks of before its verb isn't the thing. */
export function isOfAnother({ part, hits }: PartReading, first: number): boolean {
  const clause = clauseAt(part, first);
  if (!clause) return false;
  const from = Math.max(clause.first, first - FARTHEST);
  let verb = first - 1;
  while (verb > from && !COPULA.test(part.tokens[verb]!.folded)) verb--;
  if (verb <= from) return false;
  const isThing = beginningWithin(hits, from, verb).some((hit) => hit.value.kind === 'thing' && hit.lastToken < verb);
  if (isThing) return false;
  const before = verb - 1;
  const isPart = hitsOver(hits, before).some((hit) => hit.value.kind === 'part');
  return isPart || strangerAt({ part, hits }, before) !== null;
}

/** Papers and finds that lie in a case or drawer. Folded. */
const FOUND =
  /^(?:news ?papers?|papers?|magazines?|books?|catalogues?|adverts?|advertisements?|photos?|photographs?|pictures?|letters?|receipts?|invoices?|calendars?|coins?|stamps?|posters?|cards?|postcards?|leaflets?|brochures?|patterns?|zeitung|zeitungen|zeitschrift|buch|katalog|anzeige|werbung|foto|bild|brief|quittung|rechnung|kalender|munze|plakat|karte|postkarte|prospekt|schnittmuster|journal|journaux|livre|annonce|publicite|photo|lettre|facture|calendrier|piece|affiche|carte|brochure|patron)$/;

/** "A newspaper of 1932 lined the case." */
export function isOfFound({ part }: PartReading, first: number): boolean {
  const [noun, of] = part.tokens.slice(Math.max(0, first - 2), first);
  return /^(?:of|from|dated|von|aus|vom|de|du)$/.test(of?.folded ?? '') && FOUND.test(noun?.folded ?? '');
}
