import { RATE_FIELDS, type RateField } from '../../../price/written-rate';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { useFocusKept } from '../focus-kept';
import type { RatesActions, RatesState } from './rates';

const texts = priceRoomTexts.rates;

/** Exchange rates that the user types in, for currencies of which the packs know none. */
export function RatesPart({ state, actions }: { state: RatesState; actions: RatesActions }) {
  const { kept, problems, saved, removed } = state;
  const { part, pressed } = useFocusKept();
  return (
    <section class="room-part" aria-labelledby="price-rates" ref={part}>
      <h2 id="price-rates" tabIndex={-1}>
        {texts.heading}
      </h2>
      <p>{texts.intro}</p>
      <form
        class="price-form"
        onSubmit={(event) => {
          event.preventDefault();
          actions.keep();
        }}
      >
        {RATE_FIELDS.map((field) => (
          <Field key={field} field={field} state={state} actions={actions} />
        ))}
        <button type="submit" class="button" data-part="rate-keep">
          {texts.button}
        </button>
      </form>
      {problems.length > 0 && (
        <div class="trouble" role="alert" data-part="rate-problems">
          <ul>
            {problems.map(({ field, wrong }) => (
              <li key={field}>{texts.wrong(field, wrong)}</li>
            ))}
          </ul>
        </div>
      )}
      <p role="status" data-part="rate-saved">
        {saved ? texts.done : null}
      </p>
      {removed && (
        <p class="removed" role="status">
          {texts.removed}{' '}
          <button
            type="button"
            class="button plain"
            data-part="undo-rate"
            onClick={() => {
              pressed();
              actions.undoRemove();
            }}
          >
            {texts.undo}
          </button>
        </p>
      )}
      {kept && kept.length > 0 && (
        <ul class="shelf" data-part="rates-kept">
          {kept.map(({ id, from, to, rate, date }) => (
            <li key={id} class="price-kept">
              <div class="price-line">{texts.line(from, rate, to, date)}</div>
              <button
                type="button"
                class="button plain"
                aria-label={texts.removeLabel(texts.line(from, rate, to, date))}
                onClick={() => {
                  pressed();
                  actions.remove(id);
                }}
              >
                {texts.remove}
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

interface FieldProps {
  field: RateField;
  state: RatesState;
  actions: RatesActions;
}

function Field({ field, state: { form, problems }, actions }: FieldProps) {
  return (
    <div class="field">
      <label for={`rate-${field}`}>{texts.fields[field]}</label>
      <input
        spellcheck={false}
        id={`rate-${field}`}
        data-part={`rate-${field}`}
        value={form[field]}
        aria-describedby={`rate-${field}-hint`}
        aria-invalid={problems.some((one) => one.field === field)}
        onInput={(event) => actions.fill({ [field]: event.currentTarget.value })}
      />
      <span class="soft" id={`rate-${field}-hint`}>
        {texts.hints[field]}
      </span>
    </div>
  );
}
