import { fold } from '../../text/fold';
import { BOLD, type Box, LINK, type Line } from '../types';
import { consentIn } from './consent';
import { headingLabel, isOfComments, isOfSellersWords } from './heading-labels';
import { PRICE_NAMES } from './price-names';
import { isSentence } from './prose';
import { boxOf, isOnly, levelOf, type Reading, runsOf, sizeOf } from './reading';
import { sectionAfter } from './sections';

/** How much a part of the page belongs to the advert: its main column, what stands beside it, or neither. */
export const MAIN = 0;
export const BESIDE = 1;
export const AWAY = 2;

const AWAY_TAGS = /^(?:nav|footer|menu|dialog)$/;
const AWAY_WORDS =
  /\b(?:nav|navbar|navigation|menu|menubar|bread-?crumbs?|(?<!\b(?:section|card|panel|box|item|article|content|product)-)footer|contentinfo|similar|related|recommend\w*|recently|suggest\w*|upsell|cross-?sell|comments?|reviews?|newsletter|subscribe|social|share|sharing|sponsor\w*|popup|modal|dialog|pagination|tips|safety|terms|legal|login|sign-?up|alert)(?!\w)/;
/** Such a box may hold most of the page's text, and is not the advert for that. */
const ASKING_WORDS = /\b(?:alert-?dialog|cookies?|consent|gdpr)(?!\w)/;
const OPENED = /\b(?:popup|modal|(?:alert-?)?dialog)(?!\w)/g;
const SPOKEN = /\b(?:comments?|reviews?)(?!\w)/;
const BESIDE_TAGS = /^(?:aside|header)$/;
const BESIDE_WORDS = /\b(?:sidebar|aside|complementary|banner)(?!\w)/;
const LINES_OF_PRICE = 3;
const WHOLE_TAGS = /^(?:html|body|main)$/;

/** The zone of each line. A class or id is believed only of a part of the page, never of most of it. */
export function zonesOf(reading: Reading): Uint8Array {
  const { boxes, lines } = reading;
  const upTo = new Float64Array(lines.length + 1);
  for (const [index, line] of lines.entries()) upTo[index + 1] = upTo[index]! + line.text.length;
  const length = (box: Box) => upTo[box.to]! - upTo[box.from]!;
  const whole = upTo[lines.length]!;

  const hasTitle = new Uint8Array(boxes.length);
  for (const [index, box] of boxes.entries()) {
    if (box.tag !== 'h1' || sizeOf(box) === 0) continue;
    for (let at = index; at >= 0 && !hasTitle[at]; at = boxes[at]!.parent) hasTitle[at] = 1;
  }

  const titled = hasTitle.some((has) => has === 1);
  const ofBox = new Uint8Array(boxes.length);
  const inMain = new Uint8Array(boxes.length);
  const isOfSeller = new Uint8Array(boxes.length);
  for (const [index, box] of boxes.entries()) {
    const above = box.parent < 0 ? MAIN : ofBox[box.parent]!;
    const main =
      (box.parent >= 0 && inMain[box.parent] === 1) || /^(?:main|article)$/.test(box.tag) || /\bmain\b/.test(box.hint);
    inMain[index] = main ? 1 : 0;
    isOfSeller[index] = isOfSeller[box.parent] || (SPOKEN.test(box.hint) && isHeadedAsWords(reading, box)) ? 1 : 0;
    let own = MAIN;
    // The foot of the advert's own part, not of the page.
    const isOwnFoot =
      box.tag === 'footer' &&
      (main || (box.parent >= 0 && hasTitle[box.parent] === 1 && !WHOLE_TAGS.test(boxes[box.parent]!.tag)));
    // What is inside of a part that is away is so too, whatever it is called.
    if (above === AWAY) own = AWAY;
    else if (AWAY_TAGS.test(box.tag)) own = isOwnFoot ? BESIDE : AWAY;
    else if (BESIDE_TAGS.test(box.tag)) own = box.tag === 'header' && main ? MAIN : BESIDE;
    else if (
      box.hint &&
      !hasTitle[index] &&
      !WHOLE_TAGS.test(box.tag) &&
      (length(box) < whole * 0.6 || (titled && ASKING_WORDS.test(box.hint)))
    ) {
      // "price-without-login"
      const isOfPrice = sizeOf(box) <= LINES_OF_PRICE && PRICE_NAMES.test(box.hint);
      // A button that opens one is none.
      let hint = /^(?:button|a)$/.test(box.tag) ? box.hint.replace(OPENED, '') : box.hint;
      if (isOfSeller[index]) hint = hint.split(SPOKEN).join('');
      if (ASKING_WORDS.test(hint) || (AWAY_WORDS.test(hint) && !isOfPrice && !isToldUnderLabel(reading, box)))
        own = AWAY;
      else if (BESIDE_WORDS.test(box.hint)) own = BESIDE;
    }
    ofBox[index] = Math.max(above, own);
  }

  const zones = new Uint8Array(lines.length);
  for (const [index, line] of lines.entries()) zones[index] = ofBox[line.box]!;
  // A page that says where its main part is: the rest of it stands beside.
  if (boxes.some((box) => box.tag === 'main' && length(box) > 0)) {
    for (const [index, line] of lines.entries()) if (!inMain[line.box]) zones[index] = Math.max(zones[index]!, BESIDE);
  }
  for (const [from, to] of consentIn(reading)) zones.fill(AWAY, from, to);
  for (const [index, { text }] of lines.entries())
    if (zones[index] !== AWAY && text.length <= 200 && leadsOn(text) && levelOf(reading, index) === 0)
      zones[index] = AWAY;
  for (const [index, line] of lines.entries()) {
    const level = levelOf(reading, index);
    if (zones[index] !== AWAY && level === 0 && isBoldLabel(reading, index) && headingLabel(line.text) === 'away') {
      const to = boldSection(reading, index);
      // A seller may write such a label too; what leads to other pages was put there by the site.
      const leads = lines.slice(index + 1, to).some((one) => runsOf(one).some(({ flags }) => flags & LINK));
      if (leads) zones.fill(AWAY, index, to);
    }
    if (zones[index] === AWAY || level === 1 || headingLabel(line.text, level === 0) !== 'away') continue;
    // Only a heading, or a label that has its box to itself, sends what follows away.
    if (level === 0 && sizeOf(boxOf(reading, index)) > 1) continue;
    const [, to] = sectionAfter(
      reading,
      index,
      (box) => level > 0 && !hasTitle[box] && length(boxes[box]!) < whole * 0.6,
    );
    if (isOfComments(line.text) && isOneVoice(lines.slice(index + 1, to))) continue;
    zones.fill(AWAY, index, to);
  }
  return zones;
}

