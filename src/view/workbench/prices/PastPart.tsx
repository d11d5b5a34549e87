import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { PastLines } from './PastLines';
import type { PastActions, PastState } from './past';

const texts = priceRoomTexts.past;

/** A price of the past, in today's money and in weeks of a wage. */
export function PastPart({ state, actions }: { state: PastState; actions: PastActions }) {
  const { amount, date, problem, told } = state;
  return (
    <section class="room-part" aria-labelledby="price-past">
      <h2 id="price-past">{texts.heading}</h2>
      <form
        class="price-form"
        onSubmit={(event) => {
          event.preventDefault();
          actions.ask();
        }}
      >
        <label class="field">
          <span>{texts.amount}</span>
          <input
            spellcheck={false}
            data-part="past-amount"
            value={amount}
            aria-describedby="past-amount-hint"
            aria-invalid={problem === 'money'}
            onInput={(event) => actions.write({ amount: event.currentTarget.value })}
          />
          <span class="soft" id="past-amount-hint">
            {texts.amountHint}
          </span>
        </label>
        <label class="field">
          <span>{texts.date}</span>
          <input
            spellcheck={false}
            data-part="past-date"
            value={date}
            aria-describedby="past-date-hint"
            aria-invalid={problem === 'date' || problem === 'future'}
            onInput={(event) => actions.write({ date: event.currentTarget.value })}
          />
          <span class="soft" id="past-date-hint">
            {texts.dateHint}
          </span>
        </label>
        <button type="submit" class="button" data-part="past-ask">
          {texts.button}
        </button>
      </form>
      {problem && (
        <p class="trouble" role="alert" data-part="past-problem">
          {texts.problems[problem]}
        </p>
      )}
      <div aria-live="polite">{told && <PastLines past={told} part="past-told" />}</div>
    </section>
  );
}
