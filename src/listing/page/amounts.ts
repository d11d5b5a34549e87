import { fold } from '../../text/fold';
import type { PriceHow } from '../types';
import { moneySpots } from './money-spots';
import { rowLabel } from './row-labels';

/** An amount of money in a line, and what the words around it in the same line say of it. */
export interface Amount {
  start: number;
  end: number;
  /** Not what the thing costs: postage, an instalment, a fee, an old price, a saving. */
  other: boolean;
  how: PriceHow | null;
}

/** What stands between two amounts: the words before a mark belong to the first, those after it to the second. */
const PARTING = /[+|·•;()/]|\s[-–—]\s|,\s|\b(?:plus|zzgl|and|und|et)(?!\w)/;

const POSTAGE =
  /\b(?:postage|shipping|delivery|p&p|carriage|handling|courier|pallet|insured post|spedition|versand\w*|porto|lieferung|liefer(?!bar|zeit)\w*|livraison|frais|port|expedition|verzend\w*|bezorg\w*|spedizione|envio|gastos|frakt\w*|fragt\w*|wysylk\w*|dostaw\w*|przesylk\w*|doprav\w*|postovne|frete|portes|toimitus\w*|szallitas\w*)(?!\w)/;
const WITH_POSTAGE =
  /\b(?:incl\w*|inkl\w*|inbegr\w*|compris\w*|free|gratis|kostenlos\w*|offert\w*|offerte|franco)(?!\w)/;
const PERIOD = /month|mo|mes|maand|week|woche|semaine|day|tag|jour/;
const PER_PERIOD =
  /(?:\/|\bper|\bpro|\bpar|\bal|\bje|\ba) ?(?:month|mo\b|monat|mois|mese|mes\b|maand|week|woche|semaine|day|tag|jour)/;
const INSTALMENT =
  /\b(?:instal?lments?|monthly|mensuel\w*|monatlich\w*|raten?|ratenzahlung|\d+ ?x|mtl|payments? of|cuotas?|mensualidades|prestacoes|parcelas|versements?|termijnen|\d+ (?:mal|fois|keer|veces|volte)|finance|leasing|per manad|pr\.? maned|manedlig\w*|miesiecznie|mesicne|al mese|mensais)(?!\w)/;
/** Words that stand before the amount that they speak of, and say nothing of one before them. */
const BEFORE_OTHER =
  /\b(?:was|before|previously|originally|save|sparen|economisez|instead of|statt|bisher|vorher|ehemals|au lieu de|van|voorheen|in plaats van|invece di|anziche|prima|antes|en vez de|precio anterior|prezzo precedente|ancien prix|alter preis|ursprunglich|tidigare|ordinarie pris)(?!\w)/;
const OTHER_MONEY =
  /\b(?:(?:orders?|shipping|delivery|postage|versand\w*|livraison|frakt) (?:over|above|ab|uber|des|for over)|saving|off|rrp|msrp|list price|listino|nieuwprijs|nypris|prezzo (?:da |del )?nuovo|precio nuevo|retail|new price|neupreis|np|uvp|prix neuf|insured|insurance|versichert\w*|deposit|kaution|caution|acompte|anzahlung|fees?|gebuhr\w*|voucher|preisvorschlag|minimum offer|least offer|offre minimum|suggestion|gutschein|coupon|credit|minimum order|estimate[ds]?|estimation|schatz\w*|taxe|vardering|vurdering|taxat\w*|stima|valutazione|tasacion|szacun\w*|odhad|next bid|minimum bid|(?:min|minst)\.? (?:bid|bud)|prochaine enchere|nachstes gebot|prossima offerta|premium|aufgeld|protection|protezione|protecao|kauferschutz|proteccion|approximately|umgerechnet|converted|equivalent|worth|valued at|valeur|waarde|wert|cost me|paid|bezahlt|gekostet|paye|(?:median|average|gemiddelde) (?:\w+ )?(?:price|prijs)|durchschnittspreis|(?:prix|precio|prezzo|preco) (?:moyen|medio)|hors honoraires)(?!\w)/;

