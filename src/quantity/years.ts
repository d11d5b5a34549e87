import { fold } from '../text/fold';
import { claimedNumbers } from './claimed-numbers';
import type { YearMention } from './types';
import { yearKinds } from './year-kinds';
import { type YearSpan, yearSpans } from './year-spans';

/**
 * All years, decades and stretches of years that a text states, in order, from 1500 to 2100, each with what it is the
 * year of by the nearest word in its clause ("bought", "patent"), else "unknown". English, German and French. Prices,
 * measures, model, serial and phone numbers are not years. Never throws.
 */
export function findYears(text: string): YearMention[] {
  const folded = fold(text);
  const spans = yearSpans(folded.text);
  if (spans.length === 0) return [];
  const taken = claimedNumbers(text);
  const years: { span: YearSpan; start: number; end: number }[] = [];
  let next = 0;
  for (const span of spans) {
    const { start, end } = folded.toOriginal(span.start, span.end);
    while (next < taken.length && taken[next]!.end <= start) next++;
    if (next >= taken.length || taken[next]!.start >= end) years.push({ span, start, end });
  }
  const kinds = yearKinds(text, years);
  return years.map(({ span, start, end }, at) => ({
    start,
    end,
    from: span.from,
    to: span.to,
    approximate: span.approximate,
    quote: text.slice(start, end),
    ...kinds[at]!,
  }));
}
