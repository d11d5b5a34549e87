import type { Answer } from '../../session/answer';
import { askedThings, chosenThing } from '../../session/asked-things';
import type { EnquiryAnswer } from '../../session/enquiry';
import { hasBegun, type MachineAsked } from '../../session/machine-asked';
import type { SeenValue } from '../../session/seen';
import { enquiryTexts as texts } from '../../text/catalogue/enquiry';
import { lazily } from '../lazily';
import { MachinePart } from './MachinePart';
import { NumberPart, NumberResult } from './NumberPart';
import { OwnPhotos, type PhotosActions, type PhotosState } from './OwnPhotos';
import type { PacksActions, PacksState } from './PacksRoom';
import { SaidPart } from './SaidPart';
import { ThingChoice } from './ThingChoice';
import { TroubleNote } from './TroubleNote';
import type { BenchTrouble } from './trouble';

/** Fetched with the first thing that is said of a machine. */
export const Outcome = lazily(async () => (await import('./MachineOutcome')).MachineOutcome);
export const Written = lazily(async () => (await import('./WrittenAnswer')).WrittenAnswer);

/** All that an answer is shown with: it is shown once that is there, so that nothing moves under anybody's hands. */
export const fetchOutcome = () => Promise.all([Outcome.fetched(), Written.fetched(), NumberResult.fetched()]);

export interface EnquiryState {
  /** What has been said of the machine. */
  asked: MachineAsked;
  /** What the engine made of that, or of what had been said before; null until it has answered. */
  told: { asked: MachineAsked; asOf: string; answer: Answer } | null;
  /** As they stand in the form. */
  serial: string;
  name: string;
  text: string;
  /** The id of the pack that is asked alone for a number, or null for all. */
  pack: string | null;
  /** What the tables say of a number. */
  numbered: { serial: string; answer: EnquiryAnswer } | null;
  trouble: BenchTrouble | null;
  /** The user's own photos of it. */
  photos: PhotosState;
  isPrivate: boolean;
}

export interface EnquiryActions {
  photos: PhotosActions;
  chooseThing: (pack: string | null) => void;
  saw: (attribute: string, value: SeenValue) => void;
  takeBack: (attribute: string) => void;
  startAgain: () => void;
  write: (serial: string) => void;
  writeName: (name: string) => void;
  writeText: (text: string) => void;
  /** What stands in the field of words counts from now on. */
  takeText: () => void;
  /** Begins a seller's draft with what was found. */
  toDraft: () => void;
  choosePack: (id: string | null) => void;
  ask: (serial: string, name: string) => void;
  /** Puts a text on the clipboard; answers whether it is there now. */
  copyText: (text: string) => Promise<boolean>;
  /** Hands a text to the browser as a file to save. */
  saveFile: (name: string, text: string, type: string) => void;
}

interface Props {
  state: EnquiryState;
  actions: EnquiryActions;
  packs: PacksState;
  packsActions: PacksActions;
}

/** A machine that somebody has before them, by what can be seen of it and by its number, in one answer. */
export function EnquiryRoom({ state, actions, packs, packsActions }: Props) {
  const { shelf } = packs;
  const { asked, told, numbered } = state;
  const things = shelf && askedThings(shelf);
  const thing = things && chosenThing(things, asked.thing);
  const begun = hasBegun(asked);
  return (
    <>
      <h1>{texts.heading}</h1>
      <p class="intro">{texts.intro}</p>
      <TroubleNote trouble={state.trouble ?? packs.trouble} />
      {!shelf && !packs.trouble && <p class="room-part">{texts.loading}</p>}
      {shelf && things && (
        <>
          <SaidPart state={state} actions={actions} hasThing={thing !== null} />
          <ThingChoice things={things} chosen={thing} onChoose={actions.chooseThing} />
          <div class="enquiry-desk" data-begun={String(begun)}>
            {thing && (
              <MachinePart
                key={thing.pack}
                answer={told?.answer ?? null}
                pending={told?.asked !== asked}
                begun={begun}
                first={thing.first}
                actions={actions}
              />
            )}
            {thing && begun && told?.answer.ok && (
              <Outcome
                answer={told.answer}
                own={state.photos.photos.map(({ data }) => data)}
                asOf={told.asOf}
                withWords={asked.text !== ''}
                copy={actions.copyText}
                save={actions.saveFile}
              />
            )}
            <div class="number-part">
              <NumberPart
                state={state}
                actions={actions}
                tables={shelf.filter(({ on, about }) => on && about && about.runs > 0)}
                packs={packs}
                packsActions={packsActions}
              />
              {thing && <OwnPhotos state={state.photos} actions={actions.photos} isPrivate={state.isPrivate} />}
            </div>
          </div>
          {thing && begun && told?.answer.ok && (
            <Written
              answer={told.answer}
              number={numbered?.answer ?? null}
              asOf={told.asOf}
              copy={actions.copyText}
              onDraft={actions.toDraft}
            />
          )}
        </>
      )}
    </>
  );
}
