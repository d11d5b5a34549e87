import { fold } from '../../text/fold';
import { LINK, type Line, type PriceHow, STRUCK } from '../types';
import { type Amount, amountsIn, howIn, isOtherMoney } from './amounts';
import { isOnly, type Reading, runsOf, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import { AWAY, MAIN } from './zones';

export interface PagePrice {
  /** As written, with the words around it that belong to it. */
  text: string;
  line: number;
  weight: number;
  how: PriceHow | null;
}

const PRICE_WORDS = /\b(?:price|preis|prix|prijs|precio|prezzo|amount)\b/;
const OLD_PRICE_WORDS =
  /\b(?:old|was|before|regular|original|list|retail|strike|struck|crossed|uvp|rrp|msrp|alt|ancien|shipping|delivery|postage|versand|livraison|instal?lment|monthly|finance)\b/;
/** Longer lines are sentences: an amount in them is told, not asked. */
const SHORT_LINE = 90;
const LINES_NEAR_TITLE = 12;

/**
 * Which amounts on the page may be the price asked, best first. Speaks for one: a label, a class or property that says
 * price, standing near the title, standing alone. Against: standing beside the main part or inside a sentence or link.
 * Struck-out, postage, instalment, fee and saving amounts are none, nor are those of other things for sale.
 */
export function pricesOf(reading: Reading): PagePrice[] {
  const { lines, zones, titleLine, cards } = reading;
  const found: PagePrice[] = [];
  for (const [index, line] of lines.entries()) {
    if (zones[index] === AWAY || cards.lines.has(index) || !/\d/.test(line.text)) continue;
    const label = labelBefore(reading, index);
    if (label && (rowLabel(label) === 'postage' || isOtherMoney(fold(label).text))) continue;
    const labelled = label !== '' && rowLabel(label) === 'price';
    const everyAmount = line.text.length > 600 ? [] : amountsIn(line.text);
    const amounts = everyAmount.filter((amount) => !amount.other);
    if (amounts.length === 0 && !(labelled && /^\D{0,6}\d[\d.,' ]*\D{0,14}$/.test(line.text))) continue;
    const said = hintsAround(reading, line);
    if (OLD_PRICE_WORDS.test(said) && PRICE_WORDS.test(said)) continue;
    const amount = amounts.find((one) => !isStruck(line, one)) ?? null;
    if (amounts.length > 0 && !amount) continue;

    const inLine = amount ? fold(line.text.slice(0, amount.start)).text : '';
    const ownLabel = rowLabel(inLine.trim()) === 'price' || PRICE_WORDS.test(inLine.slice(-30));
    const distance = titleLine < 0 ? index : index - titleLine;
    let weight = 0.3;
    if (labelled || ownLabel) weight += 0.3;
    if (PRICE_WORDS.test(said)) weight += 0.25;
    if (distance >= 0 && distance <= LINES_NEAR_TITLE) weight += 0.12 - distance * 0.005;
    if (amount && amount.end - amount.start >= line.text.length * 0.5) weight += 0.1;
    if (zones[index] !== MAIN) weight -= 0.05;
    if (line.text.length > SHORT_LINE) weight = Math.min(weight - 0.2, 0.2);
    if (isOnly(line, LINK)) weight -= 0.15;
    const how = amount?.how ?? (label ? howIn(fold(label).text) : null) ?? howIn(inLine.slice(-30));
    found.push({
      text: written(line.text, amount, everyAmount),
      line: index,
      weight: Math.max(0.05, Math.min(0.95, weight)),
      how,
    });
    if (found.length >= 200) break;
  }
  // The earlier of two equals: an asking price comes before what else is told.
  return found.sort((a, b) => b.weight - a.weight || a.line - b.line).slice(0, 20);
}

/** The label that stands before a line: the cell or term of its row, or a short line just before in the same box. */
function labelBefore({ lines, boxes }: Reading, index: number): string {
  const line = lines[index]!;
  const before = lines[index - 1];
  if (!before || before.text.length > 40 || /\d/.test(before.text)) return '';
  // Two levels up: <div><div>Price</div><div><b>45</b></div></div>.
  let at = line.box;
  for (let step = 0; step < 3 && at >= 0; step++) {
    const box = boxes[at]!;
    if (box.from <= index - 1) return sizeOf(box) <= 8 || box.tag === 'dl' ? before.text : '';
    if (box.from < index) break;
    at = box.parent;
  }
  return '';
}

/** Class and property words of the elements close around a line. */
function hintsAround({ boxes }: Reading, line: Line): string {
  const box = boxes[line.box]!;
  const parent = boxes[box.parent];
  const small = parent && sizeOf(parent) <= 4 ? parent.hint : '';
  return `${box.hint} ${small} ${runsOf(line)
    .map(({ hint }) => hint)
    .join(' ')}`;
}

/** True where the first digit of an amount is struck out. */
function isStruck({ text, runs }: Line, { start, end }: Amount): boolean {
  const digit = start + Math.max(0, text.slice(start, end).search(/\d/));
  const run = runs?.findLast(({ at }) => at <= digit);
  return run !== undefined && (run.flags & STRUCK) !== 0;
}

/** The amount with the words that belong to it: "£45 ono", but not another amount beside it. */
function written(text: string, amount: Amount | null, all: Amount[]): string {
  if (!amount) return text;
  const isAlone = all.length < 2;
  if (isAlone && text.length <= 40) return text;
  const next = all.find(({ start }) => start > amount.start);
  const after = text.slice(amount.end, Math.min(next?.start ?? text.length, amount.end + 14));
  // Up to the mark or the broken word that no longer belongs to it.
  const words = next ? after.replace(/[\s+(,;|/·•–—-]+(?:\p{L}+\s*)?$/u, '') : after.replace(/\s\S*$/, '');
  return (text.slice(amount.start, amount.end) + words).trim();
}
