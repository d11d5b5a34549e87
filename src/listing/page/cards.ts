import { fitted } from '../../text/fitted';
import { fold } from '../../text/fold';
import { CONTROL, LINK, type Line } from '../types';
import { amountsIn } from './amounts';
import { isOnly, levelOf, type Reading, runsOf, sizeOf } from './reading';
import { seriesOf } from './series';
import { AWAY } from './zones';

/** Levels between an amount and the card around it. */
const LEVELS_MOST = 10;
const LINES_OF_A_CARD = 30;
const AMOUNTS_OF_A_CARD = 3;
/** Characters. */
const CARD_MOST = 700;
const FORM_LEVELS = 4;
const LINES_OF_A_FORM = 15;
/** What share of its line a name takes at least; and a link that counts: "12 bids". */
const NAME_LEAST = 0.3;
const COUNT = fitted('u')`^\s*\d+\s\p{L}+\s*$`;
/** Shorter window titles are words that stand anywhere. */
const TITLE_LEAST = 8;

/**
 * Things for sale side by side: boxes of one kind with one parent, each with an amount of money and a link that names
 * something. One such box alone is no card; two rows of prices without links are none either, nor is a box of cards.
 * `windowTitle`: that of the window without the site's name, or "".
 */
export function cardsOf(reading: Reading, windowTitle: string): Reading['cards'] {
  const { boxes, lines, zones } = reading;
  /** Parent box -> the children that hold an amount. */
  const holding = new Map<number, Set<number>>();
  for (const [index, line] of lines.entries()) {
    if (zones[index] === AWAY || line.text.length > 200 || !amountsIn(line.text).some((amount) => !amount.other))
      continue;
    let child = line.box;
    for (let step = 0; step < LEVELS_MOST; step++) {
      const box = boxes[child]!;
      if (box.parent < 0 || box.to - box.from > LINES_OF_A_CARD) break;
      let children = holding.get(box.parent);
      if (!children) {
        children = new Set();
        holding.set(box.parent, children);
      }
      children.add(child);
      child = box.parent;
    }
  }
  const pictured = new Set<number>();
  for (const { box, linked } of reading.pictures) {
    let at = linked ? box : -1;
    for (let step = 0; step < LEVELS_MOST && at >= 0; step++) {
      pictured.add(at);
      at = boxes[at]!.parent;
    }
  }

  /** Boxes with any picture: three alike of them, each with an amount, are cards without a link too. */
  const illustrated = new Set<number>(pictured);
  for (const { box } of reading.pictures) {
    for (let at = box, step = 0; step < LEVELS_MOST && at >= 0; step++, at = boxes[at]!.parent) illustrated.add(at);
  }

  const found: Reading['cards'] = { lines: new Set(), boxes: new Set(), count: 0 };
  /** Lines that are a card each, and the first lines of the cards in boxes. */
  const starts = new Set<number>();
  const isCard = (child: number): boolean => {
    const box = boxes[child]!;
    let inside = 0;
    for (let index = box.from; index < box.to; index++) if (starts.has(index)) inside++;
    if (inside > 1) return false;
    // A column of a page holds many amounts, a card the price and perhaps an old one and the postage.
    let amounts = 0;
    for (let index = box.from; index < box.to; index++) if (amountsIn(lines[index]!.text).length > 0) amounts++;
    if (amounts > AMOUNTS_OF_A_CARD) return false;
    let words = 0;
    for (let index = box.from; index < box.to; index++) words += lines[index]!.text.length;
    // A post of a board, or an article, is no card.
    if (words > CARD_MOST) return false;
    // An answer under the page's own title is no other thing.
    if (lines.slice(box.from, box.to).some(({ text }) => /^(?:re|aw|sv|odp):/i.test(text))) return false;
    return lines.slice(box.from, box.to).some(hasNamedLink) || (illustrated.has(child) && box.to - box.from >= 2);
  };
  const leads = (child: number) =>
    pictured.has(child) || lines.slice(boxes[child]!.from, boxes[child]!.to).some(hasNamedLink);

  const isLinked = (child: number): boolean => {
    const box = boxes[child]!;
    if (sizeOf(box) === 0 || sizeOf(box) > LINES_OF_A_CARD) return false;
    return illustrated.has(child) || lines.slice(box.from, box.to).some(hasNamedLink);
  };
  const childrenOf: number[][] = boxes.map(() => []);
  for (const [index, { parent }] of boxes.entries()) if (parent >= 0) childrenOf[parent]!.push(index);

  const cardLines = cardLinesOf(reading);
  for (const index of cardLines) starts.add(index);
  const titles = titleLinesOf(reading, windowTitle);
  // The innermost first: a box that holds cards is none.
  for (const [, children] of [...holding].sort(([a], [b]) => b - a)) {
    if (children.size < 2) continue;
    const byTag = new Map<string, number[]>();
    for (const child of children) {
      if (!isCard(child)) continue;
      const { tag } = boxes[child]!;
      const same = byTag.get(tag);
      if (same) same.push(child);
      else byTag.set(tag, [child]);
    }
    for (const same of byTag.values()) {
      if (same.length < 2 || (same.length < 3 && (!same.every(leads) || isInForm(reading, same)))) continue;
      // What is sold already, or has its price on request, is a card like its neighbours.
      const { parent, tag, hint } = boxes[same[0]!]!;
      const alike = childrenOf[parent]!.filter(
        (child) => !same.includes(child) && boxes[child]!.tag === tag && boxes[child]!.hint === hint && isLinked(child),
      );
      for (const child of [...same, ...alike]) {
        const box = boxes[child]!;
        // The box that holds the page's title is the advert, whatever it looks like.
        if (titles.some((index) => index >= box.from && index < box.to)) continue;
        if (!found.lines.has(box.from)) found.count++;
        found.boxes.add(child);
        starts.add(box.from);
        for (let index = box.from; index < box.to; index++) found.lines.add(index);
      }
    }
  }
  for (const series of seriesOf(reading)) {
    if (series.some((child) => titles.some((index) => index >= boxes[child]!.from && index < boxes[child]!.to)))
      continue;
    for (const child of series) {
      const box = boxes[child]!;
      let isKnown = false;
      for (let index = box.from; index < box.to; index++) isKnown ||= found.lines.has(index);
      if (!isKnown) found.count++;
      found.boxes.add(child);
      for (let index = box.from; index < box.to; index++) found.lines.add(index);
    }
  }
  for (const index of cardLines) {
    if (found.lines.has(index)) continue;
    found.count++;
    found.lines.add(index);
  }
  return found;
}

