import { fitted } from '../../text/fitted';
import { fold } from '../../text/fold';
import { saleIn } from '../decide/sale-words';

/** What sites set before a title: the state of the sale, the name of a list. Common usage, from memory. */
const STATES =
  'sold|reserved|on hold|pending|ended|deleted|verkauft|reserviert|geloscht|gelöscht|beendet|vendue?|reservee?|réservée?|verkocht|gereserveerd|venduto|riservato|vendido|reservado|såld|reserverad|solgt|reservert|sprzedane|zarezerwowane|prodáno|rezervováno';
const STATE = fitted('iu')`^(?:(?:${STATES})\s*[•·|:!–—-]\s*|\[\p{L}{1,30}\]\s+)+`;
/** Mostly there is none. */
const BEGINS = new RegExp(`^(?:${fold(STATES).text})`);
const begins = (text: string): boolean => text[0] === '[' || BEGINS.test(fold(text.slice(0, 20)).text);

/** The state of the sale that stands before a title ("SOLD - "), without its marks, or null. */
export function stateBefore(text: string): string | null {
  const [whole] = (begins(text) && STATE.exec(text)) || [];
  return whole === undefined ? null : whole.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, '') || null;
}

/** That it is offered, and its number among others of a sale: what a site or a seller sets before what the thing is. */
const OFFERED = fitted(
  'iu',
)`^(?:(?:for sale|te koop|biete|verkaufe|zu verkaufen|zu verschenken|(?:je )?vends|[àa] (?:vendre|donner)|vendo|in vendita|se vende|en venta|no reserve|sans prix de réserve|ohne mindestpreis)\s*[:|–—-]|(?:lot[eo]?|los|kavel|annonce|anzeige|advert)\.?\s?(?:n[°ºro]\.?\s?)?\d{1,9}[a-z]?\s*[.:|·–—-])\s+(?=.{3})`;
/** "For sale" over an advert names nothing. */
const ONLY_OFFERED = /^(?:for sale|te koop|zu verkaufen|à vendre|in vendita|se vende|en venta)[.:!]?$/i;
/** What it stands in is set off by a mark. */
const SET_OFF = /^[^:|·.–—-]{3,20}[:|·.–—-]/;
/** The state of the sale behind a title, in brackets or after a mark. */
const BEHIND = /(?:[([]([^()[\]]{3,40})[)\]]|\s[•·|–—-]\s([^•·|–—]{3,40}))$/u;

/** The number that a site gives to each: "Listing ID #204170". */
const NUMBERED =
  /(?:\s+[—–|-]\s*|\s+\(?)(?:(?:listing|item|stock|ad|ref|mls|product|order|posting)\W?)+(?:id|nr|no\.?|number)? ?# ?\d{4,}\)?$/i;

/** A title without the state of its sale, and without the words that only say that it is offered, or its number. */
export const withoutState = (text: string): string => {
  const stated = begins(text) ? text.replace(STATE, '') : text;
  const offered = SET_OFF.test(stated) ? stated.replace(OFFERED, '') : stated;
  const bare = offered.includes('#') ? offered.replace(NUMBERED, '') : offered;
  const [behind = '', bracketed, marked] = BEHIND.exec(bare.slice(-48)) ?? [];
  const its = behind && saleIn(bracketed ?? marked ?? '') ? bare.slice(0, -behind.length).trimEnd() : bare;
  return its.length >= 3 ? its : text;
};

export const isState = (text: string): boolean =>
  ONLY_OFFERED.test(text) || (begins(text) && `${text} · x`.replace(STATE, '') === 'x');
