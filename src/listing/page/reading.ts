import type { BOLD, Box, CONTROL, LINK, Line, PageText } from '../types';
import { withPoint } from './cents';

/** A page as its parts are judged: the text, what follows from its boxes, and what was found out so far. */
export interface Reading {
  lines: Line[];
  boxes: Box[];
  pictures: PageText['pictures'];
  times: PageText['times'];
  /** For each box: 1 to 6 inside a heading, else 0. */
  level: number[];
  /** For each box: index of the heading's own box around it, or -1. */
  heading: number[];
  /** For each box: index of the table row around it, or -1. */
  row: number[];
  /** MAIN, BESIDE or AWAY for each line. */
  zones: Uint8Array;
  /** Index of the line of the title, or -1. */
  titleLine: number;
  /** Lines and boxes that belong to one of several things for sale. */
  cards: { lines: Set<number>; boxes: Set<number>; count: number };
}

/** Nothing judged yet. Boxes and lines that point outside the page are dropped, so that any harvest can be read. */
export function readingOf(page: PageText): Reading {
  const boxes = page.boxes.filter(
    (box, index) => box.parent < index && box.from <= box.to && box.to <= page.lines.length,
  );
  const sound =
    boxes.length === page.boxes.length && page.lines.every((line) => line.box >= 0 && line.box < boxes.length);
  const reading: Reading = {
    lines: sound ? page.lines.map(withPoint) : [],
    boxes: sound ? boxes : [],
    pictures: sound
      ? page.pictures.filter(({ box, line }) => box >= 0 && box < boxes.length && line <= page.lines.length)
      : [],
    times: sound ? page.times : [],
    level: [],
    heading: [],
    row: [],
    zones: new Uint8Array(sound ? page.lines.length : 0),
    titleLine: -1,
    cards: { lines: new Set(), boxes: new Set(), count: 0 },
  };
  for (const [index, box] of reading.boxes.entries()) {
    const own = /^h[1-6]$/.test(box.tag) ? Number(box.tag[1]) : Math.min(6, Math.max(0, box.level ?? 0));
    reading.level.push(own || (reading.level[box.parent] ?? 0));
    reading.heading.push(own ? index : (reading.heading[box.parent] ?? -1));
    reading.row.push(box.tag === 'tr' ? index : (reading.row[box.parent] ?? -1));
  }
  return reading;
}

/** The rank of the heading that a line stands in, 0 outside headings. */
export const levelOf = ({ lines, level }: Reading, index: number): number => level[lines[index]!.box]!;

export const boxOf = ({ lines, boxes }: Reading, index: number): Box => boxes[lines[index]!.box]!;

export const sizeOf = (box: Box): number => box.to - box.from;

/** True where all of a line is link (or control). */
export const isOnly = (line: Line, flag: typeof LINK | typeof CONTROL | typeof BOLD): boolean =>
  line.runs !== undefined && line.runs.length > 0 && line.runs.every((run) => run.flags & flag);

/** The stretches of a line with their texts. */
export function runsOf({ text, runs }: Line): { text: string; flags: number; hint: string }[] {
  if (!runs) return [{ text, flags: 0, hint: '' }];
  return runs.map((run, index) => ({
    text: text.slice(run.at, runs[index + 1]?.at ?? text.length),
    flags: run.flags,
    hint: run.hint ?? '',
  }));
}

/** The places from one to before another. */
export const range = (from: number, to: number): number[] =>
  Array.from({ length: Math.max(0, to - from) }, (_, at) => from + at);
