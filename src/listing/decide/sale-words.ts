import { fittingTo } from '../../text/fitted';
import { fold } from '../../text/fold';

/** What the words of a page or the terms of a vocabulary say of a sale, and of who sells. Each English; German; French; Dutch; Italian; Spanish; Nordic, Polish, Czech. Common usage, from memory. */

const SOLD =
  /^(?:(?:this (?:item|listing|ad|lot|product)|item|already|now) )?(?:has (?:been |already been )?)?(?:is )?(?:sold(?: out)?(?: for .{1,20})?|no longer for sale|gone)(?: already)?[.!]?$|^(?:bereits |leider |schon )?(?:verkauft|ausverkauft|vergeben)[.!]?$|^(?:deja )?vendue?s?[.!]?$|^(?:reeds |al )?verkocht[.!]?$|^(?:gia )?(?:venduto|venduta)[.!]?$|^(?:ya )?vendid[oa][.!]?$|^(?:sald|solgt|sprzedan[eay]|prodano|vendido)[.!]?$|^(?:sold ?out|soldout)$/;
const RESERVED =
  /^(?:(?:this (?:item|listing|ad)|item|currently|now) )?(?:is )?(?:reserved|on hold|sale pending|pending|pending (?:collection|pick-?up)|under offer|sstc|stc|sold subject to contract)[.!]?$|^unter vorbehalt verkauft$|^vendue? sous reserve$|^onder (?:voorbehoud|optie)(?: verkocht)?$|^(?:derzeit )?(?:reserviert|vorgemerkt)[.!]?$|^(?:article )?(?:reserve|reservee)[.!]?$|^gereserveerd[.!]?$|^(?:riservato|riservata|in trattativa)[.!]?$|^reservad[oa][.!]?$|^(?:reserverad|reserveret|reservert|zarezerwowan[eay]|rezervovano)[.!]?$/;
/** Words of which each of these has one; most short texts have none. */
const OF_SALE =
  /sold|gone|no longer|verkauft|vergeben|vend[ui]|verkocht|sald|solgt|sprzedan|prodano|reserv|rezerv|riservat|hold|pending|offer|stc|vorbehalt|vorgemerkt|voorbehoud|optie|trattativa|zarezerw/;
const PRIVATE =
  /^(?:private(?: seller| sale| individual| advertiser| person)?|by owner|owner|individual|privat(?:er?)?(?: nutzer| anbieter| verkaufer| anzeige| verkauf)?|privatperson|privatverkauf|von privat|particulier(?:e verkoper)?|vendeur particulier|prive|utente privato|privato|venditore privato|(?:vendedor )?particular|privatsaljare|privat saljare|prywatne|osoba prywatna|soukroma osoba|soukromy prodejce|c2c)$/;
const TRADE =
  /^(?:trade(?: seller)?|trader|dealer|business(?: seller)?|professional(?: seller)?|shop|store|commercial|by dealer|gewerblich(?:er?)?(?: nutzer| anbieter| verkaufer| anzeige)?|handler|firma|geschaft|pro|professionnel|vendeur professionnel|vendeur pro|zakelijk(?:e verkoper)?|bedrijf|handelaar|winkel|professionista|venditore professionale|azienda|negozio|rivenditore|(?:vendedor )?profesional|tienda|empresa|foretag|forhandler|bedrift|firmowe|firma|obchod|b2c)$/;

const AROUND = fittingTo('gu')`^[^\p{L}]+|[^\p{L}\d.!]+$`;

/** Of the same text it is asked what it says of the sale, and of the seller. */
let asked = '';
let answer = '';

function bare(text: string): string {
  if (text !== asked) {
    const folded = fold(text.slice(0, 80)).text;
    answer = folded.replace(AROUND(folded), '').replace(/ +/g, ' ');
    asked = text;
  }
  return answer;
}

export type Sale = 'sold' | 'reserved';
export type SellerKind = 'private' | 'trade';

/** "Verkauft", "This item has been sold", "https://schema.org/SoldOut": what a short text says of the sale, or null. */
export function saleIn(text: string): Sale | null {
  if (/(?:^|\/)SoldOut$/.test(text)) return 'sold';
  if (/(?:^|\/)Reserved$/.test(text)) return 'reserved';
  if (text.length > 60) return null;
  // "12 sold" counts others.
  if (/^\W*\d/.test(text)) return null;
  const word = bare(text);
  if (!OF_SALE.test(word)) return null;
  return SOLD.test(word) ? 'sold' : RESERVED.test(word) ? 'reserved' : null;
}

/** Words of which each of these has one. */
const OF_SELLER =
  /priv|owner|individual|particul|prywatn|soukrom|c2c|trade|deal|business|prof|shop|store|commerc|gewerb|handl|firm|gesch|pro|zakelijk|bedrijf|handel|winkel|azienda|negozio|rivend|tienda|empresa|foretag|forhand|bedrift|obchod|b2c/;

/** "Privater Nutzer", "Trade seller": who a short text says is selling, or null. */
export function sellerIn(text: string): SellerKind | null {
  if (text.length > 40) return null;
  const word = bare(text).replace(/[.!]$/, '');
  if (!OF_SELLER.test(word)) return null;
  return PRIVATE.test(word) ? 'private' : TRADE.test(word) ? 'trade' : null;
}
