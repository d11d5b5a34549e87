import { LINK } from '../types';
import { amountsIn } from './amounts';
import { levelOf, type Reading, runsOf } from './reading';
import { AWAY } from './zones';

/** Levels between an amount and the card around it. */
const LEVELS_MOST = 10;
const LINES_OF_A_CARD = 30;

/**
 * Things for sale side by side: boxes of one kind with one parent, each with an amount of money and a link that names
 * something. One such box alone is no card; two rows of prices without links are none either.
 */
export function cardsOf(reading: Reading): Reading['cards'] {
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

  const names = (child: number): boolean => {
    const box = boxes[child]!;
    for (let index = box.from; index < box.to; index++) {
      const line = lines[index]!;
      const isLink = runsOf(line).some(({ text, flags }) => flags & LINK && text.trim().length >= 4);
      if (isLink && amountsIn(line.text).length === 0 && line.text.length >= 8) return true;
    }
    return pictured.has(child) && box.to - box.from >= 2;
  };

  const found: Reading['cards'] = { lines: new Set(), boxes: new Set(), count: 0 };
  for (const children of holding.values()) {
    if (children.size < 2) continue;
    const byTag = new Map<string, number[]>();
    for (const child of children) {
      if (!names(child)) continue;
      const { tag } = boxes[child]!;
      const same = byTag.get(tag);
      if (same) same.push(child);
      else byTag.set(tag, [child]);
    }
    for (const same of byTag.values()) {
      if (same.length < 2) continue;
      for (const child of same) {
        const box = boxes[child]!;
        // The box that holds the page's title is the advert, whatever it looks like.
        if (hasHeadingOne(reading, box.from, box.to)) continue;
        if (!found.lines.has(box.from)) found.count++;
        found.boxes.add(child);
        for (let index = box.from; index < box.to; index++) found.lines.add(index);
      }
    }
  }
  return found;
}

function hasHeadingOne(reading: Reading, from: number, to: number): boolean {
  for (let index = from; index < to; index++) if (levelOf(reading, index) === 1) return true;
  return false;
}
