import { type PackCard, titleOf } from '../../session/pack-card';
import { followTexts } from '../../text/catalogue/follow';
import { workbenchTexts } from '../../text/catalogue/workbench';
import { shown } from '../shown';
import { useFocusKept } from './focus-kept';
import { type FilesChosen, Installer, type InstallOutcome } from './Installer';
import { KeeperDoor } from './keeper/KeeperDoor';
import type { KeeperActions, KeeperState } from './keeper/state';
import { OwnDoor } from './own/OwnDoor';
import type { OwnActions, OwnState } from './own/state';
import { PackRow } from './PackRow';
import { Followed } from './packs/Followed';
import { FollowForm } from './packs/FollowForm';
import { Remembered, type RememberedActions, type RememberedState } from './packs/Remembered';
import type { FollowActions, FollowOutcome, FollowState } from './packs/state';
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

interface Props {
  state: PacksState;
  actions: PacksActions;
  following: FollowState;
  followActions: FollowActions;
  own: OwnState;
  ownActions: OwnActions;
  desk: KeeperState;
  keeperActions: KeeperActions;
  remembered: RememberedState;
  rememberedActions: RememberedActions;
}

/** The shelf: what is on it, what speaks, what is followed, and the ways onto it. */
export function PacksRoom(props: Props) {
  const { state, actions, following, followActions, own, ownActions, desk, keeperActions } = props;
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
  const isFollowed = (pack: PackCard) => following.subscriptions.some(({ id }) => id === pack.id);
  const followedOf = (pack: PackCard) => {
    const subscription = following.subscriptions.find(({ id }) => id === pack.id);
    const shared = {
      title: shown(titleOf(pack), 160),
      expires: pack.expires,
      state: following,
      actions: followActions,
    };
    return subscription && <Followed subscription={subscription} {...shared} />;
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
      <TroubleNote trouble={trouble ?? following.trouble} />
      <section class="room-part" aria-labelledby="shelf" ref={part}>
        <h2 id="shelf" tabIndex={-1}>
          {texts.listHeading}
        </h2>
        {shelf === null && !trouble && <p>{texts.loading}</p>}
        <ul class="shelf">
          {shelf?.map((pack) => (
            <PackRow
              key={pack.id}
              pack={pack}
              onSwitch={actions.switchPack}
              onRemove={remove}
              isFollowed={isFollowed(pack)}
            >
              {followedOf(pack)}
              {!pack.shipped && pack.about && !isPrivate && <OwnDoor pack={pack} state={own} actions={ownActions} />}
              {!pack.shipped && pack.about && !isPrivate && (
                <KeeperDoor pack={pack} state={desk} actions={keeperActions} />
              )}
            </PackRow>
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
        <div role="status" data-part="follow-outcome">
          {following.outcome && <p>{outcomeWords(following.outcome)}</p>}
        </div>
      </section>
      {!isPrivate && <FollowForm state={following} actions={followActions} />}
      <Installer outcome={outcome} onFiles={actions.install} onCancel={actions.cancelInstall} />
      {!isPrivate && <Remembered state={props.remembered} actions={props.rememberedActions} />}
    </>
  );
}

function outcomeWords(outcome: FollowOutcome): string {
  const texts = followTexts.outcome;
  switch (outcome.state) {
    case 'taken':
    case 'left':
      return texts[outcome.state](shown(outcome.title, 160), outcome.edition);
    case 'stopped':
      return texts.stopped(shown(outcome.title, 160));
    default:
      return texts[outcome.state];
  }
}
