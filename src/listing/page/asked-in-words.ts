import { findMoney, type MoneyOptions } from '../../quantity/money';
import { fold } from '../../text/fold';
import type { PriceHow } from '../types';
import { howIn, isOtherMoney } from './amounts';

/** A price told in the seller's own sentences. */
export interface AskedInWords {
  /** The clause that tells it, as written. */
  text: string;
  how: PriceHow | null;
}

const TEXT_MOST = 5000;
const REACH = 50;

/** Before an amount that is asked. English; German; French; Dutch; Italian; Spanish; Nordic. Common usage, from memory. */
const ASKS_BEFORE =
  /\b(?:asking(?: price)?|price(?:d at)?|i (?:want|ask)|(?:would|i'd|i would) like|looking for|yours for|(?:can|could|must) go for|have it for|selling (?:it )?for|sell for|sale for|let (?:it )?go for|dropped (?:it )?to|reduced to|take|offers? (?:over|around|above|near)|first|preis(?:vorstellung)?|preislich|verkaufe? .{0,20}fur|fur nur|abzugeben fur|(?:kann|darf|soll) fur|mochte(?: gerne?)?|hatte gern|stelle mir .{0,12}vor|fp|vb|vhb|festpreis|prix(?: demande)?|je (?:le |la )?vends .{0,12}|demande|je voudrais|cede .{0,10}|laisse .{0,10}|part(?:irait)? a|vraagprijs|vraag(?: er| ervoor)?|wil er|(?:mag|kan|moet) (?:weg )?voor|prijs|te koop voor|chiedo|prezzo|vendo .{0,10}a|l[oa] (?:cedo|lascio) a|richiesta|pido|precio|vendo .{0,10}por|lo vendo (?:por|a)|l[oa] dejo (?:en|por)|begar|pris|saljes for|selges for|onsker)(?: (?:is|of|at|for|ist|von|bei|um|de|a|en|er|voor|van|di|son|es|in|zijn|about|around|ca|circa|etwa|environ))*[\s:.,]*$/;
/** After it. */
const ASKS_AFTER =
  /^[\s,(]*(?:o\.?n\.?o\b|o\.?b\.?o\b|or (?:near(?:est)?|best) offer|firm|the lot|for the lot|the pair|all in|collected|cash|if you collect|non[- ]negoti\w*|negoti\w*|vb\b|vhb\b|fest\b|festpreis|komplett|zusammen|ferme?\b|a debattre|negociable|le tout|l'ensemble|er ?voor|vaste prijs|vast\b|te bevragen|trattabil\w*|non trattabil\w*|to the first|takes it|secures?|and it'?s yours|buys it|tutto|fisso|negociables?|fijo|todo)/;
/**
 * What the seller's words ask, or null: the first amount with words of asking beside it, or that is a clause by itself.
 * Another that they name may be anybody's.
 */
export function askedInWords(words: string, options: MoneyOptions): AskedInWords | null {
  const text = words.slice(0, TEXT_MOST);
  const told = findMoney(text, options).slice(0, 20);
  for (const [index, money] of told.entries()) {
    const from = Math.max(told[index - 1]?.end ?? 0, money.start - REACH, startOfClause(text, money.start));
    const to = Math.min(told[index + 1]?.start ?? text.length, money.end + REACH, endOfClause(text, money.end));
    const before = fold(text.slice(from, money.start)).text;
    const after = fold(text.slice(money.end, to)).text;
    const isAlone = before.trim() === '' && after.trim() === '';
    if (!isAlone && !isAsked(before, after)) continue;
    const near = before.split(/[,;(]/).at(-1)!.slice(-25);
    const behind = after.split(/[,;(+]| plus | zzgl/)[0]!.slice(0, 16);
    if (isOtherMoney(near) || isOtherMoney(behind)) continue;
    return { text: money.quote, how: howIn(before) ?? (money.how === 'asking' ? null : money.how) };
  }
  return null;
}

/** True where the folded words right before or after an amount say that it is asked. */
export const isAsked = (before: string, after: string): boolean => ASKS_BEFORE.test(before) || ASKS_AFTER.test(after);

function startOfClause(text: string, at: number): number {
  const before = text.slice(0, at);
  return Math.max(...['. ', '! ', '? ', '; ', '\n'].map((mark) => before.lastIndexOf(mark) + 1));
}

function endOfClause(text: string, at: number): number {
  const end = text.slice(at).search(/[.!?;](?:\s|$)|\n/);
  return end < 0 ? text.length : at + end;
}
