import { fold } from '../../text/fold';
import type { Line } from '../types';
import type { Block } from './description';
import { PRICE_NAMES } from './price-names';
import { type Reading, runsOf, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import type { Row } from './rows';
import { AWAY, MAIN } from './zones';

/** Words of selling and seeking. English; German; French; the other languages of the labels. Common usage, from memory. */
const SELLING =
  /\b(?:for sale|selling|wanted|looking for|make (?:me )?an offer|best offer|offers? (?:invited|welcome|over|around|in writing)|open to offers|o\.?n\.?o|price on request|collection only|cash on collection|buyer collects|pick-?up only|free to (?:a )?(?:good )?home|zu verkaufen|verkaufe|suche|gesucht|biete|preis auf anfrage|verhandlungsbasis|vhb|zu verschenken|selbstabholer|nur abholung|privatverkauf|a vendre|vends|recherche|cherche|faire offre|prix sur demande|a donner|a retirer|remise en main propre|te koop|gezocht|ophalen|vendo|cerco|regalo|in vendita|se vende|busco|saljes|kopes|hamtas|selges|salges|sprzedam|kupie|oddam|prodam|koupim|vende-se|myydaan|elado)(?!\w)/;
/** Words by which a page lets a reader of one advert write to its seller, bid, buy or keep it in mind. */
const CONTACT =
  /^(?:contact (?:the )?(?:seller|advertiser|owner)|message(?: (?:the )?seller)?|send (?:the )?(?:seller a )?message|write to .*|ask (?:the )?seller.*|please contact|report (?:this )?(?:ad|advert|item|listing)|price on (?:request|application)|make an? offer|reply|place bid|bid now|buy(?: it)? now|add to (?:basket|cart)|show (?:phone )?number|verkaufer kontaktieren|anbieter kontaktieren|nachricht (?:schreiben|senden)|anzeige melden|gebot abgeben|jetzt bieten|sofort kaufen|in den warenkorb|frage stellen|contacter.*|envoyer un message|signaler.*|encherir|ajouter au panier|contact opnemen|(?:stuur )?bericht(?: sturen)?|plaats bod|contatta.*|scrivi .*|chiedi .*|contactar.*|contacta con .*|enviar mensaje|enviar mensagem|fazer proposta|kontakta .*|skicka meddelande|lagg bud|send melding|send besked|kontakt .*|napisz.*|wyslij wiadomosc|zglos|kup teraz|napsat .*|odpovedet.*|laheta viesti|ota yhteytta|контакт\S* с?.?.?(?:продавц|подател)\S*|(?:связаться|написать|позвонить|звязатися) .*|показать (?:телефон|номер).*|(?:добав\S* )?в? ?(?:корзину|количката|кошницата|кошик)|купить|купи(?:ти)?|заказать)[.!]?$/;
/** How a list counts and sorts what it shows. */
const OF_A_LIST =
  /^(?:(?:\d+\s?[-–]\s?\d+ (?:of|von|sur|van|di|de|av|z) )?[\d.,]+ (?:results?|adverts?|ads|listings|items|things|anzeigen|treffer|ergebnisse|annonces|resultats|advertenties|resultaten|annunci|risultati|anuncios|resultados|annonser|annoncer|traffar|ogloszen\w*|wynik\w*|inzerat\w*|ilmoitus\w*)\b.*|sort(?:ed)? by.*|sortieren.*|trier par.*|sorteer.*|ordina per.*|ordenar.*|sortera.*|sortuj.*)$/;
const LIST_BEGINS = /^(?:[\d.,].*[a-z]|sort|trier|ordina|ordenar)/;
/** A title that says that there is no advert any more, or no page. The same languages. */
const GONE =
  /\b(?:no longer (?:available|exists?|for sale|online)|not (?:available|found)|(?:has|have) (?:expired|ended|been (?:removed|deleted))|does not exist|page not found|404|nicht mehr|nicht gefunden|abgelaufen|wurde geloscht|n'existe (?:plus|pas)|n'est plus|introuvable|a ete supprimee|niet (?:meer|gevonden)|bestaat niet|verlopen|non (?:(?:c'?)?e )?(?:piu|esiste|disponibile|trovat\w)|scadut\w|ya no|no (?:existe|disponible|encontrad\w)|caducad\w|finns inte|har tagits bort|findes ikke|finnes ikke|nie istnieje|nieaktualn\w*|zakonczon\w*|neexistuje|nenalezen\w*|ja nao|nao (?:existe|encontrad\w)|ei (?:enaa|loydy))(?!\w)/;
const TEXT_MOST = 600;

/** What a page has of an advert besides a price. */
export interface Marks {
  /** Rows that only adverts have, or a box called a price. */
  particulars: boolean;
  contact: boolean;
  /** Words of selling or seeking in the title or the main part. */
  selling: boolean;
  /** A row that says where. */
  place: boolean;
  /** The page counts or sorts what it shows. */
  list: boolean;
  /** It says that the thing is sold or reserved. */
  sale: boolean;
  /** The seller's words ask a price. */
  asks: boolean;
  /** The seller's words stand under a label that says so. */
  labelled: boolean;
  /** The title says that the advert is no more. */
  gone: boolean;
}

/** `titles`: the page's title, and the one that its form alone lets expect; `windowTitle` may say that the advert is gone. */
export function marksOf(
  reading: Reading,
  rows: Row[],
  titles: string[],
  blocks: Block[],
  windowTitle: string,
): Omit<Marks, 'sale' | 'asks' | 'labelled'> {
  const { boxes, lines, zones, cards } = reading;
  const isFree = (index: number) => zones[index] !== AWAY && !cards.lines.has(index);
  const isPriced = (index: number) =>
    PRICE_NAMES.test(boxes[index]!.hint) && sizeOf(boxes[index]!) > 0 && sizeOf(boxes[index]!) <= 2;
  const hasPricePart = (line: Line) =>
    (line.runs?.length ?? 0) > 1 && runsOf(line).some(({ hint, text }) => PRICE_NAMES.test(hint) && /\d/.test(text));
  const short = lines
    .filter(({ text }, index) => text.length <= 60 && isFree(index))
    .map(({ text }) => fold(text).text.trim());
  const said = [
    ...titles,
    ...lines.filter((_, index) => zones[index] === MAIN && isFree(index)).map(({ text }) => text),
  ];
  return {
    particulars:
      rows.some(({ label }) => ['price', 'condition', 'serial'].includes(rowLabel(label) ?? '')) ||
      boxes.some((box, index) => isPriced(index) && isFree(box.from)) ||
      lines.some((line, index) => zones[index] === MAIN && isFree(index) && hasPricePart(line)),
    contact: short.some((text) => CONTACT.test(text)),
    selling: blocks.length > 0 && said.some((text) => SELLING.test(fold(text.slice(0, TEXT_MOST)).text)),
    place: rows.some(({ label }) => rowLabel(label) === 'place'),
    gone: [...titles, windowTitle].some((title) => GONE.test(fold(title.slice(0, TEXT_MOST)).text)),
    list: short.some((text) => LIST_BEGINS.test(text) && OF_A_LIST.test(text)),
  };
}
