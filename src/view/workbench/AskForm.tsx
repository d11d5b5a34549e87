import { type PackCard, titleOf } from '../../session/pack-card';
import { enquiryTexts as texts } from '../../text/catalogue/enquiry';
import { shown } from '../shown';
import type { EnquiryActions, EnquiryState } from './EnquiryRoom';

interface Props {
  state: EnquiryState;
  actions: EnquiryActions;
  tables: readonly PackCard[];
}

/** The number and the name on the machine, and which pack is asked where several have tables. */
export function AskForm({ state, actions, tables }: Props) {
  return (
    <form
      class="ask-form"
      data-part="ask-form"
      onSubmit={(event) => {
        event.preventDefault();
        actions.ask(state.serial, state.name);
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
      <div class="field">
        <label for="enquiry-name">{texts.name}</label>
        <input
          id="enquiry-name"
          type="text"
          autocomplete="off"
          spellcheck={false}
          maxLength={80}
          aria-describedby="enquiry-name-hint"
          value={state.name}
          onInput={(event) => actions.writeName(event.currentTarget.value)}
        />
        <p class="soft" id="enquiry-name-hint">
          {texts.nameHint}
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
