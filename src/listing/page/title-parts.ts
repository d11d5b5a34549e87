import { fold } from '../../text/fold';
import { LINK, type Line } from '../types';
import { runsOf } from './reading';
import { wordsOf } from './shared-words';

const TITLE_WORDS =
  /\b(?:title|titel|titre|headline|titolo|titulo|naam|name|nom|nombre|nome|namn|subject|onderwerp|betreff)(?!\w)/;
/** Names of people's boxes, and of the site's. */
const OTHER_TITLES =
  /\b(?:user|seller|author|profile|site|shop|store|brand|logo|nick|avatar|member|verkaufer|verkoper|vendeur)/;
/** Shorter texts stand anywhere. */
export const SAID_LEAST = 8;
/** Longest that is still a title, for blocks that are no heading. */
export const TITLE_MOST = 200;

/** A class of its box, or of all that it says, calls it the title. */
export function isNamedTitle(line: Line, hint: string): boolean {
  if (line.text.length > TITLE_MOST) return false;
  const [run, ...others] = runsOf(line);
  const names = others.length === 0 ? `${hint} ${run!.hint}` : hint;
  return TITLE_WORDS.test(names) && !OTHER_TITLES.test(names);
}

/** The first element of a line, where its class calls it the title and it is most of the line. */
export function namedPart(line: Line, hint: string): string | null {
  const [first, ...others] = runsOf(line);
  const text = first!.text.trim();
  const isNamed = others.length > 0 && !(first!.flags & LINK) && text.length >= line.text.length * 0.5;
  return isNamed && wordsOf(text).length >= 3 && isNamedTitle({ box: line.box, text }, `${hint} ${first!.hint}`)
    ? text
    : null;
}

/** A line that says a title of the head, and behind it a number in an element of its own: "Code: 20417". */
export function withoutNumber({ text, runs }: Line, told: readonly string[]): string | null {
  for (const { at } of runs?.slice(1) ?? []) {
    const before = text.slice(0, at).trim();
    const isTold = before.length >= SAID_LEAST && /\d/.test(text.slice(at));
    if (isTold && told.some((title) => fold(title).text === fold(before).text)) return before;
  }
  return null;
}
