import { fold } from '../../text/fold';
import type { Block } from './description';
import { type Reading, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import type { Row } from './rows';
import { sharedWords } from './title';
import { AWAY, MAIN } from './zones';

const PRICE_WORDS = /\b(?:price|preis|prix|prijs|precio|prezzo)\b/;
/** Words of selling and seeking. English; German; French. Common usage, from memory. */
const SELLING =
  /\b(?:for sale|selling|wanted|looking for|make (?:me )?an offer|best offer|offers? (?:invited|welcome|over|around|in writing)|open to offers|o\.?n\.?o|price on request|collection only|cash on collection|buyer collects|pick-?up only|zu verkaufen|verkaufe|suche|gesucht|biete|preis auf anfrage|verhandlungsbasis|vhb|zu verschenken|selbstabholer|nur abholung|privatverkauf|a vendre|vends|recherche|cherche|faire offre|prix sur demande|a donner|a retirer|remise en main propre)\b/;
/** Words by which a page lets a reader of one advert write to its seller. The same languages, Dutch, Italian, Spanish. */
const CONTACT =
  /^(?:contact (?:the )?(?:seller|advertiser)|message (?:the )?seller|write to (?:the )?seller|ask (?:the )?seller.*|please contact|report (?:this )?(?:ad|advert|item|listing)|price on (?:request|application)|make an offer|reply|verkaufer kontaktieren|anbieter kontaktieren|nachricht (?:schreiben|senden)|anzeige melden|contacter.*|envoyer un message|signaler.*|contact opnemen|bericht sturen|contatta.*|contactar.*)[.!]?$/;
/** How a list counts and sorts what it shows. */
const OF_A_LIST =
  /^(?:[\d.,]+ (?:results?|adverts?|ads|listings|items|anzeigen|treffer|ergebnisse|annonces|resultats|advertenties|resultaten|annunci|risultati|anuncios|resultados)\b.*|sort(?:ed)? by.*|sortieren.*|trier par.*|sorteer.*|ordina per.*|ordenar.*)$/;
const TITLE_SHARE = 0.6;
const TEXT_MOST = 600;
/** A few cards beside an advert; more of them are a list. */
const CARDS_BESIDE = 3;

/**
 * How much the page looks like an advert where no price says so: 0 to 1. Rows that only adverts have count for it, or
 * words of selling in its title or in a text of its own; beside many cards such words may be those of a list.
 */
export function marksOfAdvert(
  reading: Reading,
  rows: Row[],
  title: string,
  windowTitle: string,
  blocks: Block[],
): number {
  const { boxes, lines, zones, cards } = reading;
  const isFree = (index: number) => zones[index] !== AWAY && !cards.lines.has(index);
  const isPriced = (index: number) =>
    PRICE_WORDS.test(boxes[index]!.hint) && sizeOf(boxes[index]!) > 0 && sizeOf(boxes[index]!) <= 2;
  if (rows.some(({ label }) => ['price', 'condition', 'serial'].includes(rowLabel(label) ?? ''))) return 0.5;
  if (boxes.some((box, index) => isPriced(index) && isFree(box.from))) return 0.5;
  const short = lines
    .filter(({ text }, index) => text.length <= 60 && zones[index] !== AWAY && !cards.lines.has(index))
    .map(({ text }) => fold(text).text);
  const isList = short.some((text) => OF_A_LIST.test(text));
  const isDescribed = blocks.some(({ text }) => text.length >= 80);
  const isTitled = reading.titleLine >= 0 && sharedWords(title, windowTitle) >= TITLE_SHARE;
  if (!isList && isTitled && isDescribed && short.some((text) => CONTACT.test(text))) return 0.5;
  if (cards.count > CARDS_BESIDE) return 0;

  const said = [title, ...lines.filter((_, index) => zones[index] === MAIN && isFree(index)).map(({ text }) => text)];
  const selling = said.some((text) => SELLING.test(fold(text.slice(0, TEXT_MOST)).text));
  const hasPlace = rows.some(({ label }) => rowLabel(label) === 'place');
  return selling && (hasPlace || blocks.length > 0) ? 0.5 : selling || hasPlace ? 0.1 : 0;
}
