import type { Trouble } from '../../../keep/trouble';
import type { RememberedTold } from '../../../session/remembered';
import { rememberedTexts as texts } from '../../../text/catalogue/remembered';
import { shown } from '../../shown';
import { useFocusKept } from '../focus-kept';
import { Labels } from '../Labels';
import { TroubleNote } from '../TroubleNote';

export interface RememberedState {
  packs: readonly RememberedTold[];
  /** The name of the one that was forgotten last and can still be remembered again. */
  forgotten: string | null;
  trouble: Trouble | null;
}

export const REMEMBERED_NONE: RememberedState = { packs: [], forgotten: null, trouble: null };

export interface RememberedActions {
  forget: (id: string) => void;
  recall: () => void;
}

/** What is remembered of packs that are gone; nothing is shown where there is none. */
export function Remembered({ state, actions }: { state: RememberedState; actions: RememberedActions }) {
  const { packs, forgotten, trouble } = state;
  const { part, pressed } = useFocusKept();
  if (packs.length === 0 && forgotten === null) return null;
  return (
    <section class="room-part" aria-labelledby="remembered" data-part="remembered" ref={part}>
      <h2 id="remembered" tabIndex={-1}>
        {texts.heading}
      </h2>
      <p>{texts.text}</p>
      {packs.length > 0 && <p>{texts.means}</p>}
      <TroubleNote trouble={trouble} />
      <ul class="shelf">
        {packs.map(({ id, name, edition, sealedBy }) => (
          <li key={id} class="pack" data-remembered={id}>
            <h3 class="pack-title">{shown(name, 160)}</h3>
            <Labels texts={[texts.upTo(edition), texts.sealedBy(sealedBy)]} />
            <div class="pack-actions">
              <button
                type="button"
                class="button plain"
                data-part="forget"
                onClick={() => {
                  pressed();
                  actions.forget(id);
                }}
              >
                {texts.forget}
                <span class="unseen">: {shown(name, 160)}</span>
              </button>
            </div>
          </li>
        ))}
      </ul>
      <div role="status" class="removed">
        {forgotten !== null && (
          <p>
            {texts.forgotten(shown(forgotten, 160))}{' '}
            <button
              type="button"
              class="button plain"
              data-part="undo-forget"
              onClick={() => {
                pressed();
                actions.recall();
              }}
            >
              {texts.undo}
            </button>
          </p>
        )}
      </div>
    </section>
  );
}
