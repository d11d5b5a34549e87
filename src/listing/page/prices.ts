import { fold } from '../../text/fold';
import { CONTROL, LINK, type Line, type PriceHow } from '../types';
import { type Amount, amountsIn, howIn, isOtherMoney, isPriceLabel, isStartingBid } from './amounts';
import { alone, apart, hintOf, isGlued, isSentence, isStruck, unstruck, WORDS_MOST, written } from './amounts-in-lines';
import { isAsked } from './asked-in-words';
import { columnLabel } from './columns';
import { withoutInstalments } from './instalments';
import { HUNDREDTHS, hintsAround, IN_RAND, isNamedPrice, onlyCurrency } from './named-price';
import { isOneOfButtons } from './offer-buttons';
import { OLD_NAMES, OTHER_NAMES, PRICE_NAMES } from './price-names';
import { isOnly, type Reading, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import { joinedAmount } from './split-amounts';
import { isUsual } from './usual-price';
import { AWAY, MAIN } from './zones';

export interface PagePrice {
  /** As written, with the words around it that belong to it. */
  text: string;
  line: number;
  weight: number;
  how: PriceHow | null;
  /** It is what bidding starts at. */
  starting: boolean;
  /** A sentence asks it. */
  asked: boolean;
  /** What stands before it in its line. */
  before: string;
  /** A label known as one calls it the price. */
  isKnown: boolean;
  /** ISO 4217: of an amount without a sign, where all that have one on the page are of one currency. */
  currency: string | null;
}

const SENTENCE_MOST = 600;
const LINES_NEAR_TITLE = 12;
const LINES_OF_ADVERT = 40;
/** What was paid for this one stands in its own part; further off it is another's. */
const LINES_NEAR_SOLD = 25;
/** Less than this speaks for no price, unless words ask it. */
const THIN = 0.36;
/** From this weight on an amount stands plainly as a price. */
const PLAIN = 0.6;

/**
 * Which amounts on the page may be the price asked, best first. Struck-out, postage, instalment, fee and saving amounts
 * are none, nor are those of other things for sale.
 */
export function pricesOf(reading: Reading): PagePrice[] {
  const { lines, zones, cards } = reading;
  let found: PagePrice[] = [];
  const old: PagePrice[] = [];
  const isBidOn = lines.some(({ text }, index) => isCountOfBids(text, lines[index + 1]?.text ?? ''));
  for (const [index, line] of lines.entries()) {
    if (zones[index] === AWAY || cards.lines.has(index) || line.text.length > SENTENCE_MOST) continue;
    const label = columnLabel(reading, index) || labelBefore(reading, index);
    const isLabelled = isPriceLabel(label) || isBidOrSold(label);
    const all = amountsIn(line.text).map((one, at, whole) =>
      !one.other
        ? one
        : isGlued(line, one)
          ? alone(line, one)
          : apart(line, one, leadsTitle(reading, line, one) ? one.end : whole[at + 1]?.start),
    );
    const isKnown = rowLabel(label) === 'price' || (isLabelled && !isPriceLabel(label));
    const joined = all.length === 0 ? joinedAmount(reading, index) : null;
    if (
      all.length === 0 &&
      joined === null &&
      !isPriceWithoutSign(reading, line, isKnown, isPriceLabel(label) || howIn(fold(label).text) === 'bid')
    )
      continue;
    if (all.length > 0 && isOneOfButtons(reading, index)) continue;
    if (label && (rowLabel(label) === 'postage' || isOtherMoney(fold(label).text))) continue;
    // However long, a heading is no sentence.
    const isProse = isSentence(line.text) && reading.level[line.box] === 0;
    const asked = isProse ? askedIn(unstruck(line), all) : null;
    const possible = all.filter((one) => !one.other && !isStruck(line, one));
    const whole = joined === null ? null : { start: 0, end: line.text.length, other: false, how: null };
    const amount =
      whole ??
      asked ??
      possible.find((one) => !OTHER_NAMES.test(hintOf(line, one)) && !OLD_NAMES.test(hintOf(line, one))) ??
      possible[0] ??
      null;
    if (all.length > 0 && !amount) continue;
    const hints = hintsAround(reading, line, amount);
    const isPriceName = PRICE_NAMES.test(hints);
    if (isPriceName && OTHER_NAMES.test(hints)) continue;
    const isOld = isPriceName && OLD_NAMES.test(hints);
    // A price that is only told ("I paid £140") is none that is asked.
    if (amount && !asked && isProse && !isPriceName) continue;

    const before = amount ? fold(unstruck(line).slice(0, amount.start)).text : '';
    const said = `${fold(label).text} ${before.slice(-30)}`;
    const how =
      amount?.how ??
      howIn(fold(label).text) ??
      (isBidOn && CURRENT.test(said) ? 'bid' : null) ??
      howIn(before.slice(-30)) ??
      bidsAfter(reading, index, amount?.end ?? 0);
    const text =
      joined ??
      (asked ? line.text.slice(asked.start, asked.end) : written(line, amount, all, reading.level[line.box]! > 0));
    (isOld ? old : found).push({
      // "429\u20ac90", as the cents set high are read.
      text: text.replace(/(\d)\u20ac(\d\d)(?!\d)/, '$1,$2 \u20ac'),
      before: line.text.slice(0, amount?.start ?? 0),
      line: index,
      weight: weightOf(reading, index, {
        amount,
        isLabelled,
        hints,
        before,
        how,
        isProse,
        isAsked: asked !== null,
        isStarting: isStartingBid(said),
        isUsual: isUsual(said.trimEnd(), amount ? fold(line.text.slice(amount.end, amount.end + 20)).text : ''),
      }),
      how,
      starting: isStartingBid(said),
      asked: asked !== null,
      isKnown: rowLabel(label) === 'price' && lines[index - 1]?.box !== line.box && !isOnly(line, CONTROL),
      currency: IN_RAND.test(text) ? 'ZAR' : HUNDREDTHS.test(text) ? onlyCurrency(reading) : null,
    });
    if (found.length >= 200) break;
  }
  // A price "as usual" is the price where none is less.
  const isInPanel = ({ line }: PagePrice) => Math.abs(line - reading.titleLine) <= LINES_NEAR_TITLE;
  const usual = old.find((one) => isInPanel(one) && /\d/.test(one.text));
  if (usual && !found.some((one) => isInPanel(one) && /\d/.test(one.text))) found.push(usual);
  // A stray amount is none: of a partner's offer, of a gift to the site.
  // A page that says in the price's own place that it names none; what is far from it is asked by a form.
  const namesNone = ({ text, line, isKnown, how }: PagePrice) =>
    isKnown && how === null && !/\d/.test(text) && Math.abs(line - Math.max(0, reading.titleLine)) <= LINES_OF_ADVERT;
  if (found.some(namesNone))
    found = found.filter(({ text, asked, weight }) => asked || weight >= PLAIN || !/\d/.test(text));
  found = withoutInstalments(found).filter(({ weight, asked }) => asked || weight >= THIN);
  // Where others bid, a price for which it could be had at once is not the one that it stands at.
  if (found.some(({ how, starting, weight }) => how === 'bid' && !starting && weight >= PLAIN))
    for (const one of found) if (one.how !== 'bid' || one.starting) one.weight *= 0.6;
  // The earlier of two equals: an asking price comes before what else is told.
  return found.sort((a, b) => b.weight - a.weight || a.line - b.line).slice(0, 20);
}

/**
 * What speaks for an amount: a label, a class or property that says price, standing near the title, standing alone.
 * Against: standing beside the main part, in a sentence, in a link; being a bid where another is the price asked.
 */
function weightOf(
  { lines, zones, titleLine }: Reading,
  index: number,
  its: {
    amount: Amount | null;
    isLabelled: boolean;
    hints: string;
    before: string;
    how: PriceHow | null;
    isProse: boolean;
    isAsked: boolean;
    isStarting: boolean;
    isUsual: boolean;
  },
): number {
  const line = lines[index]!;
  if (its.isProse && !isPriceLabel(its.before.trim())) return its.isAsked ? 0.25 : 0.1;
  let weight = 0.3;
  const distance = titleLine < 0 ? index : Math.abs(index - titleLine);
  // Far from the title a "sum" is anybody's: of a guarantee, of a firm's capital.
  const isNamed = distance <= LINES_OF_ADVERT && PRICE_NAMES.test(its.before.slice(-30));
  if (its.isUsual) weight -= 0.1;
  else if (its.isLabelled || isPriceLabel(its.before.trim()) || isNamed) weight += 0.3;
  if (PRICE_NAMES.test(its.hints)) weight += 0.25;
  if (distance <= LINES_NEAR_TITLE) weight += 0.12 - distance * 0.005;
  else if (distance <= LINES_OF_ADVERT) weight += 0.04;
  if (its.amount && its.amount.end - its.amount.start >= line.text.length * 0.5) weight += 0.1;
  if (zones[index] !== MAIN) weight -= 0.05;
  if (isOnly(line, LINK)) weight -= 0.15;
  // What is bid, or was paid, is said of this one thing; its first bid only until there is another.
  if (its.how === 'bid') weight += its.isStarting ? -0.1 : 0.1;
  if (its.how === 'sold' && distance <= LINES_NEAR_SOLD) weight += 0.3;
  return Math.max(its.isUsual ? THIN : 0.05, Math.min(0.95, weight));
}

/** The price in an element of its own before a title, whose words are of the thing: "£40 / Hand crank - no fee". */
const leadsTitle = ({ level }: Reading, line: Line, one: Amount): boolean =>
  one.start === 0 && level[line.box]! > 0 && PRICE_NAMES.test(hintOf(line, one));

/** The amount of a sentence that a seller asks, by the words before it. */
function askedIn(text: string, all: Amount[]): Amount | null {
  const isThatAsked = (one: Amount) =>
    !one.other &&
    text[one.start] !== ' ' &&
    isAsked(
      fold(text.slice(Math.max(0, one.start - 40), one.start)).text,
      fold(text.slice(one.end, one.end + 30)).text,
    );
  return (
    all.find(isThatAsked) ??
    all.find((one) => !one.other && text[one.start] !== ' ' && /(?:^|[.!?;]\s*)$/.test(text.slice(0, one.start))) ??
    null
  );
}

/** How often was bid, right after an amount. The languages of the labels. */
const BIDS = /^\(?\d+ (?:bids?|gebote?|encheres?|offres|biedingen|offerte|pujas|bud|ofert\w*|prihoz\w*|lances)(?!\w)/;

/** A price that stands at something for now: where others bid, what is bid. */
const CURRENT = /\b(?:current|present|aktueller|actuel|huidige|attuale|actual|nuvarande|aktualna|aktualni) /;
const BIDS_ALONE =
  /^(?:number of )?(?:bids?|gebote?|encheres?|biedingen|offerte|pujas|antal bud|bud|liczba ofert|prihozy|lances):?$/;

/** "Bids: 7", "7 bids", or "Bids" over "7". */
function isCountOfBids(text: string, next: string): boolean {
  if (text.length > 40) return false;
  const folded = fold(text).text;
  const [, label, count] = /^(\D+?)[: (]*(\d+)?\)?$/.exec(folded) ?? [];
  if (label && BIDS_ALONE.test(label)) return Number(count ?? /^\d{1,3}$/.exec(next.trim())?.[0] ?? 0) > 0;
  return BIDS.test(folded) && !/^\(?0/.test(folded);
}

function bidsAfter({ lines }: Reading, index: number, end: number): PriceHow | null {
  const { text: own } = lines[index]!;
  const next = lines.slice(index + 1, index + 3).some(({ text }) => text.length < 40 && BIDS.test(fold(text).text));
  return next || (own.length < 60 && BIDS.test(fold(own.slice(end)).text.trim())) ? 'bid' : null;
}

/** A bare number under a price label, but not how many were "Sold"; or words ("Free") under one, or where a class says price. */
function isPriceWithoutSign(reading: Reading, line: Line, isKnown: boolean, isLabelled: boolean): boolean {
  if (line.text.length > WORDS_MOST) return false;
  // "Sold", and below it "June 1932".
  if (/^[a-z]{3,} (?:19|20)\d\d$/i.test(line.text)) return false;
  if (/\d/.test(line.text))
    return isLabelled ? /^\D{0,6}\d[\d.,' ]{0,20}(?! ?%)\D{0,14}$/.test(line.text) : isNamedPrice(reading, line);
  return line.text.length > 1 && (isKnown || PRICE_NAMES.test(hintsAround(reading, line)));
}

/** The label that stands before a line: the cell or term of its row, or a short line just before in the same box. */
function labelBefore({ lines, boxes, titleLine }: Reading, index: number): string {
  const line = lines[index]!;
  const before = lines[index - 1];
  // A button says what can be done, not what stands below it.
  if (
    !before ||
    index - 1 === titleLine ||
    before.text.length > 40 ||
    /\d|: +\S/.test(before.text) ||
    isOnly(before, CONTROL)
  )
    return '';
  // A label known as one needs no small box around it and its value.
  if (
    isKnownLabel(before.text) &&
    boxes[before.box]!.to === index &&
    boxes[before.box]!.to - boxes[before.box]!.from === 1
  )
    return before.text;
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

const isKnownLabel = (text: string): boolean => isPriceLabel(text) || rowLabel(text) === 'postage' || isBidOrSold(text);

/** "Highest bid", "Sold for"; not "Sold by somebody". */
function isBidOrSold(label: string): boolean {
  const folded = fold(label).text;
  return (
    /^(?:bid|sold)$/.test(howIn(folded) ?? '') &&
    label.split(' ').length <= 4 &&
    !/\b(?:by|von|par|da|door|de|av|przez)\b/.test(folded)
  );
}
