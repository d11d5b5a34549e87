import { fold } from '../../text/fold';
import type { Reading } from './reading';
import { sizeOf } from './reading';
import { rowLabel } from './row-labels';
import type { Row } from './rows';
import { AWAY, MAIN } from './zones';

const PRICE_WORDS = /\b(?:price|preis|prix|prijs|precio|prezzo)\b/;
/** Words of selling and seeking, in a title or a line of few words. English; German; French. Common usage, from memory. */
const SELLING =
  /\b(?:for sale|wanted|looking for|make (?:me )?an offer|best offer|offers? (?:invited|welcome|over|around)|o\.?n\.?o|price on request|zu verkaufen|verkaufe|suche|gesucht|biete|preis auf anfrage|verhandlungsbasis|vhb|zu verschenken|a vendre|vends|recherche|cherche|faire offre|prix sur demande|a donner)\b/;
const FEW_WORDS = 120;

/** How much the page looks like an advert where no price says so: 0 to 1. Rows that only adverts have, words of selling. */
export function marksOfAdvert(reading: Reading, rows: Row[], title: string): number {
  let strong = 0;
  let weak = 0;
  for (const { label } of rows) {
    const field = rowLabel(label);
    if (field === 'price' || field === 'condition' || field === 'serial') strong++;
    else if (field === 'place' || field === 'listedDate') weak++;
  }
  if (SELLING.test(fold(title.slice(0, 500)).text)) strong++;
  const { boxes, lines, zones, cards } = reading;
  for (const box of boxes) {
    if (
      PRICE_WORDS.test(box.hint) &&
      sizeOf(box) > 0 &&
      sizeOf(box) <= 2 &&
      zones[box.from] !== AWAY &&
      !cards.lines.has(box.from)
    )
      strong++;
  }
  for (const [index, { text }] of lines.entries()) {
    if (zones[index] === MAIN && text.length <= FEW_WORDS && !cards.lines.has(index) && SELLING.test(fold(text).text))
      weak++;
  }
  return strong > 0 || weak > 1 ? 0.5 : weak > 0 ? 0.2 : 0;
}
