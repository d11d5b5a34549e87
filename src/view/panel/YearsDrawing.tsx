import type { NumberLine } from '../../audit/enquiry';
import type { YearsOf } from '../../audit/number-place';
import { timeLineTexts as texts } from '../../text/catalogue/time-line';
import { timeLineOf } from '../time-line';

/** CSS pixels: the height of a lane, its label's base line and its bar's place in it. */
const LANE = 42;
const LABEL = 17;
const BAR = 28;
const AXIS = 34;
/** Half the height of an open bar. */
const OPEN = 4;

/** What is drawn in one lane: a dated block, the gap in which the number stands, or years of another kind. */
type Lane =
  | { kind: 'run'; text: string; year: number; holds: boolean }
  | { kind: 'gap'; text: string }
  | { kind: 'years'; text: string; from: number; to: number | null };

interface Props {
  line: NumberLine;
  serial: string;
  years: readonly YearsOf[];
}

/** Blocks of numbers over the years, each in a lane of its own; below them the years that are of another kind. */
export function YearsDrawing({ line: { runs, gapAfter }, serial, years }: Props) {
  const dated = runs.flatMap(({ year }) => (year === null ? [] : [year]));
  const time =
    dated.length === 0 ? null : timeLineOf([...dated, ...years.flatMap(({ from, to }) => [from, to ?? from])]);
  if (!time) return <p class="soft">{texts.noYears}</p>;
  const lanes: Lane[] = runs.flatMap(({ first, last, year, holds }): Lane[] =>
    year === null ? [] : [{ kind: 'run', text: `${first} – ${last}`, year, holds }],
  );
  const gapAt = gapAfter === null ? null : runs.slice(0, gapAfter).filter(({ year }) => year !== null).length;
  if (gapAt !== null) lanes.splice(gapAt, 0, { kind: 'gap', text: texts.yours(serial) });
  for (const { kind, from, to } of years)
    lanes.push({ kind: 'years', text: texts.kinds[kind](texts.span(from, to ?? from, to === null)), from, to });
  const height = lanes.length * LANE;
  return (
    <>
      <svg
        class="years"
        role="img"
        aria-label={texts.label(time.from, time.to - 1, dated.length)}
        width="100%"
        height={height + AXIS}
      >
        {time.ticks.map(({ year, at }) => (
          <g key={year}>
            <line class="years-tick" x1={`${at}%`} x2={`${at}%`} y1="0" y2={height + 6} />
            <text class="years-text" x={`${at}%`} y={height + 26} text-anchor="middle">
              {year}
            </text>
          </g>
        ))}
        {lanes.map((lane, i) => (
          <LaneMark key={lane.text} lane={lane} top={i * LANE} at={time.at} end={time.to} />
        ))}
      </svg>
      <p class="soft">{gapAfter === null ? texts.legend : texts.legendGap}</p>
      {years.length > 0 && <p class="soft">{texts.legendYears}</p>}
      {dated.length < runs.length && <p class="soft">{texts.undated}</p>}
    </>
  );
}

interface MarkProps {
  lane: Lane;
  top: number;
  at: (year: number) => number;
  /** The year after the last one that is drawn. */
  end: number;
}

function LaneMark({ lane, top, at, end }: MarkProps) {
  if (lane.kind === 'gap')
    return (
      <>
        <Label text={lane.text} at={50} top={top} strong />
        <line class="years-gap" x1="2%" x2="98%" y1={top + BAR} y2={top + BAR} />
      </>
    );
  if (lane.kind === 'years') {
    const [from, to] = [at(lane.from), at(lane.to === null ? end : lane.to + 1)];
    return (
      <>
        <Label text={lane.text} at={(from + to) / 2} top={top} />
        <rect class="years-open" x={`${from}%`} width={`${to - from}%`} y={top + BAR - OPEN} height={2 * OPEN} />
      </>
    );
  }
  const [from, to] = [at(lane.year), at(lane.year + 1)];
  return (
    <>
      <Label text={lane.text} at={(from + to) / 2} top={top} strong={lane.holds} />
      <line
        class={lane.holds ? 'years-bar years-holds' : 'years-bar'}
        x1={`${from}%`}
        x2={`${to}%`}
        y1={top + BAR}
        y2={top + BAR}
      />
    </>
  );
}

/**
 * A lane's words near its bar: the point so many hundredths along the words stands as many hundredths along the drawing,
 * so that they never reach beyond an edge, however narrow the drawing is.
 */
function Label({ text, at, top, strong = false }: { text: string; at: number; top: number; strong?: boolean }) {
  return (
    <text
      class={strong ? 'years-text years-yours' : 'years-text'}
      x={`${at}%`}
      y={top + LABEL}
      style={{ transform: `translateX(${-at}%)` }}
    >
      {text}
    </text>
  );
}
