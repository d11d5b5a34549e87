import { fitted } from '../../text/fitted';
import { fold } from '../../text/fold';

/** Days that a unit is long, by its beginning. English; German; French; Dutch; Italian; Spanish; Nordic. Common usage, from memory. */
const UNITS: [beginning: RegExp, days: number][] = [
  [/^(?:sec|sek|min|hours?$|hrs?$|h$|std|stunde|heure|uur$|uren$|ora$|ore$|hora|timm|timer?$|time$)/, 0],
  [/^(?:days?$|d$|tage?n?$|jours?$|j$|dag|giorn|dias?$|dog)/, 1],
  [/^(?:weeks?$|wks?$|w$|woche|semaine|week|weken|settiman|semana|vecka|veckor|uge)/, 7],
];
const ONE = /^(?:an?|one|einem?|einer|une?|een|un[oa]?|en|ett|et)$/;
const NUMBER = '(\\d{1,3}|(?:an?|one|einem?|einer|une?|een|un[oa]?)(?= ))';
const UNIT = '(\\p{L}{1,11})\\.?';
/** "3 days ago", "vor 3 Tagen", "il y a 2 heures", "3 uur geleden", "2 giorni fa", "hace 5 dias", "for 2 dager siden". */
const AGO = fitted(
  'u',
)`(?<![\p{L}\d])(?:${NUMBER} ?${UNIT} (?:ago|geleden|fa|sedan|siden|atras)|(?:vor|il y a|hace|fa|seit|depuis|ha|da) (?:ca\.? |environ |circa )?${NUMBER} ?${UNIT})(?!\p{L})`;
/** A word that each of these has. */
const IS_AGO = /(?:^|[^a-z])(?:ago|geleden|fa|sedan|siden|atras|vor|il y a|hace|seit|depuis|ha|da)(?![a-z])/;
const TODAY =
  /\b(?:today|just now|moments ago|this morning|heute|gerade eben|soeben|aujourd'?hui|a l'instant|vandaag|zojuist|vanochtend|oggi|adesso|hoy|ahora mismo|idag|i dag)(?!\w)/;
const DAY_BEFORE =
  /\b(?:the day before yesterday|vorgestern|avant-hier|eergisteren|l'altro ieri|ieri l'altro|anteayer|i forgars|i forgårs)(?!\w)/;
const YESTERDAY = /\b(?:yesterday|gestern|hier|gisteren|ieri|ayer|igar|i gar|i går)(?!\w)/;

/**
 * How many days before the day of reading a text says something was ("3 days ago": 3, "heute": 0), or null. Hours and
 * minutes are the same day. French "hier" is German for "here": `language` (a BCP 47 tag) decides.
 */
export function daysAgo(text: string, language: string | null): number | null {
  const folded = fold(text.slice(0, 200)).text;
  const ago = IS_AGO.test(folded) ? AGO.exec(folded) : null;
  if (ago) {
    const [, first, unit, second, otherUnit] = ago;
    const count = first ?? second!;
    const days = UNITS.find(([beginning]) => beginning.test(unit ?? otherUnit!))?.[1];
    if (days !== undefined) return days * (ONE.test(count) ? 1 : Number(count));
  }
  if (TODAY.test(folded)) return 0;
  if (DAY_BEFORE.test(folded)) return 2;
  const yesterday = YESTERDAY.exec(folded);
  if (!yesterday) return null;
  return yesterday[0] === 'hier' && !/^fr\b/.test(language ?? '') ? null : 1;
}

/** The day so many days before an ISO date, as an ISO date; null where that is none. */
export function dayBefore(asOf: string, days: number): string | null {
  const time = Date.parse(`${asOf.slice(0, 10)}T00:00:00Z`);
  return Number.isNaN(time) ? null : new Date(time - days * 86_400_000).toISOString().slice(0, 10);
}
