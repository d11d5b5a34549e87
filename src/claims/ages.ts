import { inEitherForm } from '../text/either-form';
import { isOfAnother } from './dated-noun';
import { matchesNear } from './matches-near';
import { quoteOf, tokenAt } from './part-text';
import type { AgeClaim } from './reading';
import type { PartReading } from './values';

/** "Over 100 years old", "plus de 120 ans", "über 100 Jahre alt". Only "over" and its like: "nearly 70" may be less. */
const AT_LEAST = inEitherForm(
  /(?<![\p{L}\p{N}])(?:over|more than|at least|well over|above|über|mehr als|mindestens|plus de|au moins) (?:a )?(?:(\d{2,3}|hundred|hundert|cent)[- ]?(?:years?|yrs?|jahre?|ans)(?:[- ]old| alt| d'âge)?|(?:(?:ein|un) )?(century|jahrhundert|siècle)(?: old| alt)?)(?![\p{L}\p{N}])/iuy,
);
/** "150 years old": of a hundred and more it is the thing that is so old. Such words are round. */
const ROUND = inEitherForm(/(?<![\p{L}\p{N}-])([12]\d{2})[- ](?:years?[- ]old|jahre alt|ans d'âge)(?![\p{L}\p{N}])/giu);
const ROUNDING = 0.95;
/** What such a statement begins with, folded. */
const CUES = /over|more than|at least|well over|above|uber|mehr als|mindestens|plus de|au moins/g;
const WORDS: Record<string, number> = { hundred: 100, hundert: 100, cent: 100 };
/** Years of something else than the thing's age: "more than 40 years of experience", "for over 30 years". */
const OF_ELSE = inEitherForm(/^ (?:of|in|on|ago|erfahrung|d'expérience|lang)\b/i);
const SPAN = /\b(?:for|since|seit|depuis|in) $/i;

/** Ages that the advert gives the thing. */
export function agesIn(reading: PartReading): AgeClaim[] {
  const { part, stances } = reading;
  const least = matchesNear(part.text, AT_LEAST, CUES);
  const round = [...part.text.matchAll(ROUND)].filter(
    ({ index }) => !least.some((one) => index >= one.index && index < one.index + one[0].length),
  );
  return [...least, ...round].flatMap((found) => {
    const start = found.index;
    const end = start + found[0].length;
    if (OF_ELSE.test(part.text.slice(end, end + 20)) || SPAN.test(part.text.slice(Math.max(0, start - 8), start)))
      return [];
    const first = tokenAt(part, start);
    if (isOfAnother(reading, first)) return [];
    const stance = stances.at(first, tokenAt(part, end - 1));
    return [
      {
        ...quoteOf(part, start, end),
        ...stance,
        atLeast: least.includes(found) ? yearsOf(found) : Math.floor(ROUNDING * yearsOf(found)),
      },
    ];
  });
}

function yearsOf([, count]: RegExpExecArray): number {
  return count === undefined ? 100 : (WORDS[count.toLowerCase()] ?? Number(count));
}
