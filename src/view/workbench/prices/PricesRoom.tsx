import { useEffect, useRef } from 'preact/hooks';
import { priceRoomTexts as texts } from '../../../text/catalogue/price-room';
import { lazily } from '../../lazily';
import { TroubleNote } from '../TroubleNote';
import { KeepForm } from './KeepForm';
import { KeptList } from './KeptList';
import { PastPart } from './PastPart';
import { PriceOutcome } from './PriceOutcome';
import { PriceQuestion } from './PriceQuestion';
import { RatesPart } from './RatesPart';
import type { PricesActions, PricesState } from './state';

const BringTable = lazily(async () => (await import('./BringTable')).BringTable);

/** What things go for, and the prices that one has seen oneself. */
export function PricesRoom({ state, actions }: { state: PricesState; actions: PricesActions }) {
  const answered = useAnswerFocus(state.answer?.model ?? null);
  const typeRate = () => {
    actions.wantRate();
    document.getElementById('rate-rate')?.focus();
  };
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
          <div aria-live="polite" ref={answered}>
            {state.answer && (
              <PriceOutcome
                answer={state.answer}
                asking={state.askedFor}
                graded={state.askedGrade}
                onModel={actions.askFor}
                onRate={typeRate}
                robust={state.robust}
                onHold={actions.hold}
              />
            )}
          </div>
          <KeepForm state={state} actions={actions} />
          <KeptList state={state} actions={actions} />
          <BringTable state={state} actions={actions} />
          <PastPart state={state.past} actions={actions.past} />
          <RatesPart state={state.rates} actions={actions.rates} />
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

/** Another model that was asked for by its button takes the button away: the focus goes on at the heading of its answer. */
function useAnswerFocus(model: string | null) {
  const part = useRef<HTMLDivElement>(null);
  const before = useRef(model);
  useEffect(() => {
    if (before.current === model) return;
    before.current = model;
    if (document.activeElement === document.body) part.current?.querySelector('h2')?.focus();
  });
  return part;
}
