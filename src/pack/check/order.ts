import { packTexts as texts } from '../../text/catalogue/pack';
import { whatIs } from '../issues';
import type { Lookup } from './lookup';

/** Both ends of a span, where both are there, in order. */
export function checkSpan(
  path: string,
  span: { from?: number | undefined; to?: number | undefined } | undefined,
  lookup: Lookup,
): void {
  if (span?.from !== undefined && span.to !== undefined && span.from > span.to)
    lookup.add(path, texts.what.order(String(span.from), String(span.to)), texts.expected.ordered);
}

/** A span that has neither end says nothing; most likely an end is misspelt under x- or was forgotten. */
export function checkRange(
  path: string,
  range: { from?: number | undefined; to?: number | undefined },
  lookup: Lookup,
): void {
  if (range.from === undefined && range.to === undefined) lookup.add(path, whatIs(range), texts.expected.anEnd);
  checkSpan(path, range, lookup);
}
