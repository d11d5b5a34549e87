import { fitted } from '../../text/fitted';
import { fold } from '../../text/fold';
import { readDate } from '../decide/dates';
import { daysAgo } from '../decide/relative-date';
import { type Candidate, CONTROL, type FieldName } from '../types';
import { amountsIn } from './amounts';
import { beginsWithCondition, isTwofold, NEW_PART } from './condition-words';
import { headingLabel } from './heading-labels';
import { type Piece, piecesOf } from './pieces';
import { isOnly, levelOf, type Reading } from './reading';
import { rowLabel } from './row-labels';
import { SITE_NAMES } from './site-headings';
import { AWAY } from './zones';

const PLACE_NAMES =
  /\b(?:location|locality|loc|where|place|city|town|address|geo|map|mappin|mapmarker|pin|marker|standort|ort|adresse|lieu|ville|localisation|dove|comune|luogo|plaats|woonplaats|ubicacion|lugar|localidad|donde|plats|ort|sted|lokalizacja|lokalita|miejsce|local|localizacao|paikka|sijainti)(?!\w)/;
const CONDITION_NAMES =
  /\b(?:itemcondition|condition|cond|(?<!ui-)state|zustand|etat|conditie|staat|condizion[ei]|stato|estado|skick|tilstand|stand|stan|stav|kunto)(?!\w)/;
/** "btn state-ready": how it is drawn. */
const BUTTON = /\b(?:btn|button)(?!\w)/;
const OF_COLOUR = /\b(?:colou?r|farbe|couleur|kleur|colore) ?:? ?$/;
const BADGE_NAMES = /\b(?:badge|ribbon|sticker|(?:new)?flag)(?!\w)/;
const DATE_NAMES =
  /\b(?:listed|posted|date|published|datum|pubdate|created|calendar|clock|time|fecha|data|dato|since|added|inserito|publie\w*)(?!\w)/;
const SERIAL_NAMES = /\b(?:serial|serialnumber|seriennummer|serienummer|matricola)(?!\w)/;
/** Of an address: ".example". */
const ENDING = fitted('u')`\.\p{L}+$`;
const CAPITAL = fitted('u')`\p{Lu}`;
const SMALL = 80;
const LINES_NEAR_TITLE = 14;

/** What else the page says, as evidence for what a short text is. */
export interface Around {
  title: string;
  siteName: string;
  /** The window's title as it is. */
  windowTitle: string;
  /** Texts that may name the place again: the window's whole title, the summaries of the head. */
  told: string;
  description: string;
  language: string | null;
}

/**
 * Place, condition, day and serial outside any labelled row: short texts, each with what speaks for it added up: what the
 * page calls it, its form (a postal code, the words of conditions, a day), standing near the title, and for a place that
 * it is named again elsewhere.
 */