/** In a small form, what can be had are ways to buy the one thing; so are two that cost the same in a greater one. */
function isInForm(reading: Reading, same: readonly number[]): boolean {
  const { boxes } = reading;
  for (let at = boxes[same[0]!]!.parent, step = 0; at >= 0 && step < FORM_LEVELS; at = boxes[at]!.parent, step++)
    if (boxes[at]!.tag === 'form')
      return (
        sizeOf(boxes[at]!) <= LINES_OF_A_FORM || new Set(same.map((child) => amountsOf(reading, child))).size === 1
      );
  return false;
}

const amountsOf = ({ lines, boxes }: Reading, child: number): string =>
  lines
    .slice(boxes[child]!.from, boxes[child]!.to)
    .flatMap(({ text }) => amountsIn(text).map(({ start, end }) => text.slice(start, end)))
    .join(' ');

/** A link with a name: not only with a price or a count, no button, and more than a word of a sentence. */
const hasNamedLink = (line: Line): boolean =>
  runsOf(line).some(
    ({ text, flags }) =>
      flags & LINK &&
      !(flags & CONTROL) &&
      text.trim().length >= 8 &&
      text.length >= line.text.length * NAME_LEAST &&
      !COUNT.test(text) &&
      amountsIn(text).length === 0,
  );

/** Lists without boxes: lines of one box, parted by <br>, each a named link and an amount. */
function cardLinesOf({ lines, boxes, zones }: Reading): number[] {
  const byBox = new Map<number, number[]>();
  for (const [index, line] of lines.entries()) {
    if (zones[index] === AWAY || !line.runs || line.text.length > 200) continue;
    if (sizeOf(boxes[line.box]!) < 2 || !hasNamedLink(line) || !amountsIn(line.text).some((amount) => !amount.other))
      continue;
    const same = byBox.get(line.box);
    if (same) same.push(index);
    else byBox.set(line.box, [index]);
  }
  return [...byBox.values()].filter((same) => same.length > 1).flat();
}

/** The lines of a first heading, and those that say the window's title and lead nowhere, as that of a card would. */
function titleLinesOf(reading: Reading, windowTitle: string): number[] {
  const title = fold(windowTitle).text;
  const found: number[] = [];
  for (const [index, line] of reading.lines.entries()) {
    // Folding changes a length little; most lines need no closer look.
    const maySay = title.length >= TITLE_LEAST && Math.abs(line.text.length - windowTitle.length) < TITLE_LEAST;
    if (levelOf(reading, index) === 1 || (maySay && !isOnly(line, LINK) && fold(line.text).text === title))
      found.push(index);
  }
  return found;
}
