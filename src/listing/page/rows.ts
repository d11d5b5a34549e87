import { fitted } from '../../text/fitted';
import { type Box, CONTROL } from '../types';
import { amountsIn } from './amounts';
import { headingLabel } from './heading-labels';
import { isOnly, type Reading, runsOf, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import { AWAY } from './zones';

/** A label with its value: a row of a table or definition list, or "Label: value". */
export interface Row {
  label: string;
  value: string;
  /** The lines it takes up, end exclusive. */
  from: number;
  to: number;
}

const LETTER = fitted('u')`\p{L}`;
const LABEL_MOST = 48;
const VALUE_MOST = 300;
const ROWS_MOST = 300;
/** "Label: value" on one line; not a time of day, not an address. */
const COLON = fitted('su')`^(\p{L}[^:：\n]{0,46}?)\s*[:：]\s+(\S.*)$`;

/** A further labelled value behind a mark. */
const ANOTHER = fitted('su')`^(.{1,80}?)\s*[.;|\u2022\u00b7]\s+(\p{Lu}[\p{L} ]{1,30}):\s+(\S.*)$`;

/** The labelled rows of the page, in document order. `isProse` says which lines are the title or the seller's own words. */
export function rowsOf(reading: Reading, isProse: (line: number) => boolean): Row[] {
  const { lines, boxes, row: rowOf, zones, cards } = reading;
  const rows: Row[] = [];
  const taken = new Set<number>();

  const textOf = (box: Pick<Box, 'from' | 'to'>) => {
    const seen: string[] = [];
    for (let index = box.from; index < box.to && seen.length < 40; index++) {
      // The same again is a copy for readers of screens.
      const { text } = lines[index]!;
      if (!isOnly(lines[index]!, CONTROL) && text !== seen.at(-1)) seen.push(text);
    }
    return seen.filter(Boolean).join(' ');
  };
  const add = (label: string, value: string, from: number, to: number) => {
    if (label.length > LABEL_MOST + 10) return;
    const name = label.replace(/[\s:：*]+$/, '').trim();
    if (!name || !value || name.length > LABEL_MOST || value.length > VALUE_MOST || rows.length >= ROWS_MOST) return;
    if (zones[from] === AWAY || cards.lines.has(from) || isProse(from) || taken.has(from) || !LETTER.test(name)) return;
    if (headingLabel(name) === 'description') return;
    // Prices of postage and the like; those of the thing itself are weighed elsewhere.
    if (rowLabel(name) === null && isMoney(value)) return;
    for (let index = from; index < to; index++) taken.add(index);
    rows.push({ label: name, value, from, to });
  };

  /** A line may hold several rows: "Postage: none. Located in: Netherholme". */
  const addAll = (label: string, value: string, index: number) => {
    const [, before, second, its] = ANOTHER.exec(value) ?? [];
    if (before === undefined || !rowLabel(second!)) return add(label, value, index, index + 1);
    add(label, before, index, index + 1);
    taken.delete(index);
    add(second!, its!, index, index + 1);
  };

  let term: Box | null = null;
  const cells = new Map<number, Box[]>();
  /** Boxes of exactly two lines, by their parent. */
  const pairs = new Map<number, Box[]>();
  for (const [index, box] of boxes.entries()) {
    const size = sizeOf(box);
    if (box.tag === 'dt') term = box;
    else if (box.tag === 'dd' && term) {
      if (size > 0) add(textOf(term), textOf(box), term.from, box.to);
      term = null;
    } else if ((box.tag === 'td' || box.tag === 'th') && rowOf[box.parent] === box.parent) {
      const row = cells.get(box.parent);
      if (row) row.push(box);
      else cells.set(box.parent, [box]);
    } else if (size === 2 && rowOf[index]! < 0) {
      const same = pairs.get(box.parent);
      if (same) same.push(box);
      else pairs.set(box.parent, [box]);
    }
  }
  for (const row of cells.values()) {
    if (row.length % 2 || row.length > 6 || row.every((cell) => cell.tag === 'th')) continue;
    for (let index = 0; index < row.length; index += 2) {
      const label = row[index]!;
      const value = row[index + 1]!;
      const name = textOf(label);
      if (row.length > 2 && label.tag !== 'th' && !/[:：]\s*$/.test(name) && !rowLabel(name)) continue;
      if (value.to > value.from) add(name, textOf(value), label.from, value.to);
    }
  }
  for (const same of pairs.values()) {
    for (const box of same) {
      const label = lines[box.from]!.text;
      // Three alike make a list of rows; alone, only a label that is known.
      // "Private" over "State: used": the second has a label of its own.
      if (rowLabel(COLON.exec(lines[box.from + 1]!.text)?.[1] ?? '')) continue;
      const isRow = rowLabel(label) !== null || (same.length >= 3 && label.length <= 30 && !/[\d.!?]/.test(label));
      const [first, second] = [lines[box.from]!, lines[box.from + 1]!];
      // Two lines of one box: parts set beside each other, or parted by a break.
      if (isRow && (first.box !== second.box || rowLabel(label) !== null)) add(label, second.text, box.from, box.to);
    }
  }
  for (const [index, line] of lines.entries()) {
    if (taken.has(index) || zones[index] === AWAY || line.text.length > VALUE_MOST + LABEL_MOST) continue;
    const colon = COLON.exec(line.text);
    if (colon) {
      addAll(colon[1]!, colon[2]!, index);
      continue;
    }
    // <span>Condition</span><span>Used</span>: two parts of one line, the first a known label.
    const first = runsOf(line)[0]!.text.trim();
    const rest = line.text.slice(first.length).replace(/^[\s:：]+/, '');
    // "Condition | Returns | Contact" leads to parts of the site.
    if (rest && !/^[|·•]/.test(rest) && rowLabel(first)) add(first, rest, index, index + 1);
  }
  return rows.sort((a, b) => a.from - b.from);
}

function isMoney(value: string): boolean {
  const [first] = amountsIn(value);
  return first !== undefined && first.end - first.start > value.length * 0.6;
}
