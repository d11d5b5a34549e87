import { fitted } from '../../text/fitted';
import { fold } from '../../text/fold';

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

/** A title without the state of its sale before it. */
export const withoutState = (text: string): string => {
  const bare = begins(text) ? text.replace(STATE, '') : text;
  return bare.length >= 3 ? bare : text;
};

export const isState = (text: string): boolean => begins(text) && `${text} · x`.replace(STATE, '') === 'x';
