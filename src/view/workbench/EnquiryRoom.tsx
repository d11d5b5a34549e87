import type { EnquiryAnswer } from '../../session/enquiry';
import { type PackCard, titleOf } from '../../session/pack-card';
import { enquiryTexts as texts } from '../../text/catalogue/enquiry';
import { Disclosure } from '../panel/Disclosure';
import { shown } from '../shown';
import { EnquiryResult } from './EnquiryResult';
import { Installer } from './Installer';
import type { PacksActions, PacksState } from './PacksRoom';
import { TroubleNote } from './TroubleNote';
import type { BenchTrouble } from './trouble';

export interface EnquiryState {
  serial: string;
  /** The id of the pack that is asked alone, or null for all. */
  pack: string | null;
  answered: { serial: string; answer: EnquiryAnswer } | null;
  trouble: BenchTrouble | null;
}

export interface EnquiryActions {
  write: (serial: string) => void;
  choosePack: (id: string | null) => void;
  ask: (serial: string) => void;
}

interface Props {
  state: EnquiryState;
  actions: EnquiryActions;
  packs: PacksState;
  packsActions: PacksActions;
}

/** A machine's own number, held against the tables: for whoever asks "is mine genuine?". */
export function EnquiryRoom({ state, actions, packs, packsActions }: Props) {
  const tables = packs.shelf?.filter(({ on, about }) => on && about && about.runs > 0);
  const installer = (
    <Installer outcome={packs.outcome} onFiles={packsActions.install} onCancel={packsActions.cancelInstall} />
  );
  return (
    <>
      <h1>{texts.heading}</h1>
      <p class="intro">{texts.intro}</p>
      <TroubleNote trouble={state.trouble ?? packs.trouble} />
      {!tables && !packs.trouble && <p class="room-part">{texts.loading}</p>}
      {tables?.length === 0 && (
        <>
          <p class="room-part" data-part="no-tables">
            {texts.noTables}
          </p>
          {installer}
        </>
      )}
      {tables && tables.length > 0 && (
        <>
          <AskForm state={state} actions={actions} tables={tables} />
          {state.answered ? (
            <EnquiryResult {...state.answered} onTry={actions.ask} />
          ) : (
            <p class="room-part soft">{texts.nothingAsked}</p>
          )}
          <div class="room-part">
            <Disclosure label={texts.another} part="another-pack">
              {installer}
            </Disclosure>
          </div>
        </>
      )}
    </>
  );
}

function AskForm({ state, actions, tables }: Pick<Props, 'state' | 'actions'> & { tables: readonly PackCard[] }) {
  return (
    <form
      class="ask-form"
      data-part="ask-form"
      onSubmit={(event) => {
        event.preventDefault();
        actions.ask(state.serial);
      }}
    >
      {tables.length > 1 && (
        <div class="field">
          <label for="enquiry-pack">{texts.pack}</label>
          <select
            id="enquiry-pack"
            value={state.pack ?? ''}
            onChange={(event) => actions.choosePack(event.currentTarget.value || null)}
          >
            <option value="">{texts.allPacks}</option>
            {tables.map((card) => (
              <option key={card.id} value={card.id}>
                {shown(titleOf(card), 120)}
              </option>
            ))}
          </select>
        </div>
      )}
      <div class="field">
        <label for="enquiry-serial">{texts.serial}</label>
        <input
          id="enquiry-serial"
          type="text"
          autocomplete="off"
          spellcheck={false}
          maxLength={60}
          aria-describedby="enquiry-hint"
          value={state.serial}
          onInput={(event) => actions.write(event.currentTarget.value)}
        />
        <p class="soft" id="enquiry-hint">
          {texts.serialHint}
        </p>
      </div>
      <p class="below">
        <button type="submit" class="button" data-part="ask">
          {texts.ask}
        </button>
      </p>
    </form>
  );
}
