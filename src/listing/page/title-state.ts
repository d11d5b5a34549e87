import { fitted } from '../../text/fitted';

/** What sites set before a title: the state of the sale, the name of a list. Common usage, from memory. */
const STATE = fitted(
  /^(?:(?:sold|reserved|on hold|pending|ended|deleted|verkauft|reserviert|geloscht|gelöscht|beendet|vendue?|reservee?|réservée?|verkocht|gereserveerd|venduto|riservato|vendido|reservado|såld|reserverad|solgt|reservert|sprzedane|zarezerwowane|prodáno|rezervováno)\s*[•·|:!–—-]\s*|\[\p{L}{1,30}\]\s+)+/iu,
);

/** The state of the sale that stands before a title ("SOLD - "), without its marks, or null. */
export function stateBefore(text: string): string | null {
  const [whole] = STATE.exec(text) ?? [];
  return whole === undefined ? null : whole.replace(/^[^\p{L}]+|[^\p{L}]+$/gu, '') || null;
}

/** A title without the state of its sale before it. */
export const withoutState = (text: string): string => {
  const bare = text.replace(STATE, '');
  return bare.length >= 3 ? bare : text;
};

export const isState = (text: string): boolean => `${text} · x`.replace(STATE, '') === 'x';
