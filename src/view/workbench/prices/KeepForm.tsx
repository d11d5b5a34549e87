import type { ObservationField } from '../../../price/observation-fields';
import { priceFieldTexts } from '../../../text/catalogue/price-fields';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { Disclosure } from '../../panel/Disclosure';
import type { PricesActions, PricesState } from './state';

const texts = priceRoomTexts.keep;

const CHOICES: Partial<Record<ObservationField, readonly (keyof typeof texts.options)[]>> = {
  kind: ['asked', 'paid'],
  complete: ['yes', 'no'],
  finish: ['plain', 'refinished'],
  seller: ['private', 'trade'],
};
const FIRST: readonly ObservationField[] = ['model', 'kind', 'amount', 'currency', 'date'];
const MORE: readonly ObservationField[] = ['grade', 'complete', 'finish', 'seller', 'place', 'link', 'note'];
const HINTS: Partial<Record<ObservationField, string>> = { kind: texts.kindHint, date: texts.dateHint };

/** A price that somebody has seen, field by field. */
export function KeepForm({ state, actions }: { state: PricesState; actions: PricesActions }) {
  const { formProblems: problems } = state;
  const fields = (names: readonly ObservationField[]) =>
    names.map((field) => <Field key={field} field={field} state={state} actions={actions} />);
  return (
    <section class="room-part" aria-labelledby="price-keep">
      <h2 id="price-keep">{texts.heading}</h2>
      <form
        class="price-form"
        onSubmit={(event) => {
          event.preventDefault();
          actions.keep();
        }}
      >
        {fields(FIRST)}
        <Disclosure label={texts.optional} part="price-more">
          <div class="price-form">{fields(MORE)}</div>
        </Disclosure>
        <button type="submit" class="button" data-part="price-keep">
          {texts.button}
        </button>
      </form>
      {problems.length > 0 && (
        <div class="trouble" role="alert" data-part="keep-problems">
          <p>{texts.bad}</p>
          <ul>
            {problems.map(({ field, wrong }) => (
              <li key={field}>{priceFieldTexts.wrong(field, wrong)}</li>
            ))}
          </ul>
        </div>
      )}
      <p role="status" data-part="price-saved">
        {state.saved ? texts.done : null}
      </p>
    </section>
  );
}

function Field({ field, state, actions }: { field: ObservationField; state: PricesState; actions: PricesActions }) {
  const value = state.form[field];
  const hint = HINTS[field];
  const id = `keep-${field}`;
  const common = {
    ...{ id, value, 'data-part': id, 'aria-invalid': state.formProblems.some((one) => one.field === field) },
    ...(hint ? { 'aria-describedby': `${id}-hint` } : {}),
  };
  const choices = choicesOf(field, state);
  return (
    <div class="field">
      <label for={id}>{priceFieldTexts.fields[field]}</label>
      {choices ? (
        <select {...common} onChange={(event) => actions.fill({ [field]: event.currentTarget.value })}>
          <option value="">{FIRST.includes(field) ? texts.choose : texts.unsaid}</option>
          {choices.map(({ id: choice, label }) => (
            <option key={choice} value={choice}>
              {label}
            </option>
          ))}
        </select>
      ) : (
        <input
          spellcheck={false}
          {...common}
          list={field === 'model' ? 'price-models' : undefined}
          onInput={(event) => actions.fill({ [field]: event.currentTarget.value })}
        />
      )}
      {hint && (
        <span class="soft" id={`${id}-hint`}>
          {hint}
        </span>
      )}
    </div>
  );
}

function choicesOf(field: ObservationField, { models, form }: PricesState): { id: string; label: string }[] | null {
  if (field !== 'grade') return CHOICES[field]?.map((id) => ({ id, label: texts.options[id] })) ?? null;
  const grades = models?.find(({ label }) => label.toLowerCase() === form.model.trim().toLowerCase())?.grades;
  return grades && grades.length > 0 ? grades : null;
}
