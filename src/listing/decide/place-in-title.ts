import { fold } from '../../text/fold';

const WORDS_LEAST = 2;
/** What joins a place to a title: a mark, or a word for "in". The languages of the labels. */
const JOINS = /(?:\s*[,|–—(-]\s*|\s+(?:in|en|à|a|bei|te|i|w|v|em)\s+)$/iu;

/** A title without the place that the page glued to its end: "Typewriter in Netherholme", "Typewriter - Netherholme". */
export function withoutPlace(title: string, place: string): string {
  // A number of both: the "place" is itself a part of the title, "Treadle 1600 - Brindfold" or a street.
  const [number] = /\d+/.exec(place) ?? [];
  if (number && title.includes(number)) return title;
  const folded = fold(title);
  for (const name of [place, place.split(/[,(/]/)[0]!.replace(/\S*\d\S*/g, '')]) {
    const its = fold(name).text.trim();
    const end = folded.text.replace(/\)?\s*$/, '').length;
    if (its.length < 3 || !folded.text.slice(0, end).endsWith(its)) continue;
    const { start } = folded.toOriginal(end - its.length, end);
    const before = title.slice(0, start);
    const bare = before.replace(JOINS, '');
    if (bare !== before && (bare.match(/[\p{L}\p{N}]+/gu)?.length ?? 0) >= WORDS_LEAST) return bare.trim();
  }
  return title;
}
