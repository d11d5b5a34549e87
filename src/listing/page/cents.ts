import { fitted } from '../../text/fitted';
import type { Line } from '../types';

/** The whole of an amount behind its sign. */
const WHOLE = fitted('u')`\p{Sc}\s?\d{1,3}(?:[.,]?\d{3})*$`;
const CENTS = /^\d\d\s*$/;

/**
 * A line in which two digits in an element of their own follow the whole of an amount at once: these are its cents, set
 * high by a style sheet that may be elsewhere, and get their point. Other lines are given back as they are.
 */
export function withPoint(line: Line): Line {
  const { text, runs } = line;
  const cents =
    runs?.findIndex(
      ({ at }, index) => CENTS.test(text.slice(at, runs[index + 1]?.at)) && WHOLE.test(text.slice(0, at)),
    ) ?? -1;
  if (!runs || cents < 0) return line;
  const { at } = runs[cents]!;
  return {
    ...line,
    text: `${text.slice(0, at)}.${text.slice(at)}`,
    runs: runs.map((run, index) => (index < cents ? run : { ...run, at: run.at + 1 })),
  };
}
