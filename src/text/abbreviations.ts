const words = (list: string) => new Set(list.split(' '));

/** Always stand before something else: their full stop ends no sentence. Folded, as all words here. */
const INTRODUCING = words(
  'approx appx apx ca cca circa vgl bzw evtl ggf inkl incl excl exkl zzgl abzgl einschl vs mr mrs ms dr prof ser pat ' +
    'typ tel mod mk masch fabr env ungef sog gebr orig max nr mme mlle lt acc',
);

/** Belong to a number that follows; before anything else they are words ("Zigzag? No. It only sews straight"). */
const BEFORE_NUMBERS = words('no nos num c art fig p est reg ref geb bj jg');

/**
 * Units, which stand after a number. Those of the metric system are symbols and no short forms: a full stop behind them
 * ends a sentence, capital or none (SI brochure, 9th edition, 5.2).
 */
const UNITS = words('lb lbs oz in ins ft yd st min hrs');

/** May end a sentence: a capital after them starts the next one. */
const CLOSING = words('etc usw ono obo vb vhb inc ltd co uk usa am pm kpl');

export interface Neighbours {
  /** Folded word before the full stop. */
  word: string;
  /** A number stands right before that word. */
  afterNumber: boolean;
  /** A number, or a code of letters and digits, comes after the full stop, and no unit behind it ("no. 6.5 kg"). */
  beforeNumber: boolean;
  /** A capital letter comes after the full stop. */
  beforeCapital: boolean;
}

/** Is the full stop part of the word before it, so that no sentence ends there? */
export function isAbbreviated({ word, afterNumber, beforeNumber, beforeCapital }: Neighbours): boolean {
  if (INTRODUCING.has(word)) return true;
  if (BEFORE_NUMBERS.has(word) && beforeNumber) return true;
  if (UNITS.has(word) && afterNumber) return !beforeCapital;
  return CLOSING.has(word) && !beforeCapital;
}

/** As much as a code has letters before its digits ("no. KD 1234"). */
const LONGEST_CODE = 3;

/** Is the word one whose full stop may stand inside a phrase ("no. 5", "ser. no."), before this next one ("No. Reverse")? */
export function isAbbreviation(word: string, next: { kind: string; folded: string } | undefined): boolean {
  if (BEFORE_NUMBERS.has(word)) return next?.kind !== 'word' || next.folded.length <= LONGEST_CODE;
  return INTRODUCING.has(word) || UNITS.has(word) || CLOSING.has(word);
}
