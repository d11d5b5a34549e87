import { useRef } from 'preact/hooks';
import type { Observation } from '../../../price/observation';
import { OBSERVATION_FIELDS, type ObservationField, writtenOf } from '../../../price/observation-fields';
import type { RowRead } from '../../../price/table';
import { priceFieldTexts } from '../../../text/catalogue/price-fields';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import type { BringActions, Bringing } from './bringing';
import type { PricesState } from './state';
import { useStepFocus } from './step-focus';

const texts = priceRoomTexts.bring;
type Read = Extract<Bringing, { table: unknown }>;
type Models = PricesState['models'];

/** Where the focus goes on when what was pressed is gone. */
const NEXT: Partial<Record<Bringing['step'], string>> = {
  none: '[data-part="price-file"]',
  checking: '[data-part="price-cancel"]',
  bad: '[data-part="price-bad-rows"]',
  good: '[data-part="price-take"]',
  keeping: '[data-part="price-cancel"]',
  done: '[data-part="price-done"]',
};

/** A table of prices: which column is what, the first rows as they come out, then all rows or none. */
export function BringTable({ state, actions }: { state: PricesState; actions: BringActions }) {
  const { bringing } = state;
  const part = useRef<HTMLElement>(null);
  useStepFocus(part, bringing.step, NEXT);
  return (
    <section class="room-part" aria-labelledby="price-bring" ref={part}>
      <h2 id="price-bring">{texts.heading}</h2>
      <p>{texts.intro}</p>
      <label class="field price-file">
        <span>{texts.file}</span>
        <input
          type="file"
          accept=".csv,.tsv,.txt,text/csv"
          data-part="price-file"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            if (file) actions.choose(file);
            // The same file can be chosen again once it has been mended.
            currentTarget.value = '';
          }}
        />
      </label>
      <div aria-live="polite" data-part="price-bringing" data-step={bringing.step}>
        {bringing.step === 'refused' && <p class="trouble">{texts.refused(bringing.why)}</p>}
        {bringing.step === 'done' && (
          <p tabIndex={-1} data-part="price-done">
            {texts.done(bringing.count)}
          </p>
        )}
        {'table' in bringing && <Table bringing={bringing} models={state.models} actions={actions} />}
      </div>
    </section>
  );
}

function Table({ bringing, models, actions }: { bringing: Read; models: Models; actions: BringActions }) {
  const { step, table, guessedEncoding, done, bad, badCount } = bringing;
  const all = table.rows.length;
  return (
    <>
      {guessedEncoding && <p class="trouble">{texts.encoding}</p>}
      <h3>{texts.columns}</h3>
      <div class="price-form">
        {OBSERVATION_FIELDS.map((field) => (
          <Column key={field} field={field} bringing={bringing} actions={actions} />
        ))}
      </div>
      <h3>{texts.preview}</h3>
      <Preview rows={bringing.preview} models={models} />
      {step === 'checking' && (
        <p>
          <progress max={all} value={done} /> {texts.checking(done, all)}
        </p>
      )}
      {step === 'bad' && (
        <div class="trouble" tabIndex={-1} data-part="price-bad-rows">
          <p>{texts.bad(badCount)}</p>
          <ul>
            {bad.map(({ row, problems }) => (
              <li key={row}>
                {texts.badRow(row, problems.map(({ field, wrong }) => priceFieldTexts.wrong(field, wrong)).join('; '))}
              </li>
            ))}
          </ul>
          {badCount > bad.length && <p>{texts.more(badCount - bad.length)}</p>}
        </div>
      )}
      {(step === 'columns' || step === 'bad') && (
        <button type="button" class="button" data-part="price-check" onClick={actions.check}>
          {texts.check}
        </button>
      )}
      {step === 'good' && (
        <button type="button" class="button" data-part="price-take" onClick={actions.take}>
          {texts.take(all)}
        </button>
      )}{' '}
      {step === 'keeping' && (
        <p>
          <progress max={all} value={done} /> {texts.keeping(done, all)}
        </p>
      )}
      <button type="button" class="button plain" data-part="price-cancel" onClick={actions.cancel}>
        {texts.cancel}
      </button>
    </>
  );
}

function Column({ field, bringing, actions }: { field: ObservationField; bringing: Read; actions: BringActions }) {
  const { columns, rest, table } = bringing;
  const name = priceFieldTexts.fields[field];
  return (
    <div class="field">
      <label for={`column-${field}`}>{name}</label>
      <select
        id={`column-${field}`}
        value={columns[field] === null ? '' : String(columns[field])}
        onChange={({ currentTarget: { value } }) =>
          actions.map({ columns: { [field]: value === '' ? null : Number(value) } })
        }
      >
        <option value="">{texts.none}</option>
        {table.headings.map((heading, at) => (
          <option key={heading} value={String(at)}>
            {heading}
          </option>
        ))}
      </select>
      {columns[field] === null && (
        <input
          spellcheck={false}
          aria-label={`${name}, ${texts.forAll}`}
          placeholder={texts.forAll}
          data-part={`rest-${field}`}
          value={rest[field] ?? ''}
          onInput={(event) => actions.map({ rest: { [field]: event.currentTarget.value } })}
        />
      )}
    </div>
  );
}

function Preview({ rows, models }: { rows: readonly RowRead[]; models: Models }) {
  const said = (observation: Observation) => {
    const label = models?.find(({ ref }) => ref === observation.model)?.label;
    const written = writtenOf(observation);
    return Object.values({ ...written, model: label ?? written.model }).filter(Boolean);
  };
  return (
    <ul data-part="price-preview">
      {rows.map((row) => (
        <li key={row.row} data-ok={String(row.ok)}>
          {row.ok
            ? texts.badRow(row.row, said(row.observation).join(', '))
            : texts.badRow(
                row.row,
                row.problems.map(({ field, wrong }) => priceFieldTexts.wrong(field, wrong)).join('; '),
              )}
        </li>
      ))}
    </ul>
  );
}
