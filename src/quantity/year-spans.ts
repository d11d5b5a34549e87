import type { Span } from '../text/span';
import { EARLIEST, LATEST, type YearCore, yearCores } from './year-cores';
import { isNoYear } from './year-exclusions';

/** A stretch of years as a folded text states it. */
export interface YearSpan extends Span {
  from: number;
  to: number;
  approximate: boolean;
}

const EARLY = 'early|fruhe[nrs]?|anfang|beginn|debut|beginning of|start of';
const MID = 'mid|middle|mitte|milieu|middle of';
const LATE = 'late|later|spate[nrs]?|ende|fin|end of';
const PART_OF = new RegExp(
  `(?<!\\p{L})(?:(${EARLY})|(${MID})|(${LATE}))(?:(?: to | ?[-/] ?| or | bis | a )(?:(?:${EARLY})|(${MID})|(${LATE})))?(?:-| |\\.)(?:the |der |den |des |les |dem |du )?'?$`,
  'u',
);
const PARTS = { early: [0, 3], mid: [4, 6], late: [7, 9] } as const;
const THIRDS = { early: [0, 33], mid: [34, 66], late: [67, 99] } as const;

/** "late 1920s": the part of the decade or century that the words before it leave. */
function narrowed(folded: string, core: YearCore): YearCore {
  if (core.isPlain || core.approximate) return core;
  const before = folded.slice(Math.max(0, core.start - 40), core.start);
  const match = PART_OF.exec(before);
  if (!match) return core;
  const first = match[1] ? 'early' : match[2] ? 'mid' : 'late';
  const last = match[5] ? 'late' : match[4] ? 'mid' : first;
  const parts = core.to - core.from > 9 ? THIRDS : PARTS;
  const start = core.start - (before.length - match.index);
  return { ...core, start, from: core.from + parts[first][0], to: core.from + parts[last][1] };
}

const ABOUT =
  /(?<!\p{L})(?:circa|ca|c|about|around|approx|approximately|roughly|um|etwa|ungefahr|rund|gegen|vers|environ|env)\.? ?(?:(?:the|das jahr|die|den|les|l'annee|early|mid|late) )?$/u;
const OR_SO = /^(?: ?-?ish(?!\p{L})| or so| or thereabouts| oder so| ?\?| ?\(\?\)| ?\+\/-)/u;

function withAbout(folded: string, core: YearCore): YearCore {
  const before = folded.slice(Math.max(0, core.start - 28), core.start);
  const about = ABOUT.exec(before);
  const after = OR_SO.test(folded.slice(core.end, core.end + 18));
  if (!about && !after) return core;
  return { ...core, start: about ? core.start - (before.length - about.index) : core.start, approximate: true };
}

const SHORT_END = /^ ?[-/] ?(?:(\d\d)|(?<! )(\d))(?![\d\p{L}]|[.,/-]\d| ?(?:mm|cm|kg|lbs?|€|£|\$|%|stitches|watts))/u;
const SHORT_DECADES = /^ ?[-/] ?([2-9]0)(?:'?s|er(?: jahren?)?)?(?![\d\p{L}])/u;

const DECADE_NEXT = /^ ?[-/] ?[2-9]0(?:'?s|er(?: jahren?)?)(?!\p{L})/u;

/** "1947-49", "annees 50-60": the end of a range written short. */
function withShortEnd(folded: string, core: YearCore): YearCore {
  const after = folded.slice(core.end, core.end + 24);
  // "1920/30s": the first is a decade because the second is.
  const isDecade = core.isPlain ? core.from % 10 === 0 && DECADE_NEXT.test(after) : core.to - core.from === 9;
  if (isDecade || !core.isPlain) {
    const match = isDecade ? SHORT_DECADES.exec(after) : null;
    const to = match ? Math.floor(core.from / 100) * 100 + Number(match[1]) + 9 : 0;
    return match && to > core.from ? { ...core, end: core.end + match[0].length, to, isPlain: false } : core;
  }
  const match = SHORT_END.exec(after);
  if (!match) return core;
  const scale = match[1] ? 100 : 10;
  const to = Math.floor(core.from / scale) * scale + Number(match[1] ?? match[2]);
  return to > core.from && to <= LATEST ? { ...core, end: core.end + match[0].length, to } : core;
}

const JOINS =
  /^(?: ?-{1,2} ?| ?\/ ?| (?:to|bis|until|till|through|thru|or|oder|ou|a|au|up to|jusqu'en) )(?:the |den |les |die )?$/u;
const JOINS_BETWEEN = /^ (?:and|und|et) (?:the |den |les |die )?$/u;
const BETWEEN = /(?:between|zwischen|entre)(?: the| den| les)? $/u;

function joinsRange(folded: string, first: YearCore, second: YearCore): boolean {
  if (second.to < first.to || second.from < first.from || second.start < first.end) return false;
  const between = folded.slice(first.end, second.start);
  if (JOINS.test(between)) return true;
  return JOINS_BETWEEN.test(between) && BETWEEN.test(folded.slice(Math.max(0, first.start - 16), first.start));
}

const UP_TO =
  /(?<!\p{L})(?:(before|pre|prior to|earlier than|vor|avant)|until|till|up to|bis|jusqu'en|no later than|not later than)[ -](?:the |den |les )?$/u;
const FROM_ON = /(?<!\p{L})(?:(after|post|nach|apres)|ab)[ -](?:the |den |les )?$/u;
const OR_LATER = /^ ?\+(?!\d)|^ (?:onwards?|and later|or later|und spater|oder spater|et apres|et plus)(?!\p{L})/u;

/** "before 1950", "1954 onwards": an end that is left open. */
function withOpenEnd(folded: string, span: YearSpan): YearSpan {
  const before = folded.slice(Math.max(0, span.start - 24), span.start);
  const startOf = (match: RegExpExecArray) => span.start - (before.length - match.index);
  const upTo = UP_TO.exec(before);
  if (upTo) return { ...span, start: startOf(upTo), from: EARLIEST, to: upTo[1] ? span.from - 1 : span.to };
  const fromOn = FROM_ON.exec(before);
  if (fromOn) return { ...span, start: startOf(fromOn), from: fromOn[1] ? span.to + 1 : span.from, to: LATEST };
  const later = OR_LATER.exec(folded.slice(span.end, span.end + 16));
  return later ? { ...span, end: span.end + later[0].length, to: LATEST } : span;
}

/** All stretches of years of a folded text, in order: parts of decades, ranges, open ends, "about". */
export function yearSpans(folded: string): YearSpan[] {
  const cores = yearCores(folded)
    .filter((core) => !isNoYear(folded, core))
    .map((core) => withShortEnd(folded, withAbout(folded, narrowed(folded, core))));
  const spans: YearSpan[] = [];
  for (let at = 0; at < cores.length; at++) {
    const first = cores[at]!;
    // "1930s/40s": the second was read already, as the end of the first.
    if (first.start < (spans.at(-1)?.end ?? 0)) continue;
    const second = cores[at + 1];
    const joined = second !== undefined && joinsRange(folded, first, second);
    if (joined) at++;
    const last = joined ? second : first;
    const approximate = first.approximate || last.approximate;
    spans.push(withOpenEnd(folded, { start: first.start, end: last.end, from: first.from, to: last.to, approximate }));
  }
  return spans.filter((span) => span.from <= span.to);
}
