import type { Trouble } from '../../keep/trouble';
import type { ShelvedPack } from '../../session/packs';
import { workbenchTexts as texts } from '../../text/catalogue/workbench';
import { Installer, type InstallOutcome } from './Installer';
import { PackRow } from './PackRow';

/** All that the page with the packs shows. */
export interface BenchState {
  /** null until it has been read. */
  shelf: readonly ShelvedPack[] | null;
  trouble: Trouble | null;
  outcome: InstallOutcome;
  /** The title of the pack that was removed last and can still be put back. */
  removed: string | null;
}

export interface BenchActions {
  install: (files: File[]) => void;
  switchPack: (id: string, on: boolean) => void;
  remove: (id: string) => void;
  undoRemove: () => void;
}

export function Workbench({ state, actions }: { state: BenchState; actions: BenchActions }) {
  const { shelf, trouble, outcome, removed } = state;
  return (
    <div class="bench">
      <header class="plate">
        <p class="plate-name">{texts.product}</p>
      </header>
      <main>
        <h1>{texts.heading}</h1>
        <p class="intro">{texts.intro}</p>
        {trouble && (
          <p role="alert" class="trouble" data-part="trouble">
            {texts.troubles[trouble]}
          </p>
        )}
        <section class="room-part" aria-labelledby="shelf">
          <h2 id="shelf">{texts.shelf.heading}</h2>
          {shelf === null && !trouble && <p>{texts.shelf.loading}</p>}
          <ul class="shelf">
            {shelf?.map((pack) => (
              <PackRow key={pack.id} pack={pack} onSwitch={actions.switchPack} onRemove={actions.remove} />
            ))}
          </ul>
          <div role="status" class="removed">
            {removed !== null && (
              <p>
                {texts.shelf.removed(removed)}{' '}
                <button type="button" class="button plain" data-part="undo" onClick={actions.undoRemove}>
                  {texts.shelf.undo}
                </button>
              </p>
            )}
          </div>
        </section>
        <Installer outcome={outcome} onFiles={actions.install} />
      </main>
    </div>
  );
}
