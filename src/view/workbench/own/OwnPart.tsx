import type { EntryChosen } from '../../../session/own/editable';
import { changesTold } from '../../../text/catalogue/changes-told';
import { ownTexts as texts } from '../../../text/catalogue/own';
import { shown } from '../../shown';
import { TroubleNote } from '../TroubleNote';
import { EntryForm } from './EntryForm';
import { OwnChanges } from './OwnChanges';
import type { OwnActions, OwnState } from './state';

/** What a user corrects of one pack for themselves: find an entry, change a field, see all of it, propose it. */
export function OwnPart({ state, actions }: { state: OwnState; actions: OwnActions }) {
  const { told, chosen, sought, trouble } = state;
  const isChosen = (one: EntryChosen) => one.part === chosen?.part && one.entry === chosen.entry;
  // Also where it is called otherwise by now, so that what was sought finds it no more.
  const entry = [...(told?.found ?? []), told?.chosen].find((one) => one && isChosen(one));
  return (
    <div data-part="own">
      <p>{texts.intro}</p>
      <TroubleNote trouble={trouble} />
      {told !== null && told.cameBack > 0 && <p data-part="own-came-back">{texts.cameBack(told.cameBack)}</p>}
      {entry ? (
        <EntryForm entry={entry} outcome={state.field} actions={actions} />
      ) : (
        <>
          <label class="field" for="own-sought">
            {texts.search}
          </label>
          <input
            spellcheck={false}
            id="own-sought"
            type="text"
            autocomplete="off"
            data-part="own-sought"
            value={sought}
            onInput={(event) => actions.seek(event.currentTarget.value)}
          />
          <div role="status">
            {told && sought.trim() !== '' && told.found.length === 0 && <p>{texts.nothing}</p>}
            {told && told.more > 0 && <p>{texts.more(told.more)}</p>}
          </div>
          <ul class="found">
            {told?.found.map((each) => (
              <li key={`${each.part} ${each.entry}`}>
                <button type="button" class="button plain" data-part="own-entry" onClick={() => actions.choose(each)}>
                  {texts.edit(changesTold.parts[each.part] ?? each.part, shown(each.name, 120))}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      {told && told.changes.length > 0 && <OwnChanges told={told} state={state} actions={actions} />}
    </div>
  );
}
