import type { Box, Line, PageText } from '../types';
import { bytesOfBox, bytesOfLine } from './json-size';

/** Around the first h1 an advert is likeliest; these lines are kept first where not all can be. */
const BEFORE_TITLE = 50;
const AFTER_TITLE = 1500;
/** Boxes right around a line that are kept with it; farther ones only as other lines bring them. */
const LEVELS_MOST = 40;
/** Lines too long for what room is left, before no more are tried. */
const MISSES_MOST = 50;
/** Boxes without a meaning of their own: what is said of one inside another of the same extent may be said of both. */
const PLAIN = /^(?:div|span|section|center|p|ul|ol|tbody|body)$|-/;
const HINT_MOST = 160;
/** Boxes or lines between two pauses that may be made. */
const OF_A_STEP = 2000;

/**
 * A page within a budget of bytes: the lines around its title first, then from the top, each with the boxes around it.
 * Plain boxes that hold the same as the box around them become one with it; what holds no line is dropped. The given
 * boxes are used up.
 */
export function* trimmed(
  whole: PageText,
  title: number,
  budget: number,
): Generator<void, { page: PageText; cut: boolean }> {
  const { lines } = whole;
  const { boxes, place } = yield* merged(whole.boxes);
  const keepsLine = new Uint8Array(lines.length);
  const keepsBox = new Uint8Array(boxes.length);
  let left = budget;
  let misses = 0;
  const take = function* (from: number, to: number) {
    for (let index = Math.max(0, from); index < to && misses < MISSES_MOST; index++) {
      if (index % OF_A_STEP === 0) yield;
      if (keepsLine[index]) continue;
      const inner = place[lines[index]!.box]!;
      let size = bytesOfLine(lines[index]!);
      let outer = inner;
      for (let level = 0; level < LEVELS_MOST && outer >= 0 && !keepsBox[outer]; level++) {
        size += bytesOfBox(boxes[outer]!);
        outer = boxes[outer]!.parent;
      }
      if (size > left) {
        misses++;
        continue;
      }
      left -= size;
      keepsLine[index] = 1;
      for (let at = inner; at !== outer; at = boxes[at]!.parent) keepsBox[at] = 1;
    }
  };
  // The page itself holds all that has no box of its own left.
  keepsBox[0] = 1;
  yield* take(title - BEFORE_TITLE, Math.min(title + AFTER_TITLE, lines.length));
  yield* take(0, lines.length);

  /** How many kept lines stand before each line; the place of each kept box, or of the kept one around it. */
  const rank = new Uint32Array(lines.length + 1);
  for (let index = 0; index < lines.length; index++) rank[index + 1] = rank[index]! + keepsLine[index]!;
  const kept: Box[] = [];
  const final = new Int32Array(boxes.length);
  for (let index = 0; index < boxes.length; index++) {
    const { tag, parent, from, to, hint, level } = boxes[index]!;
    const around = parent < 0 ? -1 : final[parent]!;
    if (!keepsBox[index]) {
      final[index] = around;
      continue;
    }
    const box: Box = { tag, parent: around, from: rank[from]!, to: rank[to]!, hint };
    if (level !== undefined) box.level = level;
    final[index] = kept.push(box) - 1;
  }
  const boxOf = (box: number) => final[place[box]!]!;
  const moved = (line: number): number => rank[Math.min(line, lines.length)]!;
  const shown: Line[] = [];
  for (let index = 0; index < lines.length; index++) {
    if (!keepsLine[index]) continue;
    const { text, box, runs } = lines[index]!;
    shown.push(runs ? { text, box: boxOf(box), runs } : { text, box: boxOf(box) });
  }
  return {
    page: {
      lines: shown,
      boxes: kept,
      pictures: whole.pictures.map((picture) => ({ ...picture, line: moved(picture.line), box: boxOf(picture.box) })),
      times: whole.times.map((time) => ({ ...time, line: moved(time.line) })),
    },
    cut: shown.length < lines.length,
  };
}

/** The boxes without plain ones inside others of the same extent, and where each of the old ones went. */
function* merged(all: Box[]): Generator<void, { boxes: Box[]; place: Int32Array }> {
  const place = new Int32Array(all.length);
  const boxes: Box[] = [];
  for (let index = 0; index < all.length; index++) {
    if (index % OF_A_STEP === 0) yield;
    const box = all[index]!;
    box.parent = box.parent < 0 ? -1 : place[box.parent]!;
    const around = boxes[box.parent];
    if (around && around.from === box.from && around.to === box.to && !box.level && PLAIN.test(box.tag)) {
      place[index] = box.parent;
      if (box.hint && around.hint.length < HINT_MOST) around.hint = `${around.hint} ${box.hint}`.trim();
    } else place[index] = boxes.push(box) - 1;
  }
  return { boxes, place };
}
