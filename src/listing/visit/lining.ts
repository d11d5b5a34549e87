import { RAISED } from '../types';
import { FOR_SCREENS, HIDDEN, KEEPS_BREAKS } from './flags';
import { labelled } from './names';

/** The text of one text node, as it stands there. */
export interface Part {
  raw: string;
  flags: number;
  /** The element that holds the text, and what the page calls it; null where that was not asked yet. */
  element: Element;
  names: string | null;
  /** White space alone. */
  blank: boolean;
  /** Names of the icon that stands right before it, or "". */
  icon: string;
}

/** A line before anybody asked what a person can see of it. */
export interface Stretch {
  parts: Part[];
  box: number;
}

/** Where a text stands. */
export interface Place {
  element: Element;
  names: string | null;
  flags: number;
  box: number;
}

/** Longest text for readers of screens that is taken for the name of an icon. */
const ICON_MOST = 60;

/** Texts put together to lines, as they are met in document order. */
export class Lining {
  readonly lines: Stretch[] = [];
  /** Names of the icon that was met last, until a text follows. */
  icon = '';
  #parts: Part[] = [];
  /** The last part of the line that is not blank. */
  #last = '';
  /** An element in the line has just ended, and another begins with nothing between. */
  #hasEnded = false;
  #isBeside = false;
  /** An item of a row or grid begins. */
  #isItem = false;

  /** An element begins: `inline` where pages set such beside each other, `item` where it is one of a row or grid. */
  begin(inline: boolean, item: boolean): void {
    if (item) this.#isItem = true;
    if (inline && this.#hasEnded) this.#isBeside = true;
    this.#hasEnded = false;
  }

  /** An element has ended. */
  end(isBlock: boolean): void {
    if (isBlock) this.break();
    this.#hasEnded = !isBlock;
  }

  break(): void {
    if (this.#parts.length > 0) this.#parts = [];
    this.#last = '';
  }

  say(raw: string, place: Place): void {
    this.#hasEnded = false;
    const isSaid = /\S/.test(raw);
    const { flags } = place;
    if (flags & HIDDEN) {
      if (isSaid && flags & FOR_SCREENS && raw.length < ICON_MOST) this.icon = labelled(raw.trim().replace(/:$/, ''));
      return;
    }
    if (isSaid) {
      if (
        (this.#isBeside || this.#isItem) &&
        this.#last !== '' &&
        !(flags & RAISED) &&
        !isOneText(this.#last, raw, this.#isItem)
      )
        this.break();
      this.#isBeside = false;
      this.#isItem = false;
    }
    if (!(flags & KEEPS_BREAKS) || !raw.includes('\n')) {
      this.#add(raw, isSaid, place);
      return;
    }
    for (const [index, piece] of raw.split('\n').entries()) {
      if (index > 0) this.break();
      this.#add(piece, /\S/.test(piece), place);
    }
  }

  #add(raw: string, isSaid: boolean, { flags, box, element, names }: Place): void {
    // White space belongs to a line only behind a word.
    if (this.#parts.length === 0) {
      if (!isSaid) return;
      this.lines.push({ parts: this.#parts, box });
    }
    this.#parts.push({ raw, flags, element, names, blank: !isSaid, icon: this.icon });
    if (!isSaid) return;
    this.icon = '';
    this.#last = raw;
  }
}

/** An amount in pieces (a sign, the whole, the cents), and marks between two texts. */
function isOneText(before: string, after: string, isItem: boolean): boolean {
  const [last, next] = [before.trim(), after.trim()];
  // White space between the two is all that a line needs, but not a row of items.
  if (!isItem && (!before.endsWith(last) || !after.startsWith(next))) return true;
  if (/^[^\p{L}\p{N}\p{Sc}]+$/u.test(next) || /[^\p{L}\p{N}\p{Sc}.,!?)%\]"']$/u.test(last)) return true;
  if (/\d[.,]?$/.test(last)) return /^(?:[.,:]|\d\d$|\p{Sc}|[A-Z]{3}(?![a-z])|kr|z\u0142|K\u010d|Ft|k$)/u.test(next);
  return /(?:\p{Sc}|(?<![A-Z])[A-Z]{3}|kr\.?|Fr\.?)$/u.test(last) && /^\d/.test(next);
}
