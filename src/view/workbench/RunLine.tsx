import type { NumberLine } from '../../audit/enquiry';
import { modelLabel, type Words } from '../../session/words';
import { enquiryTexts } from '../../text/catalogue/enquiry';
import { Disclosure } from '../panel/Disclosure';
import { shown } from '../shown';
import { timeLineOf } from '../time-line';

const texts = enquiryTexts.line;

/** CSS pixels: the height of a block's lane, its label's base line and its bar's place in it. */
const LANE = 42;
const LABEL = 17;
const BAR = 28;
const AXIS = 34;

interface Props {
  line: NumberLine;
  serial: string;
  words: Words;
}

/** A number's block among its neighbours, drawn over the years, and the same as a table. */
export function RunLine({ line, serial, words }: Props) {
  return (
    <section class="run-line" data-part="run-line">
      <h3>{texts.heading(line.maker && shown(line.maker, 80))}</h3>
      <Drawing line={line} serial={serial} />
      <Disclosure label={texts.table} part="run-table">
        <table class="ledger">
          <caption>{texts.caption}</caption>
          <thead>
            <tr>
              {[texts.numbers, texts.year, texts.model].map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {line.runs.map((run) => (
              <tr key={`${run.entry} ${run.last}`} data-holds={String(run.holds)}>
                <th scope="row">
                  {`${run.first} – ${run.last}`}
                  {run.holds && <b> {texts.holds}</b>}
                </th>
                <td>{run.year ?? texts.unknown}</td>
                <td>
                  {shown(run.models.map((ref) => modelLabel(words, ref)).join(', '))}
                  {run.place !== null && <span class="origin"> {texts.madeIn(shown(run.place, 120))}</span>}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Disclosure>
    </section>
  );
}

/** What is drawn in one lane: a dated block, or the gap in which the number stands. */
type Lane = { text: string; year: number; holds: boolean } | { text: string; year: null };

function Drawing({ line: { runs, gapAfter }, serial }: Omit<Props, 'words'>) {
  const dated = runs.flatMap(({ year }) => (year === null ? [] : [year]));
  const time = timeLineOf(dated);
  if (!time) return <p class="soft">{texts.noYears}</p>;
  const lanes = runs.flatMap(({ first, last, year, holds }): Lane[] =>
    year === null ? [] : [{ text: `${first} – ${last}`, year, holds }],
  );
  const gapAt = gapAfter === null ? null : runs.slice(0, gapAfter).filter(({ year }) => year !== null).length;
  if (gapAt !== null) lanes.splice(gapAt, 0, { text: texts.yours(serial), year: null });
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
          <LaneMark key={lane.text} lane={lane} top={i * LANE} at={time.at} />
        ))}
      </svg>
      <p class="soft">{gapAfter === null ? texts.legend : texts.legendGap}</p>
      {dated.length < runs.length && <p class="soft">{texts.undated}</p>}
    </>
  );
}

function LaneMark({ lane, top, at }: { lane: Lane; top: number; at: (year: number) => number }) {
  if (lane.year === null)
    return (
      <>
        <text class="years-text years-yours" x="50%" y={top + LABEL} text-anchor="middle">
          {lane.text}
        </text>
        <line class="years-gap" x1="2%" x2="98%" y1={top + BAR} y2={top + BAR} />
      </>
    );
  const [start, end] = [at(lane.year), at(lane.year + 1)];
  const label = labelPlace(start, end);
  return (
    <>
      <text
        class={lane.holds ? 'years-text years-yours' : 'years-text'}
        x={`${label.at}%`}
        y={top + LABEL}
        text-anchor={label.anchor}
      >
        {lane.text}
      </text>
      <line
        class={lane.holds ? 'years-bar years-holds' : 'years-bar'}
        x1={`${start}%`}
        x2={`${end}%`}
        y1={top + BAR}
        y2={top + BAR}
      />
    </>
  );
}

/** A long pair of numbers near an edge is written inwards, so that it is never cut off. */
function labelPlace(start: number, end: number): { at: number; anchor: 'start' | 'middle' | 'end' } {
  const middle = (start + end) / 2;
  if (middle < 40) return { at: start, anchor: 'start' };
  return middle > 60 ? { at: end, anchor: 'end' } : { at: middle, anchor: 'middle' };
}
