import { useState } from 'preact/hooks';
import { keeperTexts as texts } from '../../../text/catalogue/keeper';
import { shown } from '../../shown';
import { IssueList } from '../IssueList';
import { TroubleNote } from '../TroubleNote';
import { ProposedRow } from './ProposedRow';
import type { KeeperActions, KeeperState } from './state';

interface Props {
  state: KeeperState;
  actions: KeeperActions;
}

/** A keeper's desk for one pack. */
export function KeeperPart({ state, actions }: Props) {
  const { told, trouble } = state;
  return (
    <div data-part="keeper">
      <p>{texts.intro}</p>
      <TroubleNote trouble={trouble} />
      <input
        id="proposal-files"
        class="unseen file"
        type="file"
        multiple
        data-part="proposal-files"
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])];
          event.currentTarget.value = '';
          actions.bring(files);
        }}
      />
      <label class="button plain" for="proposal-files">
        {texts.choose}
      </label>
      {told && (
        <>
          <h4>{texts.proposals(told.proposals.length)}</h4>
          <ul>
            {told.proposals.map(({ author, note, base }, at) => (
              <li key={`${at} ${author}`}>
                {texts.by(shown(author, 120), base)}
                {note !== '' && <p>{shown(note, 600)}</p>}
              </li>
            ))}
          </ul>
          {told.strangers > 0 && <p class="trouble">{texts.strangers(told.strangers)}</p>}
          {told.proposals.length + told.strangers > 0 && (
            <button type="button" class="button plain" data-part="desk-clear" onClick={actions.clear}>
              {texts.clear}
            </button>
          )}
          <h4>{texts.rows}</h4>
          {told.rows.length === 0 ? (
            <p>{texts.none}</p>
          ) : (
            <button type="button" class="button plain" data-part="accept-all" onClick={actions.acceptAll}>
              {texts.acceptAll}
            </button>
          )}
          <ul class="rows">
            {told.rows.map((row) => (
              <ProposedRow key={row.slot} row={row} onDecide={(decision) => actions.decide(row, decision)} />
            ))}
          </ul>
          <Publish state={state} actions={actions} />
        </>
      )}
    </div>
  );
}

function Publish({ state: { pack, told, outcome }, actions }: Props) {
  const [passphrase, setPassphrase] = useState('');
  if (!told) return null;
  return (
    <section data-part="publish">
      <h4>{texts.publish}</h4>
      <p role="status">
        {texts.next(told.next)} {told.undecided > 0 && texts.undecided(told.undecided)}
      </p>
      {told.key === 'elsewhere' ? (
        <p>{texts.elsewhere}</p>
      ) : (
        <form
          onSubmit={(event) => {
            event.preventDefault();
            actions.publish(passphrase);
          }}
        >
          {told.key === 'none' && (
            <>
              <p>{texts.firstKey}</p>
              <label class="field" for="passphrase">
                {texts.passphrase}
              </label>
              <input
                id="passphrase"
                type="password"
                autocomplete="new-password"
                value={passphrase}
                onInput={(event) => setPassphrase(event.currentTarget.value)}
              />
            </>
          )}
          <button type="submit" class="button" data-part="publish-make" disabled={told.undecided > 0}>
            {texts.make}
          </button>
        </form>
      )}
      {outcome?.state === 'not' && (
        <p role="alert" class="trouble">
          {texts.problems[outcome.why]}
        </p>
      )}
      {told.issues.length > 0 && <IssueList issues={told.issues} />}
      {told.published && (
        <div data-part="published" data-pack={pack ?? undefined}>
          <p role="status">{texts.made(told.published.edition)}</p>
          <ul>
            {told.published.files.map((file) => (
              <li key={file.name}>
                <code>{shown(file.name, 120)}</code>{' '}
                <button type="button" class="button plain" onClick={() => actions.save(file)}>
                  {texts.save}
                  <span class="unseen"> {file.name}</span>
                </button>
              </li>
            ))}
          </ul>
        </div>
      )}
    </section>
  );
}
