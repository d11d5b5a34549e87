import { headingLabel } from './heading-labels';
import type { Reading } from './reading';
import { rowLabel } from './row-labels';

/** How a sale is gone about: names that parts of pages bear. */
const TRADE =
  /\b(?:ship(?:s|ping)?|delivery|postage|payments?|returns?|warranty|disclaimers?|mortgages?|financ(?:e|ing)|polic(?:y|ies)|faqs?)(?!\w)/;

/** What a site says of its trade, and of a state in general ("Condition" | "Used: an item that..."), is no seller's word. */
export function isOfTrade({ lines, boxes, level, titleLine }: Reading, index: number): boolean {
  const whole = lines.length / 2;
  const isLabel = (at: number) => at !== index && rowLabel(lines[at]?.text ?? '') !== null;
  for (let at = lines[index]!.box; at >= 0; at = boxes[at]!.parent) {
    const { from, to, hint, tag } = boxes[at]!;
    if (to - from > whole || (titleLine >= from && titleLine < to)) return false;
    const { text, box } = lines[from]!;
    if (TRADE.test(hint) || (level[box]! > 0 && text.length < LABEL_MOST && isOfTradeLabel(text))) return true;
    if ((tag === 'tr' && isLabel(from)) || (tag === 'dd' && isLabel(from - 1))) return true;
  }
  return false;
}
const LABEL_MOST = 40;
/** "Delivery", "About the seller", "How do I bid?"; not "Features", under which the thing is told of. */
export const isOfTradeLabel = (text: string): boolean =>
  text.endsWith('?') ||
  (headingLabel(text) === 'section' &&
    !/detail|feature|spec|info|over|cara[ct]|merkm|kenm|egen|[pf]h?oto|pict|bild|map/i.test(text));
