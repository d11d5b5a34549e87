import { priceRoomTexts as texts } from '../../../text/catalogue/price-room';
import { TroubleNote } from '../TroubleNote';
import { BringTable } from './BringTable';
import { KeepForm } from './KeepForm';
import { KeptList } from './KeptList';
import { PriceOutcome } from './PriceOutcome';
import { PriceQuestion } from './PriceQuestion';
import type { PricesActions, PricesState } from './state';

/** What things go for, and the prices that one has seen oneself. */
export function PricesRoom({ state, actions }: { state: PricesState; actions: PricesActions }) {
  return (
    <>
      <h1>{texts.heading}</h1>
      <p class="intro">{texts.intro}</p>
      {state.isPrivate && <p class="soft">{texts.isPrivate}</p>}
      <TroubleNote trouble={state.trouble} />
      {state.models === null && !state.trouble ? (
        <p class="room-part" role="status">
          {texts.loading}
        </p>
      ) : (
        <>
          <PriceQuestion state={state} actions={actions} />
          <div aria-live="polite">
            {state.answer && (
              <PriceOutcome
                answer={state.answer}
                asking={state.askedFor}
                graded={state.askedGrade}
                onModel={actions.askFor}
              />
            )}
          </div>
          <KeepForm state={state} actions={actions} />
          <KeptList state={state} actions={actions} />
          <BringTable state={state} actions={actions} />
          <datalist id="price-models">
            {state.models?.map(({ ref, label }) => (
              <option key={ref} value={label} />
            ))}
          </datalist>
        </>
      )}
    </>
  );
}
