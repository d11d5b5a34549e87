import { workbenchTexts as texts } from '../../text/catalogue/workbench';
import { type DraftsActions, DraftsRoom, type DraftsState } from './DraftsRoom';
import { type EnquiryActions, EnquiryRoom, type EnquiryState } from './EnquiryRoom';
import { type PacksActions, PacksRoom, type PacksState } from './PacksRoom';
import { ROOMS, type Room } from './rooms';

/** All that the workbench shows. */
export interface BenchState {
  room: Room;
  packs: PacksState;
  drafts: DraftsState;
  enquiry: EnquiryState;
}

export interface BenchActions {
  packs: PacksActions;
  drafts: DraftsActions;
  enquiry: EnquiryActions;
}

/** The workbench: one room at a time, and the way to the others. */
export function Workbench({ state, actions }: { state: BenchState; actions: BenchActions }) {
  return (
    <div class="bench" data-room={state.room}>
      <header class="plate">
        <p class="plate-name">{texts.product}</p>
        <nav class="rooms" aria-label={texts.rooms.label}>
          {ROOMS.map((room) => (
            <a
              key={room}
              class="plate-link"
              href={`#${room}`}
              aria-current={room === state.room ? 'page' : undefined}
              data-part={`to-${room}`}
            >
              {texts.rooms[room]}
            </a>
          ))}
        </nav>
      </header>
      <main>{content(state, actions)}</main>
    </div>
  );
}

function content(state: BenchState, actions: BenchActions) {
  switch (state.room) {
    case 'drafts':
      return <DraftsRoom state={state.drafts} actions={actions.drafts} />;
    case 'enquiry':
      return (
        <EnquiryRoom state={state.enquiry} actions={actions.enquiry} packs={state.packs} packsActions={actions.packs} />
      );
    case 'packs':
      return <PacksRoom state={state.packs} actions={actions.packs} />;
  }
}