export function particularsOf(reading: Reading, around: Around): Candidate[] {
  const { titleLine } = reading;
  const title = fold(around.title).text;
  const again = {
    title,
    told: without(fold(around.told).text, title),
    description: fold(around.description.slice(0, 5000)).text,
  };
  const pieces = piecesOf(reading);
  const counts = new Map<string, number>();
  for (const { folded } of pieces) counts.set(folded, (counts.get(folded) ?? 0) + 1);

  /** Lines that say when: the place mostly stands beside the day. */
  const dated = new Set<number>();
  /** The day that each text says, "" where it counts from today. */
  const said = new Map<string, string | null>();
  const daySaid = (text: string): string | null => {
    let day = said.get(text);
    if (day === undefined) {
      day = dayIn(text) ?? (daysAgo(text, around.language) === null ? null : '');
      said.set(text, day);
    }
    return day;
  };
  for (const { text, line } of pieces) if (daySaid(text) !== null) dated.add(line);

  const found: Candidate[] = [];
  const add = (field: FieldName, value: string, weight: number) => {
    const before = found.find((one) => one.field === field && one.value === value);
    if (before) before.weight = Math.max(before.weight, weight);
    else found.push({ field, value, source: 'page', weight: Math.min(weight, 0.9) });
  };
  // A site that is called by its address goes by its first part, too.
  const sites = [around.siteName, lastPart(around.windowTitle)]
    .map((name) => fold(name).text.replace(ENDING, ''))
    .filter(Boolean);
  for (const piece of pieces) {
    const { text, folded, hint, line } = piece;
    const label = piece.label ? rowLabel(piece.label) : null;
    if (!label && (folded === title || sites.includes(folded.replace(ENDING, '')))) continue;
    if (SITE_NAMES.test(hint)) continue;
    if (rowLabel(text) || headingLabel(text) || amountsIn(text).length > 0) continue;
    const distance = titleLine >= 0 ? Math.abs(line - titleLine) : LINES_NEAR_TITLE;
    const near = distance <= LINES_NEAR_TITLE ? 0.1 - distance * 0.0005 : 0;

    if (label === 'serial' || SERIAL_NAMES.test(hint)) add('serial', text, label ? 0.8 : 0.45);
    const condition = /\d/.test(text)
      ? 0
      : (beginsWithCondition(folded) && folded.split(' ').length <= 7 && !NEW_PART.test(folded) ? 0.35 : 0) +
        (isTwofold(folded) ? 0.1 : 0) +
        (label === 'condition' ? 0.5 : 0) +
        (CONDITION_NAMES.test(hint) && !BUTTON.test(hint) ? 0.35 : 0);
    // "Colour: mint".
    if (OF_COLOUR.test(piece.before)) continue;
    // A shop sets it on what it has not had for long.
    const isBadge = folded === 'new' && BADGE_NAMES.test(hint);
    if (condition > 0 && !isBadge && condition + near >= 0.39) add('condition', text, condition + near);

    const day = daySaid(text);
    const isListing = day !== null && !OTHER_DAY.test(`${piece.before} ${folded}`);
    if (day && isListing) {
      const isListed = LISTED_WORDS.test(folded) || LISTED_WORDS.test(piece.before) || label === 'listedDate';
      add('listedDate', day, 0.25 + (isListed ? 0.3 : 0) + (DATE_NAMES.test(hint) ? 0.2 : 0) + near);
      continue;
    }
    if (day === '' && isListing) {
      const isListed = LISTED_WORDS.test(folded) || LISTED_WORDS.test(piece.before) || label === 'listedDate';
      const weight = 0.15 + (isListed ? 0.3 : 0) + (DATE_NAMES.test(hint) ? 0.2 : 0) + near;
      if (weight >= 0.25 && text.length < 40) add('listedDate', text, weight);
      if (!CAPITAL.test(text.slice(1))) continue;
    }
    const place = placeIn(piece, again, counts.get(folded) ?? 1, label === 'place');
    const beside = dated.has(line) ? 0.25 : 0;
    if (place && place.weight + near + beside >= 0.34) add('place', place.text, place.weight + near + beside);
  }
  return found.sort((a, b) => b.weight - a.weight).slice(0, 40);
}

/** The last of several parts of a window's title, which mostly names the site; "" where it is all one. */
export function lastPart(windowTitle: string): string {
  const parts = windowTitle.split(/\s+[|–—·•»-]\s+|\s*[|»:]\s+/);
  return parts.length > 1 ? parts.at(-1)!.trim() : '';
}

const without = (text: string, part: string): string => (part === '' ? text : text.replaceAll(part, ' '));

const POSTAL = fitted(
  'u',
)`^(?:[A-Z]{1,2}-?)?\d{4,5},? \p{Lu}|\((?:\d{2,6}|[A-Z]{2})\)$|^\p{Lu}[\p{L} -]+,? [A-Z]{1,2}\d{1,2}$|\b\d{5}$`;
const PLACE_FORM = fitted(
  'u',
)`^(?:(?:[A-Z]{1,2}-?)?\d{4,5},? )?\p{Lu}[\p{L}'’.-]*(?:[ /,]+(?:[\p{L}'’.-]+|\([\p{L}\d ]{1,20}\)|\d{4,6}|[A-Z]{1,2}\d{1,2}))*$`;
/** A town and what it lies in: "Tarn Hobley, Northumberside". */
const WITHIN = fitted(
  'u',
)`^\p{Lu}[\p{L}'’-]+(?: \p{L}+){0,2}, \p{Lu}\p{L}+(?: (?:de|la|del|di|of|the|\p{Lu}\p{L}+)){0,4}$`;
/** A street with its number, and behind it a postal code with its town. */
const ADDRESS = fitted(
  'u',
)`^\p{L}[\p{L}.'’ -]{2,40} \d{1,4} ?[a-z]?, ((?:[A-Z]{1,2}-)?\d{4,5} \p{Lu}[\p{L} .-]{2,40})$`;
const NUMBERED = /\d ?[a-z]?, /;
/** Before a place in the same line. The languages of the labels; from memory. */
const IN = /\b(?:in|at|near|from|located|ort|bei|aus|a|à|en|au|dans|de|te|uit|da|i|fra|fran|w|z|v|ve|em)$/;

