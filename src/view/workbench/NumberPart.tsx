import { useEffect, useRef } from 'preact/hooks';
import type { PackCard } from '../../session/pack-card';
import { enquiryTexts as texts } from '../../text/catalogue/enquiry';
import { lazily } from '../lazily';
import { Disclosure } from '../panel/Disclosure';
import { AskForm } from './AskForm';
import type { EnquiryActions, EnquiryState } from './EnquiryRoom';
import { Installer } from './Installer';
import type { PacksActions, PacksState } from './PacksRoom';

/** Fetched with the first number. */
export const NumberResult = lazily(async () => (await import('./EnquiryResult')).EnquiryResult);

interface Props {
  state: EnquiryState;
  actions: EnquiryActions;
  /** The packs that are on and have tables. */
  tables: readonly PackCard[];
  packs: PacksState;
  packsActions: PacksActions;
}

/** A machine's number: held against the tables, and the way to packs that have some. */
export function NumberPart({ state, actions, tables, packs, packsActions }: Props) {
  const none = tables.length === 0;
  const part = useRef<HTMLDivElement>(null);
  const { numbered, told } = state;
  // What the number tells of the machine is shown above, and would push the number that was just asked out of sight.
  useEffect(() => {
    if (numbered === null || told === null) return;
    const field = document.activeElement;
    if (part.current?.contains(field)) field?.scrollIntoView?.({ block: 'nearest' });
  }, [numbered, told]);
  return (
    <div ref={part}>
      <section class="group" aria-labelledby="number">
        <h2 id="number">{texts.number}</h2>
        {none ? (
          <p data-part="no-tables">{texts.noTables}</p>
        ) : (
          <>
            <p>{texts.numberIntro}</p>
            <AskForm state={state} actions={actions} tables={tables} />
            {!state.numbered && <p class="soft">{texts.nothingAsked}</p>}
          </>
        )}
      </section>
      {!none && state.numbered && (
        <NumberResult
          {...state.numbered}
          name={state.asked.name}
          onTry={(serial) => actions.ask(serial, state.name)}
          onName={(name) => actions.ask(state.serial, name)}
        />
      )}
      <div class="group">
        <Disclosure label={none ? texts.open : texts.another} part="another-pack">
          <Installer outcome={packs.outcome} onFiles={packsActions.install} onCancel={packsActions.cancelInstall} />
        </Disclosure>
      </div>
    </div>
  );
}
