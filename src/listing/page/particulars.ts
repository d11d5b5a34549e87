import type { Candidate, FieldName } from '../types';
import { amountsIn } from './amounts';
import { headingLabel } from './heading-labels';
import { type Reading, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import { AWAY } from './zones';

/** Class and property words of small blocks that say where, when or in what state, outside any labelled row. */
const HINTS: [FieldName, RegExp][] = [
  ['place', /\b(?:location|locality|place|city|standort|ort|lieu|localisation|plaats|luogo|ubicacion)\b/],
  ['condition', /\b(?:item-?condition|condition|zustand|etat|conditie|condizione)\b/],
  ['listedDate', /\b(?:listed|posted|date|published|datum|pubdate|created)\b/],
  ['serial', /\b(?:serial|serial-?number|seriennummer)\b/],
];
const SMALL = 80;

/** Place, condition, date and serial by what the page calls the block that holds them. */
export function hintedParticulars({ lines, boxes, zones, cards }: Reading): Candidate[] {
  const found: Candidate[] = [];
  for (const box of boxes) {
    if (!box.hint || sizeOf(box) !== 1 || zones[box.from] === AWAY || cards.lines.has(box.from)) continue;
    const { text } = lines[box.from]!;
    if (text.length > SMALL || rowLabel(text) || headingLabel(text) || amountsIn(text).length > 0) continue;
    for (const [field, words] of HINTS) {
      if (!words.test(box.hint) || found.some((one) => one.field === field && one.value === text)) continue;
      found.push({ field, value: text, source: 'page', weight: 0.45 });
    }
    if (found.length >= 20) break;
  }
  return found;
}

const LISTED_WORDS =
  /\b(?:listed|posted|placed|published|added|eingestellt|erstellt|veroffentlicht|publi|mise? en ligne|geplaatst|publicado|pubblicato)/i;

/** The dates of <time> elements of the advert itself. */
export function timesOf({ lines, times, zones, cards }: Reading): Candidate[] {
  const found: Candidate[] = [];
  for (const { value, line } of times) {
    if (zones[line] === AWAY || cards.lines.has(line)) continue;
    const around = lines[line]?.text ?? '';
    found.push({ field: 'listedDate', value, source: 'page', weight: LISTED_WORDS.test(around) ? 0.7 : 0.4 });
    if (found.length >= 10) break;
  }
  return found;
}

/** "Advert 417, listed 20 November 2026": the day in a short line of words, from the word that says what day it is. */
export function writtenDates({ lines, zones, cards }: Reading): Candidate[] {
  const found: Candidate[] = [];
  for (const [index, { text }] of lines.entries()) {
    if (text.length > SMALL || zones[index] === AWAY || cards.lines.has(index) || !/\d/.test(text)) continue;
    const word = LISTED_WORDS.exec(text);
    if (word) found.push({ field: 'listedDate', value: text.slice(word.index), source: 'page', weight: 0.5 });
    if (found.length >= 10) break;
  }
  return found;
}
