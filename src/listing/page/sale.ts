import { saleIn, sellerIn } from '../decide/sale-words';
import type { Candidate } from '../types';
import { CONTROL } from '../types';
import { headingLabel } from './heading-labels';
import { isOnly, levelOf, type Reading, runsOf } from './reading';
import type { Row } from './rows';
import { stateBefore } from './title-state';
import { AWAY } from './zones';

const LINES_NEAR_TITLE = 25;
const LINE_MOST = 80;
/** Labels of rows that say who sells. The languages of the labels; from memory. */
const WHO =
  /^(?:seller type|type of seller|seller|for sale by|sold by|offered by|advertiser(?: type)?|anbieter(?:typ)?|verkaufer(?:typ)?|angeboten von|inserent|vendeur|type de vendeur|annonceur|verkoper|type verkoper|aangeboden door|venditore|tipo di venditore|inserzionista|vendedor|tipo de vendedor|anunciante|saljare|saljes av|selger|saelger|sprzedawca|oferta od|prodejce|typ)$/;
/** Labels of rows that say how the sale stands. */
const STANDS =
  /^(?:status|sale status|availability|available|state of sale|verfugbarkeit|verfugbar|disponibilite|beschikbaarheid|disponibilita|disponibilidad|stan oferty|dostupnost)$/;

/**
 * Whether the thing is sold or reserved, and who sells it, as the page shows it: a badge or a short text in the advert's
 * own part, what stands before the title, a row. Near the title it weighs more.
 */
export function saleOf(reading: Reading, rows: readonly Row[]): Candidate[] {
  const { lines, zones, cards, titleLine } = reading;
  const found: Candidate[] = [];
  const add = (field: 'sale' | 'seller', value: string, weight: number) =>
    found.push({ field, value, source: 'page', weight });

  for (const [index, line] of lines.entries()) {
    if (line.text.length > LINE_MOST || zones[index] === AWAY || cards.lines.has(index) || isOnly(line, CONTROL))
      continue;
    const distance = titleLine < 0 ? LINES_NEAR_TITLE : Math.abs(index - titleLine);
    const near = distance <= LINES_NEAR_TITLE ? 0.15 : 0;
    const state = levelOf(reading, index) > 0 ? stateBefore(line.text) : null;
    if (state && distance <= 3) add('sale', state, 0.8);
    for (const piece of piecesIn(line.text, runsOf(line))) {
      if (headingLabel(piece) === 'section' && levelOf(reading, index) > 0) continue;
      if (saleIn(piece)) add('sale', piece, 0.5 + near);
      if (sellerIn(piece)) add('seller', piece, 0.4 + near);
    }
  }
  for (const { label, value } of rows) {
    const name = label.toLowerCase();
    if (WHO.test(name) && sellerIn(value)) add('seller', value, 0.85);
    if (STANDS.test(name) && saleIn(value)) add('sale', value, 0.8);
  }
  return found.slice(0, 20);
}

/** A line, and its parts between marks or in elements of their own. */
function piecesIn(text: string, runs: { text: string }[]): string[] {
  const parts = [
    text,
    ...text.split(/\s*[·|•›»,]\s*|\s[–—-]\s/),
    ...(runs.length > 1 ? runs.map((run) => run.text) : []),
  ];
  return [...new Set(parts.map((part) => part.trim()).filter(Boolean))];
}
