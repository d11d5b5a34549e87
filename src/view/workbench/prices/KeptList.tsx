import { moneyText } from '../../../audit/money-text';
import type { KeptObservation } from '../../../keep/schema';
import { priceRoomTexts } from '../../../text/catalogue/price-room';
import { priceTexts } from '../../../text/catalogue/prices';
import { SeenWhere } from '../../prices/SeenWhere';
import { useFocusKept } from '../focus-kept';
import type { PricesActions, PricesState } from './state';

const texts = priceRoomTexts.kept;
const MOST = 200;

/** One's own prices, the newest first: to take back, and to save as a table. */
export function KeptList({ state, actions }: { state: PricesState; actions: PricesActions }) {
  const { kept, models, removed } = state;
  const { part, pressed } = useFocusKept();
  if (!kept) return null;
  const labels = new Map(models?.map(({ ref, label }) => [ref, label]));
  const line = ({ model, kind, amount, currency, date }: KeptObservation) =>
    texts.line(labels.get(model) ?? model, priceTexts.kinds[kind], moneyText(amount, currency), date);
  return (
    <section class="room-part" aria-labelledby="price-kept" ref={part}>
      <h2 id="price-kept" tabIndex={-1}>
        {texts.heading}
      </h2>
      {removed && (
        <p class="removed" role="status">
          {texts.removed}{' '}
          <button
            type="button"
            class="button plain"
            data-part="undo-price"
            onClick={() => {
              pressed();
              actions.undoRemove();
            }}
          >
            {texts.undo}
          </button>
        </p>
      )}
      {kept.length === 0 ? (
        <p class="soft">{texts.none}</p>
      ) : (
        <>
          <ul class="shelf" data-part="price-kept">
            {kept.slice(0, MOST).map((one) => (
              <li key={one.id} class="price-kept" data-kind={one.kind}>
                <div class="price-line">
                  {line(one)}
                  <SeenWhere of={one} />
                </div>
                <button
                  type="button"
                  class="button plain"
                  aria-label={texts.removeLabel(line(one))}
                  onClick={() => {
                    pressed();
                    actions.remove(one.id);
                  }}
                >
                  {texts.remove}
                </button>
              </li>
            ))}
          </ul>
          {kept.length > MOST && <p class="soft">{texts.more(kept.length - MOST)}</p>}
          <button type="button" class="button plain" data-part="price-save" onClick={actions.save}>
            {texts.export}
          </button>
        </>
      )}
    </section>
  );
}
