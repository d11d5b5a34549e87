import type { Box, PageText } from '../types';

const encoder = new TextEncoder();
/** Bytes of a value as JSON, with the comma after it. */
export const bytesOf = (value: unknown): number => encoder.encode(JSON.stringify(value)).length + 1;

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

/**
 * A page within a budget of bytes: the lines around its title first, then from the top, each with the boxes around it.
 * Plain boxes that hold the same as the box around them become one with it; what holds no line is dropped.
 */
export function trimmed(whole: PageText, title: number, budget: number): { page: PageText; cut: boolean } {
  const { lines } = whole;
  const { boxes, place } = merged(whole.boxes);
  const keepsLine = new Uint8Array(lines.length);
  const keepsBox = new Uint8Array(boxes.length);
  let left = budget;
  let misses = 0;
  const take = (from: number, to: number) => {
    for (let index = Math.max(0, from); index < Math.min(to, lines.length) && misses < MISSES_MOST; index++) {
      if (keepsLine[index]) continue;
      const chain: number[] = [];
      for (
        let at = place[lines[index]!.box]!;
        at >= 0 && !keepsBox[at] && chain.length < LEVELS_MOST;
        at = boxes[at]!.parent
      )
        chain.push(at);
      const size = chain.reduce((sum, at) => sum + bytesOf(boxes[at]), bytesOf(lines[index]));
      if (size > left) {
        misses++;
        continue;
      }
      left -= size;
      keepsLine[index] = 1;
      for (const at of chain) keepsBox[at] = 1;
    }
  };
  // The page itself holds all that has no box of its own left.
  keepsBox[0] = 1;
  take(title - BEFORE_TITLE, title + AFTER_TITLE);
  take(0, lines.length);

  /** How many kept lines stand before each line; the place of each kept box, or of the kept one around it. */
  const rank = new Uint32Array(lines.length + 1);
  for (let index = 0; index < lines.length; index++) rank[index + 1] = rank[index]! + keepsLine[index]!;
  const kept: Box[] = [];
  const final: number[] = [];
  for (const [index, box] of boxes.entries()) {
    const parent = box.parent < 0 ? -1 : final[box.parent]!;
    final.push(keepsBox[index] ? kept.push({ ...box, parent, from: rank[box.from]!, to: rank[box.to]! }) - 1 : parent);
  }
  const moved = <T extends { line: number }>(at: T): T => ({ ...at, line: rank[Math.min(at.line, lines.length)]! });
  const boxOf = (box: number) => final[place[box]!]!;
  return {
    page: {
      lines: lines.filter((_, index) => keepsLine[index]).map((line) => ({ ...line, box: boxOf(line.box) })),
      boxes: kept,
      pictures: whole.pictures.map((picture) => ({ ...moved(picture), box: boxOf(picture.box) })),
      times: whole.times.map(moved),
    },
    cut: rank[lines.length]! < lines.length,
  };
}

/** The boxes without plain ones inside others of the same extent, and where each of the old ones went. */
function merged(all: Box[]): { boxes: Box[]; place: Int32Array } {
  const place = new Int32Array(all.length);
  const boxes: Box[] = [];
  for (const [index, box] of all.entries()) {
    const parent = box.parent < 0 ? -1 : place[box.parent]!;
    const around = boxes[parent];
    if (around && around.from === box.from && around.to === box.to && PLAIN.test(box.tag) && !box.level) {
      place[index] = parent;
      if (box.hint && around.hint.length < HINT_MOST) around.hint = `${around.hint} ${box.hint}`.trim();
    } else {
      place[index] = boxes.push({ ...box, parent }) - 1;
    }
  }
  return { boxes, place };
}
