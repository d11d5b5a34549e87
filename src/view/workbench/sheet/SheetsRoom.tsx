import type { KeptSheet } from '../../../keep/schema';
import { sheetRoomTexts as texts } from '../../../text/catalogue/sheet-room';
import { shown } from '../../shown';
import { useFocusKept } from '../focus-kept';
import { TroubleNote } from '../TroubleNote';
import { SheetDesk } from './SheetDesk';
import type { SheetsActions, SheetsState } from './state';

/** Adverts that somebody goes to see: their sheets, and the one in front. */
export function SheetsRoom({ state, actions }: { state: SheetsState; actions: SheetsActions }) {
  const { sheets, chosen, removed, trouble, isPrivate } = state;
  const { part, pressed } = useFocusKept();
  const sheet = sheets?.find(({ about }) => about === chosen);
  return (
    <>
      <h1 class="screen-only">{texts.heading}</h1>
      <p class="intro screen-only">{texts.intro}</p>
      {isPrivate && (
        <p class="trouble" data-part="private">
          {texts.private}
        </p>
      )}
      <TroubleNote trouble={trouble} />
      {!isPrivate && (
        <section class="room-part screen-only" aria-labelledby="sheets" ref={part}>
          <h2 id="sheets" tabIndex={-1}>
            {texts.list}
          </h2>
          {sheets === null && <p>{texts.loading}</p>}
          {sheets?.length === 0 && <p data-part="empty">{texts.empty}</p>}
          <ul class="shelf">
            {sheets?.map((each) => (
              <SheetRow
                key={each.about}
                sheet={each}
                chosen={each.about === chosen}
                onChoose={() => actions.choose(each.about)}
                onRemove={() => {
                  pressed();
                  actions.remove(each.about);
                }}
              />
            ))}
          </ul>
          <div role="status" class="removed">
            {removed && (
              <p>
                {texts.removed(shown(removed.listing.title, 80))}{' '}
                <button
                  type="button"
                  class="button plain"
                  data-part="undo-sheet"
                  onClick={() => {
                    pressed();
                    actions.undoRemove();
                  }}
                >
                  {texts.undo}
                </button>
              </p>
            )}
          </div>
        </section>
      )}
      {sheet && <SheetDesk key={sheet.about} state={state} actions={actions} />}
      {!sheet && sheets !== null && sheets.length > 0 && (
        <p class="room-part soft">{chosen === null ? texts.choose : texts.gone}</p>
      )}
    </>
  );
}

interface RowProps {
  sheet: KeptSheet;
  chosen: boolean;
  onChoose: () => void;
  onRemove: () => void;
}

function SheetRow({ sheet: { about, madeAt, listing }, chosen, onChoose, onRemove }: RowProps) {
  const title = shown(listing.title, 120);
  return (
    <li class="draft-row" data-sheet={about}>
      <button type="button" class="draft-name" dir="auto" aria-current={chosen ? 'true' : undefined} onClick={onChoose}>
        {title}
      </button>
      <span class="soft">{texts.made(madeAt.slice(0, 10))}</span>
      <button type="button" class="button plain" data-part="remove-sheet" onClick={onRemove}>
        {texts.remove}
        <span class="unseen"> {title}</span>
      </button>
    </li>
  );
}
