import type { NumberLine } from '../../audit/enquiry';
import type { Batch, YearsOf } from '../../audit/number-place';
import { modelLabel, type Words } from '../../session/words';
import { timeLineTexts as texts } from '../../text/catalogue/time-line';
import { shown } from '../shown';
import { Disclosure } from './Disclosure';
import { YearsDrawing } from './YearsDrawing';

interface Props {
  line: NumberLine;
  serial: string;
  words: Words;
  /** Years of other kinds, to be told apart from those of the blocks. */
  years?: readonly YearsOf[];
  batches?: readonly Batch[];
}

/** A number's block among its neighbours, drawn over the years, and the same as a table. */
export function RunLine({ line, serial, words, years = [], batches = [] }: Props) {
  const own = line.runs.find(({ holds }) => holds);
  return (
    <section class="run-line" data-part="run-line">
      <h3>{texts.heading(line.maker && shown(line.maker, 80))}</h3>
      <YearsDrawing line={line} serial={serial} years={years} />
      {own && <p data-part="block">{texts.block(own.size, own.year)}</p>}
      {batches.map(({ model, size, date, source }) => (
        <p key={`${model} ${size} ${date}`} data-part="batch">
          {texts.batch(shown(model, 80), size, date)} {source !== null && <cite dir="auto">{shown(source, 160)}</cite>}
        </p>
      ))}
      <Disclosure label={texts.table} part="run-table">
        <RunLedger line={line} words={words} />
        {years.length > 0 && <YearLedger years={years} />}
      </Disclosure>
    </section>
  );
}

function RunLedger({ line, words }: Pick<Props, 'line' | 'words'>) {
  return (
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
  );
}

function YearLedger({ years }: { years: readonly YearsOf[] }) {
  return (
    <ul class="years-list" aria-label={texts.yearsCaption}>
      {years.map(({ kind, from, to, source }) => (
        <li key={`${kind} ${from}`} data-years={kind}>
          {texts.kinds[kind](texts.span(from, to ?? from, to === null))}
          {source !== null && (
            <>
              {' '}
              <cite dir="auto">{shown(source, 160)}</cite>
            </>
          )}
        </li>
      ))}
    </ul>
  );
}
