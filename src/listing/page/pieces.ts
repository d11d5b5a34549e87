import { fold } from '../../text/fold';
import { CONTROL, LINK } from '../types';
import { isOnly, type Reading, runsOf } from './reading';
import { AWAY } from './zones';

/** A short text that stands by itself: a line, or a part of one between marks or in an element of its own. */
export interface Piece {
  text: string;
  folded: string;
  /** Names of its box, its element and the icon before it. */
  hint: string;
  /** What it is called for readers of screens, or on pointing at it: "Lieu"; "" where nothing. */
  label: string;
  line: number;
  linked: boolean;
  /** What stands before it in its line, folded. */
  before: string;
}

const LINE_MOST = 200;
const PIECE_MOST = 70;
const PARTING = /\s*[·|•›»]\s*|\s[–—]\s/;
const BARE = /^[\s,;:·|•–—-]+|[\s,;·|•–—-]+$/gu;

/** The pieces of the short lines of the advert itself, in document order. */
export function piecesOf(reading: Reading): Piece[] {
  const { lines, boxes, zones, cards } = reading;
  const found: Piece[] = [];
  for (const [index, line] of lines.entries()) {
    if (line.text.length > LINE_MOST || zones[index] === AWAY || cards.lines.has(index) || isOnly(line, CONTROL))
      continue;
    const boxHint = boxes[line.box]!.hint;
    let before = '';
    const runs = runsOf(line);
    // "Netherholme" and "(NB)" in elements of their own are one name.
    const isNamed = runs.length === 2 && /^\([A-Z]{2,3}\)$/.test(runs[1]!.text.trim());
    for (const { text, hint, flags } of isNamed ? [{ ...runs[0]!, text: line.text }] : runs) {
      for (const part of text.split(PARTING)) {
        const bare = part.replace(BARE, '');
        if (bare !== '' && bare.length <= PIECE_MOST) {
          const names = hint === boxHint ? hint : `${hint} ${boxHint}`;
          found.push({
            text: bare,
            folded: fold(bare).text,
            hint: names,
            label: /"([^"]+)"/.exec(names)?.[1] ?? '',
            line: index,
            linked: (flags & LINK) !== 0,
            before,
          });
        }
        before = fold(`${before} ${part}`).text.slice(-40);
      }
    }
    if (found.length > 1500) break;
  }
  return found;
}
