import { useState } from 'preact/hooks';
import type { OwnTold } from '../../../session/own/editable';
import { changesTold } from '../../../text/catalogue/changes-told';
import { ownTexts as texts } from '../../../text/catalogue/own';
import { shown } from '../../shown';
import { fieldWords } from '../packs/OfferChanges';
import type { OwnActions, OwnState } from './state';

interface Props {
  told: OwnTold;
  state: OwnState;
  actions: OwnActions;
}

/** All that the user has corrected of a pack, each to be taken back, and the way to the keeper. */
export function OwnChanges({ told: { changes, clashing }, state, actions }: Props) {
  return (
    <>
      <h4>{texts.yours}</h4>
      {clashing > 0 && <p class="trouble">{texts.clashing(clashing)}</p>}
      <ul class="changes" data-part="own-changes">
        {changes.map(({ slots, told: { part, entry, name, fields } }) => {
          const called = texts.edit(changesTold.parts[part] ?? part, shown(name, 120));
          return (
            <li key={`${part} ${entry}`}>
              {called}
              <ul>
                {fields.map((field) => (
                  <li key={field.field}>{fieldWords(field)}</li>
                ))}
              </ul>
              <button type="button" class="button plain" data-part="own-back" onClick={() => actions.takeBack(slots)}>
                {texts.takeBack}
                <span class="unseen">: {called}</span>
              </button>
            </li>
          );
        })}
      </ul>
      <ProposalForm proposal={state.proposal} actions={actions} />
    </>
  );
}

function ProposalForm({ proposal, actions }: { proposal: OwnState['proposal']; actions: OwnActions }) {
  const [name, setName] = useState('');
  const [note, setNote] = useState('');
  const words = texts.propose;
  return (
    <form
      data-part="own-propose"
      onSubmit={(event) => {
        event.preventDefault();
        actions.propose(name, note);
      }}
    >
      <h4>{words.heading}</h4>
      <label class="field" for="own-name">
        {words.name}
      </label>
      <input
        spellcheck={false}
        id="own-name"
        type="text"
        value={name}
        onInput={(event) => setName(event.currentTarget.value)}
      />
      <label class="field" for="own-note">
        {words.note}
      </label>
      <textarea
        spellcheck={false}
        id="own-note"
        rows={3}
        value={note}
        onInput={(event) => setNote(event.currentTarget.value)}
      />
      <button type="submit" class="button" data-part="own-make">
        {words.make}
      </button>
      {typeof proposal === 'string' && (
        <p role="alert" class="trouble">
          {words[proposal]}
        </p>
      )}
      {proposal !== null && typeof proposal === 'object' && (
        <div data-part="own-proposal">
          <p role="status">{words.made}</p>
          <label class="field" for="own-text">
            {words.text}
          </label>
          <textarea spellcheck={false} id="own-text" rows={6} readOnly value={proposal.text} />
          <button type="button" class="button plain" data-part="own-save" onClick={() => actions.save(proposal.text)}>
            {words.save}
          </button>
        </div>
      )}
    </form>
  );
}
