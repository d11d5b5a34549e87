import { remembering } from '../text/remember';
import type { Span } from '../text/span';
import { findLengths, findWeights } from './measures';
import { findMoney } from './money';

/** Where a text's numbers are money or measures, in order: no years and no serials. */
export const claimedNumbers = remembering((text: string): readonly Span[] =>
  [...findMoney(text), ...findWeights(text), ...findLengths(text)].sort((a, b) => a.start - b.start),
);
