import type { Draft } from '../listing/types';
import type { Answered } from './answer';
import { surenessOf } from './sureness';
import { seenLine } from './written-answer';

/**
 * A seller's draft that begins with what an enquiry has found: the kind as its title where that is likely, what was seen
 * as its text, and the number. What only follows from the packs is left out: a seller says what is there.
 */
export function draftFromEnquiry(
  { audit, seen, listing }: Answered,
  asked: { serial: string; text: string },
  thing: string,
): Draft {
  const [first] = audit.likely;
  const isNamed = first && first.kind !== 'none' && surenessOf(first.probability) !== 'open';
  const lines = seen.filter(({ value }) => value !== null).map(seenLine);
  const description = [lines.join('\n'), asked.text.trim()].filter(Boolean).join('\n\n');
  const serial = asked.serial.trim() || (listing.serials[0] ?? '');
  return {
    title: isNamed ? first.label : thing,
    ...(description === '' ? {} : { description }),
    ...(serial === '' ? {} : { serialText: serial }),
  };
}