/** What a piece of ground, or of power, costs: "£289 / sqft", "Price per area". */
const MEASURE = /m2|mq|qm|sq|area|kwh/;
const OF_MEASURE = /(?:\/|\b(?:per|pro|par|por|al|au|je)\b) ?(?:m2|mq|qm|sq\b|sq\.|sq[fm]|square|area|kwh)/;

const BID =
  /\b(?:bid|hochstgebot|startgebot|gebot|enchere|mise a prix|bod|offerta attuale|base d'asta|puja|bud|utropspris|aktualna (?:oferta|cena)|licytacja|cena wywolawcza|vyvolavaci cena|prihoz|lance|korkein tarjous)(?!\w)/;
const SOLD =
  /\b(?:sold|hammer|verkauft|zuschlag|vendu\w*|adjuge|verkocht|vendido|sald|solgt|sprzedan\w*|prodano|myyty)(?!\w)/;
const FROM =
  /(?:^|\s)(?:from|starting at|starting from|ab|a partir de|a partire da|des|vanaf|desde|da|od|fran|fra|от|від)\s*:?\s*$/;

/** A bid that is only the first, while others may have been made. */
const STARTING =
  /\b(?:start(?:ing)?|opening|minimum|startgebot|startpreis|mindestgebot|mise a prix|prix de depart|openingsbod|base d'asta|prezzo base|precio de salida|utropspris|utgangspris|wywolawcz\w*|vyvolavaci|inicial)(?!\w)/;
export const isStartingBid = (folded: string): boolean => STARTING.test(folded);

/** How the words of a label or of the text before an amount say that a price is meant, or null. */
export function howIn(folded: string): PriceHow | null {
  if (SOLD.test(folded)) return 'sold';
  if (BID.test(folded)) return 'bid';
  return FROM.test(folded) || /\bprice from|preis ab\b/.test(folded) ? 'from' : null;
}

const TAX = '(?:vat|sales tax|tax|mwst|mehrwertsteuer|ust|tva|ttc|btw|iva|moms|mva|dph|ddv|gst)';
/** Most words beside an amount are told by it to be of none. */
const NAMES_TAX = /vat|tax|mwst|mehrwert|ust|tva|ttc|btw|iva|moms|mva|dph|ddv|gst|h\.?t/;
/** The tax itself, or an amount that lacks it. */
const TAX_ALONE = new RegExp(`(?:^|\\W)${TAX}(?: \\(?\\d+ ?%\\)?)?\\W*$`);
/** What has the tax in it: "Incl. VAT: £12". */
const TAX_WITHIN = new RegExp(
  `\\b(?:inc|incl|including|inclusive of|with|inkl|mit|avec|inclus\\w*|compris\\w*|met|con|med|s|z|cu) ?\\.? ?${TAX}\\W*$`,
);
/** The rate of the tax, which stands between its name and the amount. */
const RATE = / ?\(\d{1,2}(?:[.,]\d)? ?%\)/g;
const TAX_BEHIND = new RegExp(
  `^\\W*(?:(?:ex|excl|excluding|without|before|ohne|zzgl|exkl|hors|excl|sans|sin|senza|escl|uden|utan|netto)\\b\\.? ?(?:of )?${TAX}|h\\.?t\\b|${TAX}$)`,
);

/** Beside most amounts stands nothing. */
const WORDED = /[a-z]/;
const ESTIMATED = /\best\.\s*$/;
/** True where the words say that an amount is something other than the price. */
export function isOtherMoney(folded: string): boolean {
  if (!WORDED.test(folded)) return false;
  return (
    BEFORE_OTHER.test(folded) ||
    ESTIMATED.test(folded) ||
    (NAMES_TAX.test(folded) && TAX_ALONE.test(folded) && !TAX_WITHIN.test(folded)) ||
    isOtherBehind(folded)
  );
}

/** By how much a price was lowered says nothing against what it is now. */
const SHARE_OFF =
  /[-–(]?\d+ ?%(?: (?:off|discount|rabatt|gunstiger|reduziert|de remise|korting|di sconto|de descuento|dto))?\)?/g;

const isOtherBehind = (folded: string): boolean =>
  WORDED.test(folded) &&
  ((POSTAGE.test(folded) && !WITH_POSTAGE.test(folded)) ||
    INSTALMENT.test(folded) ||
    (PERIOD.test(folded) && PER_PERIOD.test(folded)) ||
    (MEASURE.test(folded) && OF_MEASURE.test(folded)) ||
    (NAMES_TAX.test(folded) && TAX_BEHIND.test(folded)) ||
    OTHER_MONEY.test(folded));

const PRICE_WORD =
  /(?:\b(?:price|prix|precio|prezzo|pris|cena|preco|hinta|bid|gebot|bod|enchere|offerta|puja|bud)|(?:preis|prijs|pris))(?!\w)/;
const LABEL_WORDS_MOST = 5;

/** A label that says that the amount behind it is the price, known as such or by one of its words: "Today's price". */
export function isPriceLabel(label: string): boolean {
  const known = rowLabel(label);
  if (known) return known === 'price';
  if (label === '' || label.length > 48 || /[.!?]\s*$/.test(label) || label.split(' ').length > LABEL_WORDS_MOST)
    return false;
  const folded = fold(label).text;
  return PRICE_WORD.test(folded) && !isOtherMoney(folded);
}

const BASKET_WORD = /basket|cart|bag|warenkorb|panier|winkel|mandje|carr|cesta|varukorg|kurv|kos[zi]/;
/** "Basket (0)", as a shop begins the line; not a bicycle with one. */
const BASKET =
  /^\W*(?:(?:my|your|mein|ihr|mon|votre|mijn|il mio|mi) )?(?:basket|cart|bag|warenkorb|panier|winkelwagen|winkelmand|mandje|carrello|carrito|cesta|varukorg|kurv|koszyk|kosik)\b.{0,12}$/;

const NONE: Amount[] = [];
/** Several readers ask about the same lines. */
const known = new Map<string, Amount[]>();
const KNOWN_MOST = 2000;
const KNOWN_LONG = 1000;

/** The amounts of a line, at most eight; not to be changed. */
export function amountsIn(text: string): Amount[] {
  if (!/\d/.test(text)) return NONE;
  const before = known.get(text);
  if (before) return before;
  const found = readAmounts(text);
  if (known.size >= KNOWN_MOST) known.clear();
  if (text.length <= KNOWN_LONG) known.set(text, found);
  return found;
}

function readAmounts(text: string): Amount[] {
  const found = moneySpots(text.slice(0, 600), 8);
  return found.map(({ start, end: behindIt }, index) => {
    const written = text.slice(start, behindIt);
    // What lies in an empty basket.
    const isNothing = /^[^1-9]*$/.test(written);
    const end = start + written.trimEnd().length;
    const before = fold(text.slice(found[index - 1]?.end ?? Math.max(0, start - 60), start)).text;
    const after = fold(text.slice(end, Math.min(found[index + 1]?.start ?? text.length, end + 60))).text;
    const near = before.replace(RATE, '').split(PARTING).at(-1) ?? '';
    // A slash parts two prices, but not an amount from its month.
    const behind = /^\s*\//.test(after) ? after : (after.split(PARTING)[0] ?? '');
    return {
      start,
      end,
      other:
        isNothing ||
        (BASKET_WORD.test(before) && BASKET.test(before)) ||
        isOtherMoney(near) ||
        isOtherBehind(behind.replace(SHARE_OFF, '')),
      how: howIn(near),
    };
  });
}
