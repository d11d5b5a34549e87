import { cutTo, evened } from '../tidy';
import { BOLD, CONTROL, LINK, type Line, RAISED, type Run, STRUCK } from '../types';
import type { Part, Stretch } from './lining';
import { hintOfBoth, namesOf } from './names';
import type { Sight } from './sight';

const LINE_MOST = 20_000;
/** White space may be most of what is written. */
const RAW_MOST = 4 * LINE_MOST;
/** Lines up to this length may be labels, values, places, days: what the page calls their parts is kept. */
const SHORT = 90;
const RUNS_MOST = 40;
/** A sign or code of a currency: only of such lines is it asked whether a style sheet strikes them out. */
const MONEY = /\p{Sc}|\b[A-Z]{3}\b|\bkr|z\u0142|,-/u;
/** Elements around a text that are asked for a line through it. */
const STRUCK_LEVELS = 3;
/** Stretches looked at between two pauses that may be made. */
const STRETCHES_OF_A_STEP = 50;

/**
 * The stretches of a walk as a person sees them: without what a style sheet hides, with the struck-out marked, broken
 * where a style sheet keeps the line breaks of the source. `origins[i]` is the stretch that line i came from.
 */
export function* seenLines(
  sight: Sight,
  stretches: readonly Stretch[],
): Generator<void, { lines: Line[]; origins: number[] }> {
  const lines: Line[] = [];
  const origins: number[] = [];
  const struck = new Map<Element, boolean>();
  for (let origin = 0; origin < stretches.length; origin++) {
    if (origin % STRETCHES_OF_A_STEP === STRETCHES_OF_A_STEP - 1) yield;
    const { parts, box } = stretches[origin]!;
    const seen = seenParts(sight, parts);
    if (seen.length === 0) continue;
    for (const piece of keepsBreaks(sight, seen) ? splitAtBreaks(seen) : [seen]) {
      const line = lineOf(sight, piece, box, struck);
      if (line.text === '') continue;
      lines.push(line);
      origins.push(origin);
    }
  }
  return { lines, origins };
}

/** The parts that are shown: mostly all of them. White space is as good as shown. */
function seenParts(sight: Sight, parts: Part[]): Part[] {
  for (const part of parts)
    if (!part.blank && !sight.shown(part.element))
      return parts.filter(({ blank, element }) => blank || sight.shown(element));
  return parts;
}

const keepsBreaks = (sight: Sight, parts: readonly Part[]): boolean =>
  parts.some(({ raw, blank }) => !blank && raw.includes('\n') && raw.trim().includes('\n')) &&
  /^pre|^break/.test(sight.style(parts[0]!.element, 'white-space'));

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

function lineOf(sight: Sight, parts: readonly Part[], box: number, struck: Map<Element, boolean>): Line {
  let text = '';
  const runs: Run[] = [];
  let length = 0;
  let hasDigit = false;
  for (const { raw } of parts) {
    length += raw.length;
    hasDigit ||= /\d/.test(raw);
  }
  const isMoney = hasDigit && parts.some(({ raw }) => MONEY.test(raw));
  const isNamed = hasDigit || length <= SHORT;
  for (const { raw, flags, element, names, icon } of parts) {
    let piece = evened(raw.length > RAW_MOST ? raw.slice(0, RAW_MOST) : raw);
    if (text === '' || text.endsWith(' ')) piece = piece.trimStart();
    if (piece === '') continue;
    text += between(text, piece, () => (flags & RAISED) !== 0 || (isMoney && isRaised(sight, element)));
    let own = flags & (STRUCK | LINK | CONTROL | BOLD);
    let hint = '';
    if (isNamed) {
      hint = hintOfBoth(icon, names ?? namesOf(sight, element));
      // Only of an amount's digits is it asked whether they are struck out.
      if (isMoney && /\d/.test(raw) && isStruck(sight, element, struck)) own |= STRUCK;
    }
    if (piece !== ' ') runs.push(hint === '' ? { at: text.length, flags: own } : { at: text.length, flags: own, hint });
    text += piece;
    if (text.length > LINE_MOST) break;
  }
  const line: Line = { text: cutTo(text.trimEnd(), LINE_MOST), box };
  if (runs.length > 1 || runs[0]?.flags || runs[0]?.hint)
    line.runs = runs.length > RUNS_MOST ? runs.slice(0, RUNS_MOST) : runs;
  return line;
}

/** What a reader sees between a text and the next piece of its line, where the source has nothing. */
function between(text: string, piece: string, isRaisedPiece: () => boolean): '' | '.' | ' ' {
  const last = text.charCodeAt(text.length - 1);
  if (last >= 48 && last <= 57) {
    // Cents that are set high behind the amount ("45" with "00" above) get their point.
    if (/^\d\d\s*$/.test(piece) && isRaisedPiece()) return '.';
    // "$200" and "2 bids" in elements side by side are two things; a code or word of a currency stands behind its amount.
    return /^(?:\d+\s*\p{L}|[A-Z]{3}(?![a-z])|kr|z\u0142|K\u010d|Ft)/u.test(piece) ? ' ' : '';
  }
  // So are a label and its value, which the style sheet sets apart: <span>Material</span><span>Iron</span>.
  return last > 96 && /\p{Ll}$/u.test(text.slice(-2)) && /^\p{Lu}\p{Ll}/u.test(piece) ? ' ' : '';
}

const isRaised = (sight: Sight, element: Element): boolean =>
  /^(?:super|text-top|top)$/.test(sight.style(element, 'vertical-align'));

/** A decoration isn't inherited but drawn through all that is inside: so the elements around count too. */
function isStruck(sight: Sight, element: Element, known: Map<Element, boolean>): boolean {
  let at: Node | null = element;
  for (let step = 0; step < STRUCK_LEVELS && at && sight.nodeType(at) === 1; step++, at = sight.parent(at)) {
    let own = known.get(at as Element);
    if (own === undefined) {
      own = sight.style(at as Element, 'text-decoration-line').includes('line-through');
      known.set(at as Element, own);
    }
    if (own) return true;
  }
  return false;
}
