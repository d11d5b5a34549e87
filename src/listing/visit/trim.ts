import type { Box, Line, PageText, Picture } from '../types';

const encoder = new TextEncoder();
/** Bytes of a value as JSON. */
export const bytesOf = (value: unknown): number => encoder.encode(JSON.stringify(value)).length;

const BOX_MOST = 60_000;
const BOXES_MOST = 4000;
/** Around the first h1 an advert is likeliest; these lines are kept first where not all can be. */
const BEFORE_TITLE = 50;
const AFTER_TITLE = 1500;
/** Boxes without a meaning of their own: what is said of one inside another of the same extent may be said of both. */
const PLAIN = /^(?:div|span|section|center|p|ul|ol|tbody|body)$|-/;

/**
 * A page within a budget of bytes: the lines around its title first, then from the top. Boxes that hold nothing are
 * dropped, plain ones that hold the same as the box around them become one with it. Linear.
 */
export function trimmed(
  lines: Line[],
  boxes: Box[],
  pictures: Picture[],
  times: PageText['times'],
  title: number,
  budget: number,
): { page: PageText; cut: boolean } {
  const keep = new Uint8Array(lines.length);
  let left = budget;
  let cut = false;
  const take = (from: number, to: number) => {
    for (let index = Math.max(0, from); index < Math.min(to, lines.length) && left > 0; index++) {
      if (keep[index]) continue;
      left -= bytesOf(lines[index]);
      if (left > 0) keep[index] = 1;
    }
  };
  take(title - BEFORE_TITLE, title + AFTER_TITLE);
  take(0, lines.length);

  /** How many kept lines stand before each line. */
  const rank = new Uint32Array(lines.length + 1);
  for (let index = 0; index < lines.length; index++) {
    rank[index + 1] = rank[index]! + keep[index]!;
    if (!keep[index]) cut = true;
  }

  const used = new Uint8Array(boxes.length);
  for (const { box } of pictures) for (let at = box; at >= 0 && !used[at]; at = boxes[at]!.parent) used[at] = 1;

  const place = new Int32Array(boxes.length);
  const kept: Box[] = [];
  let room = BOX_MOST;
  for (const [index, box] of boxes.entries()) {
    const parent = box.parent < 0 ? -1 : place[box.parent]!;
    const around = kept[parent];
    const own: Box = { ...box, parent, from: rank[box.from]!, to: rank[box.to]! };
    const same = around !== undefined && around.from === own.from && around.to === own.to;
    if (around && ((own.from === own.to && !used[index]) || kept.length >= BOXES_MOST || room < 0)) {
      place[index] = parent;
      if (own.from < own.to) cut = true;
    } else if (around && same && PLAIN.test(own.tag) && !own.level) {
      place[index] = parent;
      if (own.hint && around.hint.length < 160) around.hint = `${around.hint} ${own.hint}`.trim();
    } else {
      place[index] = kept.length;
      kept.push(own);
      room -= own.hint.length;
    }
  }
  const moved = <T extends { line: number }>(at: T): T => ({ ...at, line: rank[Math.min(at.line, lines.length)]! });
  return {
    page: {
      lines: lines.filter((_, index) => keep[index]).map((line) => ({ ...line, box: place[line.box]! })),
      boxes: kept,
      pictures: pictures.map((picture) => ({ ...moved(picture), box: place[picture.box]! })),
      times: times.map(moved),
    },
    cut,
  };
}
