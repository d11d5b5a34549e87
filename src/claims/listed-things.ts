import { ofAnother } from './other-thing';
import { clauseAt, type TextPart, tokenAt } from './part-text';
import type { NameClaim } from './reading';
import type { Stanced } from './types';

/** An item is of what its first words name. */
const OPENS_WITHIN = 30;
const PRICE = /\p{Sc} ?\d|\d ?(?:\p{Sc}|eur|euros?\b|quid\b)/iu;
const MARKER = /(?:^|\s)(\d{1,2})[).](?=\s)/g;

/**
 * Things numbered in a list ("1) the machine … 2) a doorstop …"): only the one that names what is on sale speaks of it.
 * Needs three numbers in order from 1, or two with a price for each; where no item names it, the list is of features
 * and all of it does.
 */
export class ListedThings {
  readonly #others = new Map<TextPart, { start: number; end: number }[]>();

  constructor(parts: readonly TextPart[], names: readonly NameClaim[]) {
    for (const part of parts) {
      const items = itemsOf(part);
      const named = items.filter((item) =>
        names.some(
          (name) =>
            name.field === part.field &&
            'model' in name.of &&
            name.start >= item.start &&
            name.start <= item.start + OPENS_WITHIN &&
            name.end <= item.end,
        ),
      );
      const others = named.length > 0 ? items.filter((item) => !named.includes(item)) : [];
      this.#others.set(part, [...others, ...alsoSold(part)]);
    }
  }

  weigh<C extends Stanced>(claim: C, part: TextPart): C {
    const isOther = this.#others.get(part)?.some((item) => claim.start >= item.start && claim.end <= item.end);
    return isOther && clauseAt(part, tokenAt(part, claim.start)) ? ofAnother(claim, 'listed-thing') : claim;
  }
}

/** "Also: overlocker, alloy, 6 kg, £60. Ironing board £5.": lines of things with prices of their own. */
function alsoSold({ text }: TextPart): { start: number; end: number }[] {
  return [...text.matchAll(ALSO)]
    .filter(([line]) => line.split(PRICE).length > 2)
    .map(({ 0: line, index }) => ({ start: index, end: index + line.length }));
}

const ALSO = /(?<=^|[\n.!?]\s*)(?:also|other (?:things|items|stuff))(?: [a-z]+){0,2} ?:[^\n]*/gimu;

function itemsOf(part: TextPart): { start: number; end: number }[] {
  const marks = [...part.text.matchAll(MARKER)];
  if (marks.length < 2 || !marks.every((mark, i) => Number(mark[1]) === i + 1)) return [];
  const items = marks.map((mark, i) => ({ start: mark.index, end: marks[i + 1]?.index ?? part.text.length }));
  const arePriced = items.every(({ start, end }) => PRICE.test(part.text.slice(start, end)));
  return marks.length > 2 || arePriced ? items : [];
}
