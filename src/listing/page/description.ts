import { isQuestion } from '../bare';
import { type Box, LINK, type Line } from '../types';
import { COLON, DESCRIPTION_WORDS, endOfKind, isContinued, isInShort, unlabelledAfter } from './box-kinds';
import { composed } from './composed';
import { FACTS_ALONE, isFact, isInLabelledRow, isOneOfPairs, ROWS_ALONE } from './facts';
import { headingLabel, isOfComments } from './heading-labels';
import { mostProse } from './most-prose';
import { isAmount, isOwnWord, isQuoted } from './own-word';
import { isProse, isSentence } from './prose';
import { boxOf, isOnly, levelOf, type Reading, range, sizeOf } from './reading';
import { sectionAfter } from './sections';
import { sharedWords } from './shared-words';
import { tabKinds } from './tabs';
import { isOfTradeLabel } from './trade';
import { AWAY, MAIN } from './zones';

/** A block that may be the seller's own words. */
export interface Block {
  text: string;
  weight: number;
  /** What its label or name alone would be worth. */
  called: number;
  /** The lines it was put together from. */
  lines: number[];
}

/** From this weight on a block stands under a label. */
export const LABELLED = 0.85;
const LINES_MOST = 1500;

/**
 * Blocks that may be the description, best first: what stands under a label that says so, what a class or property
 * says it is, and the box with most prose in the main part.
 */
export function descriptionsOf(reading: Reading): Block[] {
  const { lines, boxes, zones, cards } = reading;
  const found: Block[] = [];
  const add = (its: number[], weight: number, strict: boolean) => {
    let chosen: number[] = [];
    for (const index of its.slice(0, LINES_MOST)) {
      if (zones[index] === AWAY || (zones[index] !== MAIN && (strict || zones[index] !== zones[its[0]!]))) continue;
      if (!cards.lines.has(index) && !isQuoted(lines[index]!.text) && isOwnWord(reading, index, strict))
        chosen.push(index);
    }
    // Rows among the words are rows, unless there is nothing else.
    const isTerm = (index: number) => /^d[td]$/.test(boxOf(reading, index).tag);
    // A text that stands in one under its label is no row.
    if ((strict || chosen.some((index) => boxOf(reading, index).tag === 'dt')) && !chosen.every(isTerm))
      chosen = chosen.filter((index) => !isTerm(index));
    const text = composed(reading, chosen);
    if (strict && isQuestion(text)) return;
    // A row of tabs: nothing but labels.
    if (chosen.length > 0 && chosen.every((index) => headingLabel(lines[index]!.text, true) !== null)) return;
    const facts = chosen.every((index) => isFact(reading, index));
    // Of rows a seller may have made a table; it stays before what is said nowhere in particular.
    const most = chosen.some((index) => isInLabelledRow(reading, index)) ? ROWS_ALONE : FACTS_ALONE;
    const worth = facts ? Math.min(weight, most) : weight;
    if (text.length > 2 && !found.some((block) => block.text === text))
      found.push({ text, weight: worth, called: weight, lines: chosen });
  };

  for (const [index, line] of lines.entries()) {
    if (zones[index] === AWAY || found.length >= 4) continue;
    const level = levelOf(reading, index);
    if (isLabelOfWords(reading, index) && (level > 0 || isAlone(reading, index))) {
      const [from, to] = withWordsBelow(reading, index, sectionAfter(reading, index));
      const its = range(from, to);
      // A label among labels: one of a row of tabs.
      const holds = its.some(
        (at) => lines[at]!.box !== line.box || lines[at]!.text.length > 20 || /[.!?]$/.test(lines[at]!.text),
      );
      // Of two such labels the one in a row of others has no sentence under it.
      const isTold = its.some((at) => isSentence(lines[at]!));
      // "Description of the size" in a row of many names one of its facts.
      const isOfRow = reading.row[line.box]! >= 0 && line.text.split(' ').length > 2;
      const isOneFact = to - from === 1 && !isTold && isOneOfPairs(reading, index);
      const worth = !holds ? 0.4 : isOneFact ? FACTS_ALONE + 0.05 : isOfRow ? 0.6 : level > 0 ? 0.9 : 0.85;
      add(its, worth - (isInShort(reading, line.box) ? 0.1 : isTold ? 0 : 0.05), false);
      continue;
    }
    const colon = COLON.exec(line.text);
    if (colon && headingLabel(colon[1]!) === 'description') {
      const isItem = boxOf(reading, index).tag === 'li' && !isSentence(line);
      add(range(index, unlabelledAfter(reading, index)), isItem ? FACTS_ALONE : 0.6, false);
    }
  }
  const { description, other } = tabKinds(reading);
  for (const { from, to } of description) add(range(from, to), 0.85, false);
  const isOther = (from: number, to: number) => other.some((tab) => tab.from < to && tab.to > from);
  for (const [at, box] of boxes.entries()) {
    if (found.length >= 6) break;
    if (!DESCRIPTION_WORDS.test(box.hint) || sizeOf(box) === 0 || zones[box.from] === AWAY) continue;
    if (reading.titleLine >= box.from && reading.titleLine < box.to) continue;
    if (isContinued(boxes, at)) continue;
    const its = range(box.from, withPoints(reading, endOfKind(boxes, at), box));
    const telling = tellingIn(reading, box);
    const isOuter = boxes.some(
      (inner) =>
        inner.from >= box.from &&
        inner.to <= box.to &&
        DESCRIPTION_WORDS.test(inner.hint) &&
        isAllOf(reading, box, inner, telling),
    );
    // The name is common for what says a word about something.
    const worth = telling.length > 0 ? (isInShort(reading, at) ? 0.71 : 0.75) : 0.45;
    if (!isOuter) add(its, worth, false);
  }
  const most = mostProse(reading);
  add(underTitle(reading, most[0] ?? []), 0.51, true);
  for (const its of most) if (its.length > 0 && !isOther(its[0]!, its.at(-1)! + 1)) add(its, 0.5, true);
  for (const one of found)
    if (one.called > IN_SHORT && one.called < LABELLED)
      one.weight = Math.max(one.weight, ...found.map((part) => wholeOf(reading, one, part)));
  return found.sort((a, b) => b.weight - a.weight).slice(0, 5);
}

