import type { PackCard } from '../../session/pack-card';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { shown } from '../shown';
import { useFocusKept } from './focus-kept';
import { type FilesChosen, Installer, type InstallOutcome } from './Installer';
import { PackRow } from './PackRow';
import { TroubleNote } from './TroubleNote';
import type { BenchTrouble } from './trouble';

const texts = workbenchTexts.shelf;

export interface PacksState {
  /** null until it has been read. */
  shelf: readonly PackCard[] | null;
  trouble: BenchTrouble | null;
  outcome: InstallOutcome;
  /** The title of the pack that was removed last and can still be put back. */
  removed: string | null;
  /** In a private window, which keeps nothing. */
  isPrivate: boolean;
}

export interface PacksActions {
  install: (files: FilesChosen) => void;
  cancelInstall: () => void;
  switchPack: (id: string, on: boolean) => void;
  remove: (id: string) => void;
  undoRemove: () => void;
}

/** The shelf: what is on it, what speaks, and the way onto it. */
export function PacksRoom({ state, actions }: { state: PacksState; actions: PacksActions }) {
  const { shelf, trouble, outcome, removed, isPrivate } = state;
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
      <section class="room-part" aria-labelledby="shelf" ref={part}>
        <h2 id="shelf" tabIndex={-1}>
          {texts.listHeading}
        </h2>
        {shelf === null && !trouble && <p>{texts.loading}</p>}
        <ul class="shelf">
          {shelf?.map((pack) => (
            <PackRow key={pack.id} pack={pack} onSwitch={actions.switchPack} onRemove={remove} />
          ))}
        </ul>
        <div role="status" class="removed">
          {removed !== null && (
            <p>
              {texts.removed(shown(removed, 160))}{' '}
              <button type="button" class="button plain" data-part="undo" onClick={undoRemove}>
                {texts.undo}
              </button>
            </p>
          )}
        </div>
      </section>
      <Installer outcome={outcome} onFiles={actions.install} onCancel={actions.cancelInstall} />
    </>
  );
}
