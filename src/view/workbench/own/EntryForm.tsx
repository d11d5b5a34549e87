import { useState } from 'preact/hooks';
import type { EditableEntry, EditableField } from '../../../session/own/editable';
import { changesTold } from '../../../text/catalogue/changes-told';
import { ownTexts as texts } from '../../../text/catalogue/own';
import { shown } from '../../shown';
import type { OwnActions, OwnState, Wrong } from './state';

interface Props {
  entry: EditableEntry;
  outcome: OwnState['field'];
  actions: OwnActions;
}

/** One entry, field by field: each is changed and kept by itself. */
export function EntryForm({ entry, outcome, actions }: Props) {
  return (
    <section data-part="own-form" aria-labelledby="own-form">
      <h4 id="own-form">{texts.edit(changesTold.parts[entry.part] ?? entry.part, shown(entry.name, 120))}</h4>
      <p class="soft">{texts.hint}</p>
      {entry.fields.map((field) => {
        const name = field.field.join('.');
        return (
          <Field
            key={name}
            name={name}
            field={field}
            wrong={outcome?.name === name ? outcome.wrong : null}
            onKeep={(typed) => actions.keep(entry, field, typed)}
          />
        );
      })}
      <button type="button" class="button plain" data-part="own-close" onClick={() => actions.choose(null)}>
        {texts.close}
      </button>
    </section>
  );
}

interface FieldProps {
  name: string;
  field: EditableField;
  wrong: Wrong | null;
  onKeep: (typed: string) => void;
}

function Field({ name, field, wrong, onKeep }: FieldProps) {
  const [typed, setTyped] = useState<string | null>(null);
  const id = `own-${name.replace(/[^\w-]/g, '-')}`;
  const value = typed ?? field.typed;
  return (
    <form
      class="own-field"
      data-field={name}
      onSubmit={(event) => {
        event.preventDefault();
        onKeep(value);
      }}
    >
      <label class="field" for={id}>
        {shown(field.label, 80)}
      </label>
      <div class="row">
        <input
          spellcheck={false}
          id={id}
          type="text"
          autocomplete="off"
          value={value}
          onInput={(event) => setTyped(event.currentTarget.value)}
        />
        <button type="submit" class="button plain" disabled={value === field.typed}>
          {texts.keep}
          <span class="unseen">{texts.keepOf(shown(field.label, 80))}</span>
        </button>
      </div>
      {wrong !== null && (
        <p role="alert" class="trouble" data-part="own-wrong">
          {wordsOf(wrong)}
        </p>
      )}
    </form>
  );
}

function wordsOf(wrong: Wrong): string {
  switch (wrong.why) {
    case 'form':
      return texts.wrong(shown(wrong.example, 120));
    case 'order':
      return texts.notInOrder(shown(wrong.what, 160), shown(wrong.expected, 160));
    case 'stale':
      return texts.stale;
  }
}
