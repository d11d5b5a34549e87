import { type ClauseRange, clauseIndexAt, type TextPart } from './part-text';
import type { Found } from './triggers-in';

/** What closes a list that is denied as a whole. "And" doesn't: "no motor, cast iron and heavy". */
const CLOSES = new Set('or nor oder noch ou ni'.split(' '));
/** After these "and" closes it too: "fehlen Lampe, Motor und Freiarm". */
const LACKS = /^(?:fehlen|fehlt|manque|manquent|lacks|lacking)$/;
const ANDS = new Set('and und et &'.split(' '));
/** An item of a list is a few words without a verb; any of these begins a statement of its own. */
const STATES = new Set(
  (
    'is are was were has have had it this that which who does do did will can could would comes with sews takes weighs made ' +
    'ist sind war hat haben es das mit wiegt naht est sont etait a ont il elle avec pese coud ' +
    'but although though however whereas while except aber sondern jedoch mais'
  ).split(' '),
);
const LONGEST_ITEM = 4;
const MOST_ITEMS = 8;
/** A denial reaches the first comma of its list over no more words than this. */
const FIRST_ITEM = 5;

export interface ListDenial {
  trigger: Found;
  /** "It has no …": the denial is a statement. "No motor, zigzag or straight stitch" may be two. */
  sure: boolean;
}

/**
 * "It has no zigzag, drop feed or free arm": a denial goes on over the commas of a list that an "or" closes. Telegram
 * style ("no motor, cast iron") has no "or", and says the rest.
 * @param first the phrase's first token, in `clause`
 */
export function deniedInList(
  part: TextPart,
  clause: ClauseRange,
  first: number,
  triggersIn: (clause: ClauseRange) => readonly Found[],
): ListDenial | null {
  const { clauses } = part;
  const own = clauseIndexAt(part, clause.first);
  if (!isItem(part, clause)) return null;
  for (let at = own - 1; at >= 0 && own - at <= MOST_ITEMS; at--) {
    const before = clauses[at]!;
    if (before.sentence !== clause.sentence || before.tokens.at(-1)?.folded !== ',') return null;
    const trigger = triggersIn(before).findLast(({ value: { effect, side, namesOnly } }) => {
      return effect === 'denies' && side === 'before' && !namesOnly;
    });
    if (trigger) {
      const lacks = LACKS.test(part.tokens[trigger.lastToken]!.folded);
      if (!isClosed(part, own, first, lacks ? ANDS : CLOSES)) return null;
      if (wordsIn(part, trigger.lastToken + 1, before.last) > FIRST_ITEM) return null;
      // "It lacks a lamp, cast iron and heavy" may end its list at the comma.
      return { trigger, sure: !lacks && !opensSentence(part, trigger) };
    }
    if (!isItem(part, before)) return null;
  }
  return null;
}

function opensSentence(part: TextPart, trigger: Found): boolean {
  const at = clauseIndexAt(part, trigger.firstToken);
  const clause = part.clauses[at];
  if (!clause || part.clauses[at - 1]?.sentence === clause.sentence) return false;
  return clause.tokens.find(({ kind }) => kind === 'word')?.start === trigger.start;
}

/** The word that closes the list stands in the phrase's own item, or in one that follows. */
function isClosed(part: TextPart, own: number, first: number, closes: ReadonlySet<string>): boolean {
  const { clauses } = part;
  for (let at = own; at < clauses.length && at - own <= MOST_ITEMS; at++) {
    const item = clauses[at]!;
    if (item.sentence !== clauses[own]!.sentence || !isItem(part, item)) return false;
    const closing = closingIn(part, item, closes);
    if (closing >= 0) return at > own || first - closing <= LONGEST_ITEM;
    if (item.tokens.at(-1)?.folded !== ',') return false;
  }
  return false;
}

function closingIn(part: TextPart, { first, last }: ClauseRange, closes: ReadonlySet<string>): number {
  for (let i = first; i <= last; i++) if (closes.has(part.tokens[i]!.folded)) return i;
  return -1;
}

/** An item, or two with the closing word between them. */
function isItem(part: TextPart, { first, last }: ClauseRange): boolean {
  let words = 0;
  for (let i = first; i <= last; i++) {
    const { kind, folded } = part.tokens[i]!;
    if (kind === 'mark') continue;
    if (STATES.has(folded)) return false;
    words = CLOSES.has(folded) || ANDS.has(folded) ? 0 : words + 1;
    if (words > LONGEST_ITEM) return false;
  }
  return true;
}

function wordsIn(part: TextPart, from: number, to: number): number {
  let count = 0;
  for (let i = from; i <= to; i++) if (part.tokens[i]!.kind !== 'mark') count++;
  return count;
}
