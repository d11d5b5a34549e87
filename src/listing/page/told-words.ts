import { bare, isCutOff } from '../bare';
import { CONTROL, LINK } from '../types';
import { amountsIn } from './amounts';
import { composed } from './composed';
import { headingLabel } from './heading-labels';
import { isOwnWord } from './own-word';
import { isSentence, LISTED } from './prose';
import { boxOf, isOnly, levelOf, type Reading, sizeOf } from './reading';
import { AWAY } from './zones';

/** Letters and digits that a text must share with the page: fewer stand anywhere. */
const SHARED_LEAST = 24;
/** Of a told text so much must stand on the page. */
const SHARE_LEAST = 0.5;
/** Characters of a line by which a beginning is known. */
const BEGINNING = 60;
const BEGINNING_LEAST = 8;
/** Lines of the page between two that are told: headings, mostly. */
const LEFT_OUT_MOST = 2;

/**
 * Words that the page tells machines, as it shows them, with what belongs to them: the rest of their box, and where they
 * are cut off or one paragraph, what goes on below it. Null where the page doesn't show them.
 */
export function shownOf(reading: Reading, told: string): string | null {
  const key = bare(told);
  if (key.length < SHARED_LEAST) return null;
  let most: string | null = null;
  const beginnings = beginningsOf(reading.lines);
  for (const [index, beginning] of beginnings.entries()) {
    if (!mayHold(reading, index) || isOnly(reading.lines[index]!, LINK)) continue;
    if (beginning === '' || !(key.startsWith(beginning) || beginning.startsWith(key))) continue;
    // A short first line may begin anything: "Motor", but "Motor" over "110 V" hardly.
    if (beginning.length < BEGINNING_LEAST && !key.startsWith(beginning + (beginnings[index + 1] || key))) continue;
    const { to, isWhole } = extentOf(reading, index, key);
    if (to === index) continue;
    // Shown twice, it is a beginning that leads on to the whole.
    const its = withRest(reading, index, to, !isWhole || isCutOff(told));
    if (most === null || its.length > most.length) most = its;
  }
  return most;
}

/** How each line of a page begins: several texts are looked for on it. */
const known = new WeakMap<Reading['lines'], string[]>();

function beginningsOf(lines: Reading['lines']): string[] {
  let its = known.get(lines);
  if (!its) {
    its = lines.map(({ text }) => bare(text.slice(0, BEGINNING)));
    known.set(lines, its);
  }
  return its;
}

const mayHold = ({ zones, cards, titleLine }: Reading, index: number): boolean =>
  zones[index] !== AWAY && !cards.lines.has(index) && index !== titleLine;

/** How far the lines from there on say what is told, end exclusive; `from` where it is too little. */
function extentOf({ lines }: Reading, from: number, key: string): { to: number; isWhole: boolean } {
  let said = 0;
  let to = from;
  for (let at = from; at < lines.length && said < key.length && at - to <= LEFT_OUT_MOST; at++) {
    const line = bare(lines[at]!.text);
    const left = key.slice(said);
    if (line === '') continue;
    const same = left.startsWith(line) || line.startsWith(left) ? line.length : sharedBeginning(left, line);
    // Cut off in this line, with something else put behind.
    if (same < line.length && same < SHARED_LEAST) continue;
    said += same;
    to = at + 1;
    if (same < line.length) break;
  }
  const isEnough = said >= Math.max(SHARED_LEAST, key.length * SHARE_LEAST);
  return { to: isEnough ? to : from, isWhole: said >= key.length };
}

function sharedBeginning(a: string, b: string): number {
  let at = 0;
  while (at < a.length && a[at] === b[at]) at++;
  return at;
}

function withRest(reading: Reading, from: number, end: number, isCut: boolean): string {
  const { lines, boxes } = reading;
  let at = lines[from]!.box;
  while (boxes[at]!.to < end && boxes[at]!.parent >= 0) at = boxes[at]!.parent;
  // Of a paragraph that is no element for one only those of its kind go on with it.
  const isOneOf = !isCut && sizeOf(boxes[at]!) === 1 && boxes[at]!.tag !== 'p';
  const climbs = () => isCut || sizeOf(boxes[at]!) === 1 || boxes[at]!.tag === 'p';
  while (climbs() && boxes[at]!.to === end && boxes[at]!.parent >= 0) at = boxes[at]!.parent;
  const isHeaded = lines.slice(from, end).some((_, line) => levelOf(reading, from + line) > 0);
  const isAlike = (index: number) => isKin(reading, lines[from]!.box, index);
  let to = end;
  for (; goesOn(reading, to); to++) {
    if (to >= boxes[at]!.to && !isParagraphAfter(reading, at, to)) break;
    const isHeading = levelOf(reading, to) > 0;
    if (
      isHeading
        ? !isHeaded && !isAlike(to + 1)
        : isOneOf && !isAlike(to) && !(isSentence(lines[end - 1]!) && isOfListIn(reading, at, to))
    )
      break;
  }
  while (to > end && !isSentence(lines[to - 1]!) && !isListed(reading, to - 1)) to--;
  const its = Array.from({ length: to - from }, (_, line) => from + line);
  return composed(
    reading,
    its.filter((line) => line < end || levelOf(reading, line) > 0 || isOwnWord(reading, line, true)),
  );
}

/** Whether a line stands in a box that a name says is of one kind with `box`, beside it. */
function isKin({ lines, boxes }: Reading, box: number, line: number): boolean {
  const { parent, hint } = boxes[box]!;
  let at = lines[line]?.box ?? -1;
  while (at >= 0 && boxes[at]!.parent !== parent) at = boxes[at]!.parent;
  return at >= 0 && hint !== '' && boxes[at]!.hint === hint;
}

/** What is cut off inside of a paragraph goes on in the paragraphs after it. */
const isParagraphAfter = ({ lines, boxes }: Reading, box: number, line: number): boolean =>
  boxes[box]!.tag === 'p' &&
  boxes[lines[line]!.box]!.tag === 'p' &&
  boxes[lines[line]!.box]!.parent === boxes[box]!.parent;

/** An item of a list that stands in `box` below the words: its points. */
function isOfListIn({ lines, boxes }: Reading, box: number, line: number): boolean {
  let at = lines[line]!.box;
  if (boxes[at]!.tag !== 'li') return false;
  while (at >= 0 && boxes[at]!.parent !== box) at = boxes[at]!.parent;
  return at >= 0 && /^[uo]l$/.test(boxes[at]!.tag);
}

const isListed = (reading: Reading, index: number): boolean =>
  boxOf(reading, index).tag === 'li' || LISTED.test(reading.lines[index]!.text);

/** No known part begins there, and no price or button stands there. */
function goesOn(reading: Reading, index: number): boolean {
  const line = reading.lines[index];
  if (!line || !mayHold(reading, index) || isOnly(line, CONTROL)) return false;
  if (line.text.length < 40 && amountsIn(line.text).length > 0) return false;
  return !(sizeOf(boxOf(reading, index)) === 1 && headingLabel(line.text, levelOf(reading, index) === 0));
}
