import type { Reading } from '../claims/reading';
import { ANY_PLACE, ANY_YEAR, PLACE_TRUST, YEAR_TRUST } from './assumptions';
import type { Hypothesis } from './field';

/** What "about" adds on either side of a year. */
const ABOUT_YEARS = 5;

/**
 * The years that the advert gives for when it was made, as natural logarithms for each hypothesis, or null where it
 * gives none. Several mentions are weighed alike, none counts twice. Of a type or "none" every year is as likely.
 */
export function yearLogs(reading: Reading, hypotheses: readonly Hypothesis[]): Float64Array | null {
  const claims = reading.years.filter(
    ({ kind, subject, stance }) => kind === 'made' && subject === 'this' && (stance === 'says' || stance === 'guesses'),
  );
  if (claims.length === 0) return null;
  return Float64Array.from(hypotheses, ({ model }) => {
    const made = model?.def.made;
    if (made?.from === undefined && made?.to === undefined) return Math.log(ANY_YEAR);
    const first = made.from ?? made.to! - 1 / ANY_YEAR / 2;
    const last = Math.max(first, made.to ?? made.from! + 1 / ANY_YEAR / 2);
    let chance = 0;
    for (const claim of claims) {
      const slack = claim.approximate ? ABOUT_YEARS : 0;
      const from = claim.from - slack;
      const to = claim.to + slack;
      const inside = Math.max(0, Math.min(to, last) - Math.max(from, first) + 1) / (to - from + 1);
      chance += (YEAR_TRUST * inside) / (last - first + 1) + (1 - YEAR_TRUST) * ANY_YEAR;
    }
    return Math.log(chance / claims.length);
  });
}

/** The places that the advert says it was made at, likewise. */
export function placeLogs(reading: Reading, hypotheses: readonly Hypothesis[]): Float64Array | null {
  const claims = reading.places.filter(({ subject, stance }) => subject === 'this' && stance === 'says');
  if (claims.length === 0) return null;
  return Float64Array.from(hypotheses, ({ model }) => {
    const places = (model?.def.places ?? []).map((place) => place.toLowerCase());
    if (places.length === 0) return Math.log(ANY_PLACE);
    let chance = 0;
    for (const { place } of claims) {
      const inside = places.includes(place.toLowerCase()) ? 1 / places.length : 0;
      chance += PLACE_TRUST * inside + (1 - PLACE_TRUST) * ANY_PLACE;
    }
    return Math.log(chance / claims.length);
  });
}