/** A text that has the form of a place's name, with what speaks for its being one; null where the form is another. */
function placeIn(
  { text: written, folded: allFolded, hint, before, linked }: Piece,
  again: { title: string; told: string; description: string },
  count: number,
  isLabelled: boolean,
): { text: string; weight: number } | null {
  // Of a whole address the town.
  const [, town] = (NUMBERED.test(written) && ADDRESS.exec(written)) || [];
  const text = town ?? written;
  const folded = town ? fold(town).text : allFolded;
  if (text.length > 60 || !PLACE_FORM.test(text) || text.split(' ').length > 6) return null;
  if (beginsWithCondition(folded) || LISTED_WORDS.test(folded)) return null;
  const [name = folded] = folded.replace(/^\S*\d\S*, /, '').split(/[,(/]/);
  // "Netherholme NB": the state behind it is said by other texts seldom.
  const isStated = /^[^,(/]+ [A-Z]{2,3}$/.test(text);
  const core = (isStated ? name.replace(/ \S+$/, '') : name).replace(/^\S*\d\S*,? /, '').trim();

  if (core.length < 3) return null;
  const holds = (all: string) => holdsWords(all, core);
  const weight =
    (isLabelled ? 0.5 : 0) +
    (PLACE_NAMES.test(hint) ? 0.35 : 0) +
    (POSTAL.test(text) || WITHIN.test(text) ? 0.25 : 0) +
    (holds(again.told) ? 0.25 : 0) +
    (holds(again.description) ? 0.2 : 0) +
    (count > 1 ? 0.1 : 0) -
    // A way through the site names the kinds of things that it sells.
    (linked && !IN.test(before.trim()) ? 0.15 : 0) -
    (holds(again.title) ? 0.25 : 0) +
    (IN.test(before.trim()) ? 0.15 : 0);
  return { text, weight };
}

/** True where the words stand in a text as words, not inside of others. */
function holdsWords(all: string, words: string): boolean {
  for (let at = all.indexOf(words); at >= 0; at = all.indexOf(words, at + 1))
    if (!LETTER.test(all[at - 1] ?? '') && !LETTER.test(all[at + words.length] ?? '')) return true;
  return false;
}
const LETTER = fitted('u')`[\p{L}\d]`;

/** Headings over the place where a thing is to be seen or fetched. The languages of the labels. */
const HAD_AT =
  /^(?:(?:viewing|collection|pick-?up|kijken|bezichtiging|besichtigung|abholung|visite|retrait|visione|ritiro|visita|recogida)(?: (?:and|en|und|et|e|y) (?:viewing|collection|ophalen|afhalen|abholung|besichtigung|retrait|enlevement|ritiro|recogida))?|ophalen|afhalen|where it is|wo)$/;

/** A place in brackets at the end of the heading, or on a line of it: "Hand crank - £45 (Netherholme)". */
export function placeInHeading(reading: Reading): Candidate[] {
  const { lines, titleLine, heading } = reading;
  if (titleLine < 0) return [];
  const found: Candidate[] = [];
  const own = heading[lines[titleLine]!.box]!;
  for (let index = titleLine; index < Math.min(lines.length, titleLine + 3); index++) {
    if (index > titleLine && (own < 0 || heading[lines[index]!.box] !== own)) break;
    const [, place] = /\(([^()]{3,50})\)\s*$/.exec(lines[index]!.text) ?? [];
    const isBehindPrice = index > titleLine || amountsIn(lines[index]!.text).length > 0;
    if (place && isBehindPrice && CAPITAL.test(place[0]!) && !beginsWithCondition(fold(place).text))
      found.push({ field: 'place', value: place, source: 'page', weight: 0.6 });
  }
  return found;
}

/** The name of a map, or of the way to it. */
export const MAP = /^(?:\S+ .{0,20})?(?:map|karte|carte|kaart|mappa|mapa|kart)$/;

/** A heading that is a label ("Localisation") over one short line. */
export function headedParticulars(reading: Reading): Candidate[] {
  const { lines, zones, cards } = reading;
  const found: Candidate[] = [];
  for (const [index, { text }] of lines.entries()) {
    if (levelOf(reading, index) === 0 || zones[index] === AWAY || cards.lines.has(index)) continue;
    const field = rowLabel(text) ?? (HAD_AT.test(fold(text).text) ? 'place' : null);
    const next = lines[index + 1];
    if (field !== 'place' && field !== 'condition') continue;
    if (
      next &&
      !MAP.test(fold(next.text).text) &&
      next.text.length <= SMALL &&
      levelOf(reading, index + 1) === 0 &&
      !isOnly(next, CONTROL)
    )
      found.push({ field, value: next.text, source: 'page', weight: 0.7 });
  }
  return found;
}

/** Short lines that say where a thing is to be had. English; German; French; Dutch; Italian; Spanish; Nordic. From memory. */
const TO_BE_HAD =
  '(?:item )?located (?:in|at|near)|pick-?\\s?up (?:in|from|at)|collect(?:ion)?(?: only)?,? (?:in|from|at)|buyer collects (?:in|from)|can be (?:seen|collected) (?:in|at)|(?:sent|ships|posted|dispatched) from|abholung in|abzuholen in|steht in|ophalen in|af te halen in|[àa] retirer [àa]|visible [àa]|ritiro a|si trova a|recogida en|se recoge en|finns i|hämtas i|hentes i|odbiór w|osobní odběr v';
const PLACE_TO_BE_HAD = fitted('iu')`^(?:\u{1f4cd}\s*|(?:${TO_BE_HAD})\s+)(\p{Lu}[^.!?;:|·(]{1,50})`;
/** Most lines begin in no such way. */
const BEGINS = new RegExp(`^(?:${fold(TO_BE_HAD).text})`);

/** "Collection from Lower Thrapwick" on a line of its own. */
export function placesToldOf({ lines, zones, cards }: Reading): Candidate[] {
  const found: Candidate[] = [];
  for (const [index, { text }] of lines.entries()) {
    if (text.length > SMALL || zones[index] === AWAY || cards.lines.has(index)) continue;
    if (!text.startsWith('\u{1f4cd}') && !BEGINS.test(fold(text).text)) continue;
    const [, place] = PLACE_TO_BE_HAD.exec(text) ?? [];
    if (place && CAPITAL.test(place[0]!))
      found.push({ field: 'place', value: place.trim(), source: 'page', weight: 0.55 });
    if (found.length >= 5) break;
  }
  return found;
}

const LISTED_WORDS =
  /\b(?:listed|posted|placed|published|added|advertised|eingestellt|erstellt|veroffentlicht|inseriert|online seit|publi|publiee?|depos|mise? en ligne|en ligne depuis|geplaatst|sinds|publicado|pubblicato|inserito|upplagd|inlagd|publicerad|oprettet|indrykket|publisert|lagt ut|dodan\w*|opublikowan\w*|vlozeno|pridano|julkaistu|lisatty|feladva)(?!\w)/;
/** Days of something else. */
const OTHER_DAY =
  /\b(?:wrote|schrieb|ecrit|schreef|ha scritto|escribio|ends?|ending|until|closes|closing|cloture|joined|member|since|born|made|built|sale on|viewing|updated|expires|sold|endet|bis|mitglied|seit|baujahr|fin|jusqu|membre|depuis (?:19|20)\d\d|inscrit|eindigt|tot|lid|scade|iscritto|fino|termina|hasta|registrado|slutar|medlem|konczy|clen)(?!\w)/;
const DAY = fitted(
  'u',
)`(?<!\d)(?:\d{4}-\d{1,2}-\d{1,2}|\d{1,2}[./-]\d{1,2}[./-](?:\d{4}|\d{2})|\d{1,2}(?:st|nd|rd|th|er|\.)?(?: of| de)?[ -]\p{L}{3,12}\.?,?(?: de)?[ -](?:\d{4}|['’]\d{2})|\p{L}{3,10}\.? \d{1,2}(?:st|nd|rd|th)?, \d{4}|\p{L}{3} \d{1,2} \d\d:\d\d(?::\d\d)? (?:[A-Z]{2,5} )?\d{4})(?!\d)`;

/** What each form of a day has; most numbers are told by it to be none. */
const MAY_BE_DAY = /\d{4}|\d[./-]\d{1,2}[./-]\d|['’]\d/;
const dayIn = (text: string): string | null => (MAY_BE_DAY.test(text) && DAY.exec(text)?.[0]) || null;

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
export function writtenDates({ lines, zones, cards }: Reading, language: string | null): Candidate[] {
  const found: Candidate[] = [];
  for (const [index, { text }] of lines.entries()) {
    if (text.length > SMALL || zones[index] === AWAY || cards.lines.has(index) || !/\d/.test(text)) continue;
    const folded = fold(text);
    const word = LISTED_WORDS.exec(folded.text);
    if (!word) continue;
    const { start } = folded.toOriginal(word.index, word.index + 1);
    const value = text.slice(start);
    if (readDate(value, language)) found.push({ field: 'listedDate', value, source: 'page', weight: 0.5 });
    if (found.length >= 10) break;
  }
  return found;
}
