import { readMoney } from '../../quantity/money';
import type { Line } from '../types';
import { type Amount, amountsIn } from './amounts';
import { hintOf } from './amounts-in-lines';
import { OLD_NAMES, OTHER_NAMES, PRICE_NAMES } from './price-names';
import { type Reading, runsOf, sizeOf } from './reading';

/** Longer lines are left alone. */
const LINE_MOST = 600;

const known = new WeakMap<Reading, string | null>();

/** ISO 4217: the one currency whose signs a page writes, or null. Asked for each amount without a sign. */
export function onlyCurrency(reading: Reading): string | null {
  const there = known.get(reading);
  if (there !== undefined) return there;
  const found = currenciesOf(reading);
  const only = found.size === 1 ? [...found][0]! : null;
  known.set(reading, only);
  return only;
}

function currenciesOf({ lines }: Reading): ReadonlySet<string | null> {
  const found = new Set<string | null>();
  for (const { text } of lines) {
    if (text.length > LINE_MOST) continue;
    for (const { start, end } of amountsIn(text)) found.add(readMoney(text.slice(start, end))?.currency ?? null);
    const [, sign] = IN_MONEY.exec(text) ?? [];
    if (sign) found.add(readMoney(`1 ${sign}`)?.currency ?? null);
  }
  return found;
}
/** A sign without an amount, in brackets: "All prices in euro (€)". */
const IN_MONEY = /\(([^\s\w()]{1,2})\)/;

/** Digits with hundredths and nothing else, or with a letter that is much else elsewhere, in an element called the price. */
export function isNamedPrice(reading: Reading, line: Line): boolean {
  const hints = HUNDREDTHS.test(line.text) || IN_RAND.test(line.text) ? hintsAround(reading, line) : '';
  return PRICE_NAMES.test(hints) && !OTHER_NAMES.test(hints) && !OLD_NAMES.test(hints);
}
/** The one currency that is written with this letter alone. */
export const IN_RAND = /^R ?\d[\d ,.]*$/;
export const HUNDREDTHS = /^\d{1,3}(?:[.,' ]?\d{3})*[.,]\d\d$/;

/** Class and property words of the elements close around an amount, or around a line. */
export function hintsAround({ boxes }: Reading, line: Line, amount: Amount | null = null): string {
  const box = boxes[line.box]!;
  const parent = boxes[box.parent];
  const small = parent && sizeOf(parent) <= 4 ? parent.hint : '';
  const own = amount
    ? hintOf(line, amount)
    : runsOf(line)
        .map(({ hint }) => hint)
        .join(' ');
  return `${box.hint} ${small} ${own}`;
}
