import { byWords } from '../../text/by-words';

/**
 * Words by which sites and sellers name a condition, at the beginning of a short text. English; German; French; Dutch;
 * Italian; Spanish; Swedish, Danish, Norwegian; Polish; Czech; Portuguese; Finnish; Hungarian. Common usage, from memory.
 */
export const CONDITION_WORDS = byWords(
  /^(?:(?:in|en|w|i|im|v) )?(?:(?:very |nearly |as |like |brand |heavily |lightly |gently |well |hardly )?(?:used|new)|(?:very |quite |fairly )?good|excellent|fair|poor|worn|mint|for (?:parts|spares)|spares (?:or|and) repairs?|refurbished|restored|pre-?owned|second-?hand|(?:not |fully )?working|gebraucht\w*|neu|neuwertig|wie neu|(?:sehr )?gut(?:er|em)?(?: erhalten| zustand)?|in ordnung|akzeptabel|defekt|funktionsfahig|zustand \w+|(?:comme )?neu(?:f|ve)|(?:tres )?bon(?:ne)? etat|etat (?:moyen|neuf|correct|satisfaisant|d'usage)|usagee?s?|satisfaisant|pour pieces|d'?occasion|usat[oai]|(?:come )?nuov[oa]|(?:ottime|buone|discrete) condizioni|(?:buono|ottimo|discreto)(?: stato)?|usad[oa]|(?:como )?nuev[oa]|(?:muy )?buen estado|buen[oa]|segunda mano|aceptable|gebruikt|nieuw|zo goed als nieuw|redelijk|(?:zeer )?goed(?:e staat)?|begagnad|anvan[td]t?|nyskick|(?:bra|gott|bruks|gott begagnat) ?skick|brugt|(?:god|pæn) stand|som ny|(?:pent )?brukt|uzywan[yea]|now[ye]|(?:stan )?(?:bardzo )?dobry|uszkodzon[yea]|pouzit[yea]|zanovni|novy|jako novy|(?:como )?nov[oa]|bom estado|(?:hyva|tyydyttava|erinomainen)|kaytetty|uudenveroinen|hasznalt|ujszeru)\b/,
);
