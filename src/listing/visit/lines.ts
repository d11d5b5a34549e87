import { cutTo, tidy } from '../tidy';
import { BOLD, CONTROL, LINK, type Line, RAISED, type Run, STRUCK } from '../types';
import { hintOf, namesOf } from './names';
import type { Sight } from './sight';
import type { Part, Stretch } from './walk';

const LINE_MOST = 20_000;
/** White space may be most of what is written. */
const RAW_MOST = 4 * LINE_MOST;
/** Lines up to this length may be labels, values, places, days: what the page calls their parts is kept. */
const SHORT = 90;
/** A sign or code of a currency: only of such lines is it asked whether a style sheet strikes them out. */
const MONEY = /\p{Sc}|\b[A-Z]{3}\b|\bkr|z\u0142|,-/u;

/**
 * The stretches of a walk as a person sees them: without what a style sheet hides, with the struck-out marked, broken
 * where a style sheet keeps the line breaks of the source. `origins[i]` is the stretch that line i came from.
 */
export function seenLines(sight: Sight, stretches: Stretch[]): { lines: Line[]; origins: number[] } {
  const lines: Line[] = [];
  const origins: number[] = [];
  for (const [origin, { parts, box }] of stretches.entries()) {
    const seen = parts.filter(({ element, raw }) => !/\S/.test(raw) || sight.shown(element));
    const breaks =
      seen.some(({ raw }) => raw.trim().includes('\n')) &&
      /^pre|^break/.test(sight.style(seen[0]!.element, 'white-space'));
    for (const piece of breaks ? splitAtBreaks(seen) : [seen]) {
      const line = lineOf(sight, piece, box);
      if (line.text === '') continue;
      lines.push(line);
      origins.push(origin);
    }
  }
  return { lines, origins };
}

function splitAtBreaks(parts: Part[]): Part[][] {
  const pieces: Part[][] = [[]];
  for (const part of parts) {
    for (const [index, raw] of part.raw.split('\n').entries()) {
      if (index > 0) pieces.push([]);
      pieces.at(-1)!.push({ ...part, raw });
    }
  }
  return pieces;
}

function lineOf(sight: Sight, parts: Part[], box: number): Line {
  let text = '';
  const runs: Run[] = [];
  const hasDigit = parts.some(({ raw }) => /\d/.test(raw));
  const isMoney = hasDigit && parts.some(({ raw }) => MONEY.test(raw));
  const isShort = parts.reduce((sum, { raw }) => sum + raw.length, 0) <= SHORT;
  for (const { raw, flags, element, icon } of parts) {
    let piece = tidy(`.${raw.length > RAW_MOST ? raw.slice(0, RAW_MOST) : raw}.`).slice(1, -1);
    if (text === '' || text.endsWith(' ')) piece = piece.trimStart();
    if (piece === '') continue;
    // Cents that are set high behind the amount ("45" with "00" above) get their point.
    if (/^\d\d\s*$/.test(piece) && /\d$/.test(text) && (flags & RAISED || (isMoney && isRaised(sight, element))))
      text += '.';
    // "$200" and "2 bids" in elements side by side are two things.
    else if (/^\d+\s*\p{L}/u.test(piece) && /\d$/.test(text)) text += ' ';
    // A code or word of a currency behind its amount.
    else if (/^(?:[A-Z]{3}(?![a-z])|kr|z\u0142|K\u010d|Ft)/.test(piece) && /\d$/.test(text)) text += ' ';
    // So are a label and its value, which the style sheet sets apart: <span>Material</span><span>Iron</span>.
    else if (/\p{Ll}$/u.test(text) && /^\p{Lu}\p{Ll}/u.test(piece)) text += ' ';
    let own = flags & (STRUCK | LINK | CONTROL | BOLD);
    let hint = '';
    if (hasDigit || isShort) {
      hint = hintOf(icon, sight.hasAttributes(element) ? namesOf(sight, element) : '');
      if (isMoney && isStruck(sight, element)) own |= STRUCK;
    }
    if (piece !== ' ') runs.push({ at: text.length, flags: own, ...(hint ? { hint } : {}) });
    text += piece;
    if (text.length > LINE_MOST) break;
  }
  const line: Line = { text: cutTo(text.trimEnd(), LINE_MOST), box };
  if (runs.length > 1 || runs[0]?.flags || runs[0]?.hint) line.runs = runs.slice(0, 40);
  return line;
}

const isRaised = (sight: Sight, element: Element): boolean =>
  /^(?:super|text-top|top)$/.test(sight.style(element, 'vertical-align'));

/** A decoration isn't inherited but drawn through all that is inside: so the elements around count too. */
function isStruck(sight: Sight, element: Element): boolean {
  let at: Node | null = element;
  for (let step = 0; step < 3 && at && sight.nodeType(at) === 1; step++, at = sight.parent(at)) {
    if (sight.style(at as Element, 'text-decoration-line').includes('line-through')) return true;
  }
  return false;
}
