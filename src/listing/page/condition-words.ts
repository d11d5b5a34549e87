import { fold } from '../../text/fold';
import type { Candidate } from '../types';

/**
 * Words by which sites and sellers name a condition, at the beginning of a short text. English; German; French; Dutch;
 * Italian; Spanish; Swedish, Danish, Norwegian; Polish; Czech; Portuguese; Finnish; Hungarian. Common usage, from memory.
 */
const CONDITION_WORDS =
  /^(?:(?:very |nearly |as |like |brand |heavily |lightly |gently |well |hardly )?(?:used|new)|(?:very |quite |fairly )?good|excellent|fair|poor|worn|mint|for (?:parts|spares)|spares (?:or|and) repairs?|refurbished|open[ -]box|ex[ -]display|restored|pre-?owned|second-?hand|(?:not |fully )?working|gebraucht\w*|neu|neuwertig|wie neu|(?:sehr )?gut(?:er|em)?(?: erhalten| zustand)?|in ordnung|akzeptabel|defekt|funktionsfahig|zustand \w+|(?:comme )?neu(?:f|ve)|(?:tres )?bon(?:ne)? etat|etat (?:moyen|neuf|correct|satisfaisant|d'usage)|usagee?s?|satisfaisant|pour pieces|d'?occasion|usat[oai]|(?:come )?nuov[oa]|(?:ottime|buone|discrete) condizioni|(?:buono|ottimo|discreto)(?: stato)?|usad[oa]|(?:como )?nuev[oa]|(?:muy )?buen estado|buen[oa]|segunda mano|aceptable|gebruikt|nieuw|zo goed als nieuw|redelijk|(?:zeer )?goed(?:e staat)?|begagnad|anvan[td]t?|nyskick|(?:bra|gott|bruks|gott begagnat) ?skick|brugt|(?:god|pæn) stand|som ny|(?:pent )?brukt|uzywan[yea]|now[ye]|(?:stan )?(?:bardzo )?dobry|uszkodzon[yea]|pouzit[yea]|zanovni|novy|jako novy|(?:como )?nov[oa]|bom estado|(?:hyva|tyydyttava|erinomainen)|kaytetty|uudenveroinen|hasznalt|ujszeru)(?!\w)/;

/** What may stand before them, apart: all in one takes a browser some milliseconds to get ready. */
const IN = /^(?:in|en|w|i|im|v) /;
export const beginsWithCondition = (folded: string): boolean =>
  CONDITION_WORDS.test(folded) || (IN.test(folded) && CONDITION_WORDS.test(folded.replace(IN, '')));

/** A word for used that is all of a value: what it tells is of the whole thing, whatever its row is called. */
export const USED =
  /^(?:used|second-?hand|pre-?owned|gebraucht\w{0,8}|gebruikt|(?:d')?occasion|usa[dt][oa]|segunda mano|begagnad|br[uk]+t|uzywan[yea]|kaytetty|hasznalt)$/;

/** "Used/good condition": both of the thing; of two of which one says that it is new, one is to be chosen. */
export const isTwofold = (folded: string): boolean =>
  /^(?!n)[^/]+\/(?!n)[^/]+$/.test(folded) && beginsWithCondition(folded.slice(folded.indexOf('/') + 1));

/** A part that is new, not the thing: "brand new starter motor". */
export const NEW_PART = /^(?:brand )?new (?!with|in|o|a|b)(?:\S+ ){2}/;

/** What tells no condition: a label, a badge, a part of a shop, both to choose from; that nothing is told; that the advert is there. */
const UNTOLD =
  /[:?]$|^\W*new!+$|^new (?:arrivals?|in|items|products|releases|season)$|: ?no$|^(?:new|used)\W+(?:and )?(?:new|used)$|^\W*(?:not[ _](?:specified|checked|available|given)|no longer available|keine angabe|n\/?a|activ[eo]|attivo|aktiv)\W*$/;
/** The same in a vocabulary or a template, which says so of whatever a shop sells. */
const NEW_TERM = /^(?:\S*\/)?new(?:condition)?$/i;

export const tellsCondition = ({ value }: Candidate): boolean => !UNTOLD.test(fold(value).text);
export const isNewTerm = ({ value, source }: Candidate): boolean => source !== 'page' && NEW_TERM.test(value);
