import { fold } from '../../text/fold';
import { type Candidate, CONTROL, type FieldName } from '../types';
import { amountsIn } from './amounts';
import { headingLabel } from './heading-labels';
import { isOnly, levelOf, type Reading, runsOf, sizeOf } from './reading';
import { rowLabel } from './row-labels';
import { AWAY } from './zones';

/** Class and property words of small blocks that say where, when or in what state, outside any labelled row. */
const HINTS: [FieldName, RegExp][] = [
  [
    'place',
    /\b(?:location|locality|loc|where|place|city|town|address|standort|ort|lieu|localisation|plaats|luogo|ubicacion)\b/,
  ],
  ['condition', /\b(?:item-?condition|condition|zustand|etat|conditie|condizione)\b/],
  ['listedDate', /\b(?:listed|posted|date|published|datum|pubdate|created)\b/],
  ['serial', /\b(?:serial|serial-?number|seriennummer)\b/],
];
const SMALL = 80;
const LINE_SMALL = 160;

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

/** The same of the parts of a short line: <span class="where">Netherholme</span> · 142 views. */
export function hintedParts({ lines, zones, cards }: Reading): Candidate[] {
  const found: Candidate[] = [];
  for (const [index, line] of lines.entries()) {
    if (!line.runs || line.text.length > LINE_SMALL || zones[index] === AWAY || cards.lines.has(index)) continue;
    for (const { text, hint } of runsOf(line)) {
      const bare = text.replace(/^[\s·|,•-]+|[\s·|,•-]+$/g, '');
      if (hint === '' || bare === '' || rowLabel(bare) || amountsIn(bare).length > 0) continue;
      for (const [field, words] of HINTS)
        if (words.test(hint)) found.push({ field, value: bare, source: 'page', weight: 0.42 });
    }
    if (found.length >= 20) break;
  }
  return found;
}

/** A heading that is a label ("Localisation") over one short line. */
export function headedParticulars(reading: Reading): Candidate[] {
  const { lines, zones, cards } = reading;
  const found: Candidate[] = [];
  for (const [index, { text }] of lines.entries()) {
    if (levelOf(reading, index) === 0 || zones[index] === AWAY || cards.lines.has(index)) continue;
    const field = rowLabel(text);
    const next = lines[index + 1];
    if (field !== 'place' && field !== 'condition') continue;
    if (next && next.text.length <= SMALL && levelOf(reading, index + 1) === 0 && !isOnly(next, CONTROL))
      found.push({ field, value: next.text, source: 'page', weight: 0.7 });
  }
  return found;
}

/** Short lines that say where a thing is to be had. English; German; French; Dutch; Italian; Spanish. From memory. */
const TO_BE_HAD =
  /^(?:\u{1f4cd}\s*|(?:(?:item )?located (?:in|at|near)|pick-?\s?up (?:in|from|at)|collect(?:ion)?(?: only)?,? (?:in|from|at)|buyer collects (?:in|from)|can be (?:seen|collected) (?:in|at)|abholung in|abzuholen in|ophalen in|af te halen in|[àa] retirer [àa]|ritiro a|recogida en|se recoge en)\s+)(\p{Lu}[^.!?;:|·(]{1,50})/iu;

/** "Collection from Lower Thrapwick" on a line of its own. */
export function placesToldOf({ lines, zones, cards }: Reading): Candidate[] {
  const found: Candidate[] = [];
  for (const [index, { text }] of lines.entries()) {
    if (text.length > SMALL || zones[index] === AWAY || cards.lines.has(index)) continue;
    const [, place] = TO_BE_HAD.exec(text) ?? [];
    if (place && /^\p{Lu}/u.test(place))
      found.push({ field: 'place', value: place.trim(), source: 'page', weight: 0.5 });
    if (found.length >= 5) break;
  }
  return found;
}

const LISTED_WORDS =
  /\b(?:listed|posted|placed|published|added|eingestellt|erstellt|veroffentlicht|inseriert|online seit|publi|depos|mise? en ligne|geplaatst|sinds|publicado|pubblicato|inserito)/i;
/** Days of something else. */
const OTHER_DAY =
  /\b(?:ends?|ending|until|closes|closing|joined|member|since|born|made|built|sale on|viewing|updated|expires|endet|bis|mitglied|seit|baujahr|fin|jusqu|membre|depuis|eindigt|tot|lid|scade|fino|termina|hasta)\b/;
const DAY =
  /(?<!\d)(?:\d{4}-\d{1,2}-\d{1,2}|\d{1,2}[./]\d{1,2}[./](?:\d{4}|\d{2})|\d{1,2}(?:st|nd|rd|th|er|\.)?[ -]\p{L}{3,10}\.?,?[ -]\d{4}|\p{L}{3,10}\.? \d{1,2}(?:st|nd|rd|th)?, \d{4})(?!\d)/u;

/** The dates of <time> elements of the advert itself. */
export function timesOf({ lines, times, zones, cards }: Reading): Candidate[] {
  const found: Candidate[] = [];
  for (const { value, line } of times) {
    if (zones[line] === AWAY || cards.lines.has(line)) continue;
    const around = fold(lines[line]?.text ?? '').text;
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
    const folded = fold(text);
    const word = LISTED_WORDS.exec(folded.text);
    const day = DAY.exec(text);
    if (word) {
      const { start } = folded.toOriginal(word.index, word.index + 1);
      found.push({ field: 'listedDate', value: text.slice(start), source: 'page', weight: 0.5 });
    } else if (day && !OTHER_DAY.test(folded.text))
      found.push({ field: 'listedDate', value: day[0], source: 'page', weight: 0.3 });
    if (found.length >= 10) break;
  }
  return found;
}