/** "sub-menu", "accordion-navigation" on the panel right under the label "Description", or on both: the words of an advert. */
const MENU = /\b(?:menu|nav(?:igation)?)(?!\w)/;
const isToldUnderLabel = ({ lines, boxes }: Reading, { from, to, hint, parent }: Box): boolean =>
  MENU.test(hint) &&
  (isLabel(lines[from]) || (boxes[parent]?.from === from - 1 && isLabel(lines[from - 1]))) &&
  lines.slice(from, to).some(isSentence);
const isLabel = (line: Line | undefined): boolean => headingLabel(line?.text ?? '') === 'description';

/** Begins with a label of the seller's words, or stands right under a heading that is one: "comments" may be theirs. */
const isHeadedAsWords = (reading: Reading, { from }: Box): boolean =>
  [from, from - 1].some(
    (at) => reading.lines[at] && levelOf(reading, at) > 0 && isOfSellersWords(reading.lines[at]!.text),
  );

/** Ways from one page of a series to the next: "Previous message: ...", "Older: ...". The languages of the labels. */
const LEADS_ON =
  /^(?:[«‹<←]+ ?)?(?:previous|prev|next|newer|older|vorherige[rs]?|vorige[rs]?|nachste[rs]?|neuere[rs]?|altere[rs]?|precedente?|suivante?|volgende?|successivo|precedente|anterior|siguiente|forrige|neste|nasta)(?: (?:message|post|thread|topic|entry|article|item|lot|ad|nachricht|beitrag|thema|artikel|message|sujet|article|bericht|messaggio|mensaje))? ?[:»›>→]/;
/** The mark behind its words, which most lines lack. */
const LEADS_BY = /[:»›>→]/;
const leadsOn = (text: string): boolean => {
  const folded = fold(text.slice(0, 60)).text;
  return LEADS_BY.test(folded) && LEADS_ON.test(folded);
};

/** Nothing but sentences follows at first: no name, day or count as stands before what others say. */
const isOneVoice = ([first]: readonly { text: string }[]): boolean =>
  first !== undefined && first.text.length >= LONG && !/^[^.!?]{0,40}:\s|\d{1,2}:\d{2}/.test(first.text);
const LONG = 60;

/** Pages of old set their headings in bold, on a line of the same box. */
function isBoldLabel(reading: Reading, index: number): boolean {
  const line = reading.lines[index]!;
  return isOnly(line, BOLD) && !isOnly(line, LINK) && sizeOf(boxOf(reading, index)) > 1;
}

/** Where the part under a label in bold ends: at the next such label of its box, or with the box. */
function boldSection(reading: Reading, index: number): number {
  const { lines, boxes } = reading;
  const { box } = lines[index]!;
  let to = index + 1;
  while (to < boxes[box]!.to && !(lines[to]!.box === box && isBoldLabel(reading, to))) to++;
  return to;
}
