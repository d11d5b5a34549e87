import { useState } from 'preact/hooks';
import type { RowTold } from '../../../session/keeper/desk-told';
import { valueTyped } from '../../../session/own/typed-value';
import type { Decision } from '../../../sharing/propose/merge-proposals';
import { changesTold } from '../../../text/catalogue/changes-told';
import { keeperTexts as texts } from '../../../text/catalogue/keeper';
import { shown } from '../../shown';

interface Props {
  row: RowTold;
  onDecide: (decision: Decision | null) => void;
}

/** One place of the pack: what it says, what is proposed for it, and what the keeper decides. */
export function ProposedRow({ row, onDecide }: Props) {
  const [reason, setReason] = useState('');
  const [value, setValue] = useState(row.typed ?? '');
  const [problem, setProblem] = useState<string | null>(null);
  const place = texts.place(
    changesTold.parts[row.part] ?? row.part,
    shown(row.name, 120),
    row.field && shown(row.field, 80),
  );
  const id = row.slot.replace(/[^\w-]/g, '-');
  const withReason = (decide: () => void) => {
    setProblem(reason.trim() === '' ? texts.needsReason : null);
    if (reason.trim() !== '') decide();
  };
  const edit = () => {
    const now = valueTyped(value, row.offered ?? undefined);
    if (now === undefined) setProblem(texts.wrongValue);
    else onDecide({ do: 'edit', now, reason: reason.trim() });
  };
  return (
    <li data-slot={row.slot} data-state={row.state} data-decided={row.decision?.do ?? 'no'}>
      <h5>{place}</h5>
      <p>{row.here === null ? texts.hereNothing : texts.here(shown(row.here, 300))}</p>
      {row.lapsed && (
        <p class="trouble" data-part="lapsed">
          {texts.lapsed}
        </p>
      )}
      {row.state !== 'open' && <p class="soft">{texts.states[row.state]}</p>}
      <ul>
        {row.offers.map(({ words, from }, at) => (
          <li key={words}>
            {texts.offer(shown(words, 300), shown(from.join(', '), 200))}{' '}
            {row.decision === null && (
              <button
                type="button"
                class="button plain"
                data-part="accept"
                onClick={() => onDecide({ do: 'accept', offer: at })}
              >
                {texts.accept}
                <span class="unseen">{texts.acceptOf(`${place}, ${words}`)}</span>
              </button>
            )}
          </li>
        ))}
      </ul>
      {row.decision ? (
        <p>
          {texts.decided[row.decision.do]} {row.decision.do !== 'accept' && shown(row.decision.reason, 200)}{' '}
          <button type="button" class="button plain" data-part="decide-again" onClick={() => onDecide(null)}>
            {texts.again}
            <span class="unseen">: {place}</span>
          </button>
        </p>
      ) : (
        <>
          <label class="field" for={`reason-${id}`}>
            {texts.reason}
          </label>
          <input
            id={`reason-${id}`}
            type="text"
            spellcheck={false}
            data-part="reason"
            value={reason}
            onInput={(event) => setReason(event.currentTarget.value)}
          />
          <button
            type="button"
            class="button plain"
            data-part="decline"
            onClick={() => withReason(() => onDecide({ do: 'decline', reason: reason.trim() }))}
          >
            {texts.decline}
            <span class="unseen">: {place}</span>
          </button>
          {row.typed !== null && (
            <>
              <label class="field" for={`value-${id}`}>
                {texts.other}
              </label>
              <input
                id={`value-${id}`}
                type="text"
                spellcheck={false}
                data-part="other-value"
                value={value}
                onInput={(event) => setValue(event.currentTarget.value)}
              />
              <button type="button" class="button plain" data-part="edit" onClick={() => withReason(edit)}>
                {texts.edit}
                <span class="unseen">: {place}</span>
              </button>
            </>
          )}
          {problem !== null && (
            <p role="alert" class="trouble">
              {problem}
            </p>
          )}
        </>
      )}
    </li>
  );
}
