import { priceRoomTexts } from '../../../text/catalogue/price-room';
import type { PricesActions, PricesState } from './state';

const texts = priceRoomTexts.ask;

/** A model, its condition and an asking price. */
export function PriceQuestion({ state, actions }: { state: PricesState; actions: PricesActions }) {
  const { model, grade, finish, asking, problem, looking, models } = state;
  const grades = models?.find(({ label }) => label.toLowerCase() === model.trim().toLowerCase())?.grades ?? [];
  return (
    <section class="room-part" aria-labelledby="price-ask">
      <h2 id="price-ask">{texts.heading}</h2>
      <form
        class="price-form"
        onSubmit={(event) => {
          event.preventDefault();
          actions.ask();
        }}
      >
        <label class="field">
          <span>{texts.model}</span>
          <input
            spellcheck={false}
            data-part="price-model"
            list="price-models"
            value={model}
            aria-describedby="price-model-hint"
            aria-invalid={problem === 'model'}
            onInput={(event) => actions.write({ model: event.currentTarget.value })}
          />
          <span class="soft" id="price-model-hint">
            {texts.modelHint}
          </span>
        </label>
        <label class="field">
          <span>{texts.grade}</span>
          <select
            data-part="price-grade"
            value={grade}
            onChange={(event) => actions.write({ grade: event.currentTarget.value })}
          >
            <option value="">{texts.anyGrade}</option>
            {grades.map(({ id, label }) => (
              <option key={id} value={id}>
                {label}
              </option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>{texts.finish}</span>
          <select
            data-part="price-finish"
            value={finish}
            onChange={({ currentTarget: { value } }) =>
              actions.write({ finish: value === 'refinished' ? 'refinished' : 'plain' })
            }
          >
            {(['plain', 'refinished'] as const).map((each) => (
              <option key={each} value={each}>
                {texts.finishes[each]}
              </option>
            ))}
          </select>
        </label>
        <label class="field">
          <span>{texts.asking}</span>
          <input
            spellcheck={false}
            data-part="price-asking"
            value={asking}
            aria-describedby="price-asking-hint"
            aria-invalid={problem === 'money' || problem === 'amount'}
            onInput={(event) => actions.write({ asking: event.currentTarget.value })}
          />
          <span class="soft" id="price-asking-hint">
            {texts.askingHint}
          </span>
        </label>
        {/* Beside the button, so that nothing below moves under a finger. */}
        <div class="price-ask">
          <button type="submit" class="button" data-part="price-ask">
            {texts.button}
          </button>{' '}
          <span class="soft" role="status">
            {looking ? texts.looking : null}
          </span>
        </div>
      </form>
      {problem && (
        <p class="trouble" role="alert" data-part="price-problem">
          {{ model: texts.noModel, money: texts.noMoney, amount: texts.noAmount }[problem]}
        </p>
      )}
    </section>
  );
}
