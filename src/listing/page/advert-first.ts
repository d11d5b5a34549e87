import { LINK, type Line } from '../types';
import { type AdvertHead, advertHeadOf, isSetOff, PRICE_LEAST } from './advert-head';
import type { Block } from './description';
import type { PagePrice } from './prices';
import { isOnly, type Reading } from './reading';
import { sharedWords, wordsOf } from './shared-words';
import type { Heading } from './title';
import { type TitleEvidence, toldOf } from './title-evidence';
import { withoutState } from './title-state';

/** Told again no more than by a word that stands anywhere. */
const UNTOLD = 0.06;
const AGREES = 0.6;
const LITTLE = 0.3;
/** A window's words that name a thing, and not the part of a site. */
const NAMING = 3;
const HEADING = 0.65;
/** Lines between a title and the price beside it. */
const WITH_PRICE = 6;
const isWithPrice = (prices: readonly PagePrice[], title: number): boolean =>
  prices.some(
    ({ text, line, weight }) => weight >= PRICE_LEAST && Math.abs(line - title) <= WITH_PRICE && /\d/.test(text),
  );

/**
 * Puts the advert's head before a title that nothing tells of the thing again: one over another part of the page, or over
 * all of it. A title that the window says in several words stays, unless the head is told again; one of a word or two names
 * a part of the site, if the advert has a heading of its own. `told`: the titles that machines are told.
 */
export function raiseHead(
  titles: Heading[],
  { line, from, to }: AdvertHead,
  evidence: TitleEvidence,
  {
    reading,
    windowTitle,
    told,
    prices,
  }: { reading: Reading; windowTitle: string; told: readonly string[]; prices: readonly PagePrice[] },
): void {
  const [best] = titles;
  const text = withoutState(reading.lines[line]!.text);
  const isUntold = (title: string) => toldOf(title, evidence) < UNTOLD;
  const isNamed = (title: string) => sharedWords(title, windowTitle) >= AGREES;
  if (!best || !isUntold(best.text)) return;
  if (best.line !== line) {
    const isInside = best.line >= from && best.line < to;
    if (isInside ? best.line < line || isNamed(best.text) : best.line > line && isNamed(best.text)) return;
    const isPart =
      !isUntold(text) ||
      hasMenu(reading, best.line, line) ||
      (wordsOf(best.text).length < NAMING && isSetOff(reading, line));
    // The price stands with it, and away from the other.
    const isPriced = isWithPrice(prices, best.line) && !isWithPrice(prices, line);
    if (isNamed(best.text) && (isPriced || !isPart)) return;
    best.weight = Math.min(best.weight, 0.1);
    if (!isInside) best.isSite = true;
  } else if (told.some((title) => !isUntold(title) || sharedWords(title, text) > LITTLE)) return;
  const own = titles.find((one) => one.line === line);
  if (own) own.weight = Math.max(own.weight, HEADING);
  else titles.push({ text, line, weight: HEADING });
}

/** Links of a site's parts stand between two lines: the first heads the site, or a part of it. */
function hasMenu({ lines, cards }: Reading, from: number, to: number): boolean {
  const isWay = (line: Line, index: number) => isOnly(line, LINK) && !cards.lines.has(from + index);
  return lines.slice(from, to).filter(isWay).length >= MENU_LEAST;
}
const MENU_LEAST = 6;

/**
 * Of two blocks that are known by their prose alone, one around the other, the inner first if it stands in a smaller part
 * with a head and a photograph or a price: the other says what is said all around.
 */
export function putAdvertFirst(reading: Reading, blocks: Block[], prices: readonly PagePrice[]): void {
  const [one, other] = blocks;
  if (!one || !other || one.weight !== other.weight || other.text.length < one.text.length * SHARE_LEAST) return;
  if (other.lines[0]! < one.lines[0]! || other.lines.at(-1)! > one.lines.at(-1)!) return;
  const its = advertHeadOf(reading, other, prices);
  const around = advertHeadOf(reading, one, prices);
  if (its && (!around || its.to - its.from < around.to - around.from)) blocks.splice(0, 2, other, one);
}
const SHARE_LEAST = 0.4;
