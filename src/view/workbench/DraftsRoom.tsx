import type { KeptDraft } from '../../keep/schema';
import type { Draft } from '../../listing/types';
import type { Answer } from '../../session/answer';
import { type DraftField, draftName } from '../../session/drafts';
import type { Seen, SeenValue } from '../../session/seen';
import { draftRoomTexts as texts } from '../../text/catalogue/draft-room';
import { shown } from '../shown';
import { DraftEditor } from './DraftEditor';
import { useFocusKept } from './focus-kept';
import { TroubleNote } from './TroubleNote';
import type { BenchTrouble } from './trouble';

export interface DraftsState {
  /** null until they have been read. */
  drafts: readonly KeptDraft[] | null;
  /** The id of the draft that is worked on. */
  chosen: string | null;
  /** Counts the choices: whoever goes on writing under another id sits at the same desk. */
  sitting: number;
  /** What was seen of the thing that it offers. */
  seen: Seen;
  /** The last answer of the engine, and to which words and to what was seen. */
  answered: { draft: Draft; seen: Seen; answer: Answer } | null;
  /** Whether the draft's last words are kept by now. */
  kept: 'kept' | 'waiting' | 'not' | 'blank';
  copied: 'none' | 'copied' | 'refused';
  removed: KeptDraft | null;
  /** The name of the draft that another window has changed at the same time, until another one is chosen. */
  parted: string | null;
  trouble: BenchTrouble | null;
  /** A private window keeps nothing. */
  isPrivate: boolean;
}

export interface DraftsActions {
  create: () => void;
  choose: (id: string) => void;
  write: (field: DraftField, value: string) => void;
  saw: (attribute: string, value: SeenValue) => void;
  takeBack: (attribute: string) => void;
  copy: () => void;
  remove: (id: string) => void;
  undoRemove: () => void;
}

/** The seller's door: drafts, the one that is worked on, and what the packs say of it. */
export function DraftsRoom({ state, actions }: { state: DraftsState; actions: DraftsActions }) {
  const { drafts, chosen, sitting, removed, parted, trouble, isPrivate } = state;
  const draft = drafts?.find(({ id }) => id === chosen);
  const { part, pressed } = useFocusKept();
  const remove = (id: string) => {
    pressed();
    actions.remove(id);
  };
  const undoRemove = () => {
    pressed();
    actions.undoRemove();
  };
  return (
    <>
      <h1>{texts.heading}</h1>
      <p class="intro">{texts.intro}</p>
      {isPrivate && (
        <p class="trouble" data-part="private">
          {texts.private}
        </p>
      )}
      <TroubleNote trouble={trouble} />
      <section class="room-part" aria-labelledby="drafts" ref={part}>
        <h2 id="drafts" tabIndex={-1}>
          {texts.list}
        </h2>
        {drafts === null && <p>{texts.loading}</p>}
        {drafts?.length === 0 && <p data-part="empty">{texts.empty}</p>}
        <ul class="shelf">
          {drafts?.map((each) => (
            <DraftRow key={each.id} draft={each} chosen={each.id === chosen} actions={{ ...actions, remove }} />
          ))}
        </ul>
        <p class="below">
          <button type="button" class="button" data-part="new-draft" onClick={actions.create}>
            {texts.create}
          </button>
        </p>
        <div role="status" class="removed">
          {removed && (
            <p>
              {texts.removed(shown(draftName(removed.draft), 80))}{' '}
              <button type="button" class="button plain" data-part="undo-draft" onClick={undoRemove}>
                {texts.undo}
              </button>
            </p>
          )}
        </div>
      </section>
      <div role="status">
        {parted !== null && (
          <p class="trouble" data-part="parted">
            {texts.parted(shown(parted, 80))}
          </p>
        )}
      </div>
      {draft ? (
        <DraftEditor key={sitting} draft={draft.draft} state={state} actions={actions} />
      ) : (
        drafts && drafts.length > 0 && <p class="room-part soft">{texts.choose}</p>
      )}
    </>
  );
}

function DraftRow({ draft, chosen, actions }: { draft: KeptDraft; chosen: boolean; actions: DraftsActions }) {
  const name = shown(draftName(draft.draft), 80);
  return (
    <li class="draft-row" data-draft={draft.id}>
      <button
        type="button"
        class="draft-name"
        dir="auto"
        aria-current={chosen ? 'true' : undefined}
        onClick={() => actions.choose(draft.id)}
      >
        {name}
      </button>
      <span class="soft">
        {texts.changed(draft.changedAt.slice(0, 10))}
        {draft.partedFrom !== undefined && texts.ofItsOwn}
      </span>
      <button type="button" class="button plain" data-part="remove-draft" onClick={() => actions.remove(draft.id)}>
        {texts.remove}
        <span class="unseen"> {name}</span>
      </button>
    </li>
  );
}
