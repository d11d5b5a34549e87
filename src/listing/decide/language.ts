import { fold } from '../../text/fold';

/** Small words that one language has and the others have not; common usage, from memory. */
const SMALL_WORDS: Record<string, string> = {
  en: 'the and with is this has it was of for not but are you very',
  de: 'preis zustand ort anzeige verkaufe nur und der die das ist mit nicht ein eine fur auch sie wurde sehr aus noch',
  fr: 'prix etat lieu annonce vends le les des une est avec pour dans cette tres pas sur vous etait du',
  nl: 'prijs staat conditie omschrijving bieden het een van niet zijn voor deze ook maar heeft naar nog goed',
  it: 'prezzo stato annuncio vendo condizione il della con per una sono questa non molto anche degli nel',
  es: 'precio estado anuncio envio vendo el los con una para esta muy pero como tiene por las del',
};
const WORDS_LEAST = 4;

/** The language of a text by its small words ("en"), or null where it is too short or two are as likely. */
export function guessLanguage(text: string): string | null {
  const words = fold(text.slice(0, 3000)).text.match(/[a-z]+/g) ?? [];
  const counts = Object.entries(SMALL_WORDS).map(([language, small]): [string, number] => {
    const known = new Set(small.split(' '));
    return [language, words.filter((word) => known.has(word)).length];
  });
  counts.sort((a, b) => b[1] - a[1]);
  const [first, second] = counts;
  return first && second && first[1] >= WORDS_LEAST && first[1] >= second[1] * 2 ? first[0] : null;
}