/**
 * The paragraphs, or the list of points, right under the title, where they say more of its words than the box with most
 * prose does.
 */
function underTitle({ lines, boxes, titleLine }: Reading, most: readonly number[]): number[] {
  const first = lines[titleLine + 1];
  if (titleLine < 0 || !first) return [];
  const { tag, from, parent } = boxes[first.box]!;
  const isPoint = tag === 'li' && boxes[parent]!.from > titleLine;
  const end = isPoint ? boxes[parent]!.to : from > titleLine ? endOfKind(boxes, first.box) : titleLine + 2;
  const its = range(titleLine + 1, end);
  const tells = isPoint
    ? its.every((at) => isProse(lines[at]!))
    : first.text.length >= TELLING_LEAST && isSentence(first);
  if (!tells) return [];
  const shared = (all: readonly number[]) =>
    sharedWords(lines[titleLine]!.text, all.map((at) => lines[at]!.text).join(' '));
  return most.includes(titleLine + 1) || shared(most) >= shared(its) ? [] : its;
}
/** A line under a title that is no other title: "The whole of it, with the case and the key". */
const TELLING_LEAST = 100;

/** The least that what is called a description in short is worth. */
const IN_SHORT = 0.71;

/** A box so many times as long as its labelled part holds the rest of the page's tabs: "How to measure yourself". */
const WHOLE_MOST = 4;

/** What a named box is worth that begins with a labelled part, and has headings of its own behind it: it is all of it. */
function wholeOf(
  reading: Reading,
  { lines: its, text }: Block,
  { lines: part, weight, text: labelled }: Block,
): number {
  if (text.length > labelled.length * WHOLE_MOST) return 0;
  const isWhole = its.length > part.length && its[0] === part[0] && part.every((at) => its.includes(at));
  const isTrade = (at: number) => levelOf(reading, at) > 0 && isOfTradeLabel(reading.lines[at]!.text);
  return weight >= LABELLED && isWhole && !its.some(isTrade) ? weight + 0.01 : 0;
}

/**
 * Where a heading's own box holds a number or the like alone, the words stand below it, up to the next heading of the box
 * around, if that begins with the heading too.
 */
function withWordsBelow(reading: Reading, label: number, [from, end]: [number, number]): [number, number] {
  const { boxes, lines } = reading;
  const isPlainFact = (at: number) => isFact(reading, at) && !isInLabelledRow(reading, at);
  if (end === from || levelOf(reading, label) === 0 || !range(from, end).every(isPlainFact)) return [from, end];
  let own = lines[label]!.box;
  while (own >= 0 && boxes[own]!.to <= end) own = boxes[own]!.parent;
  let to = end;
  if (boxes[own]?.from === label) while (to < boxes[own]!.to && levelOf(reading, to) === 0) to++;
  return [from, to];
}

/** Where the list of points ends that stands right behind a description of one paragraph, in a box that begins with it. */
function withPoints({ lines, boxes }: Reading, end: number, { from, parent, tag }: Box): number {
  const next = boxes.find((box) => box.from === end && box.parent === parent);
  let to = end;
  if (next && end - from === 1 && boxes[parent]?.from === from && tag !== 'li' && isSentence(lines[from]!))
    while (to < next.to && isPoint(boxes[lines[to]!.box]!, lines[to]!)) to++;
  return to;
}
const isPoint = ({ tag }: Box, line: Line): boolean =>
  tag === 'li' && !isOnly(line, LINK) && headingLabel(line.text) === null;

/** The lines of a box that tell something in sentences. */
const tellingIn = (reading: Reading, { from, to }: Box): number[] =>
  range(from, to).filter((at) => isSentence(reading.lines[at]!) && !isInLabelledRow(reading, at));

/**
 * All sentences of a box stand in one inside it, and besides these there are facts under headings, or in rows; or the one
 * around has the price as well.
 */
function isAllOf(reading: Reading, outer: Box, inner: Box, telling: readonly number[]): boolean {
  const { from, to } = inner;
  const beside = range(outer.from, outer.to).filter((at) => at < from || at >= to);
  if (beside.some((at) => isAmount(reading.lines[at]!)) && tellingIn(reading, inner).length > 0) return true;
  return (
    beside.length > 0 &&
    telling.length > 0 &&
    telling.every((at) => at >= from && at < to) &&
    beside.some(
      (at) =>
        isInLabelledRow(reading, at) ||
        (levelOf(reading, at) > 0 && headingLabel(reading.lines[at]!.text) !== 'description'),
    )
  );
}

/** A label that says so; or one of comments that the zones left where it is, since the seller alone speaks under it. */
const isLabelOfWords = ({ lines, zones }: Reading, index: number): boolean =>
  headingLabel(lines[index]!.text) === 'description' || (zones[index] === MAIN && isOfComments(lines[index]!.text));

function isAlone(reading: Reading, index: number): boolean {
  const box = boxOf(reading, index);
  return sizeOf(box) === 1 || index === box.from || /[:：]\s*$/.test(reading.lines[index]!.text);
}
