import type { Draft } from '../../listing/types';
import { carriedMarks, draftMarks, NO_MARKS } from '../../session/draft-marks';
import { DRAFT_FIELDS, isBlank } from '../../session/drafts';
import { draftRoomTexts as texts } from '../../text/catalogue/draft-room';
import { DraftAudit } from './DraftAudit';
import type { DraftsActions, DraftsState } from './DraftsRoom';
import { MarkedField } from './MarkedField';

interface Props {
  draft: Draft;
  state: DraftsState;
  actions: DraftsActions;
}

/** One draft: its fields, with what is found marked in them, beside what the packs say. */
export function DraftEditor({ draft, state, actions }: Props) {
  const { answered, kept, copied } = state;
  const answer = answered?.answer ?? null;
  const findings = answer?.ok ? answer.audit.findings : [];
  const marks = answered && answer?.ok ? draftMarks(answered.draft, answer.listing, findings) : NO_MARKS;
  return (
    <div class="desk">
      <section class="editor" aria-labelledby="editor">
        <h2 id="editor">{texts.editor}</h2>
        {DRAFT_FIELDS.map((field) => (
          <MarkedField
            key={field}
            field={field}
            value={draft[field] ?? ''}
            marks={carriedMarks(marks[field], answered?.draft[field] ?? '', draft[field] ?? '')}
            findings={findings}
            onInput={(value) => actions.write(field, value)}
          />
        ))}
        <p class="soft" data-part="kept" data-kept={kept}>
          {texts.kept[kept]}
        </p>
        <p class="below">
          <button type="button" class="button" data-part="copy-draft" disabled={isBlank(draft)} onClick={actions.copy}>
            {texts.copy}
          </button>
        </p>
        <p role="status" class="soft" data-part="copy-outcome">
          {copied === 'copied' && texts.copied}
          {copied === 'refused' && texts.notCopied}
        </p>
      </section>
      <DraftAudit
        answer={answer}
        blank={isBlank(draft)}
        pending={answered?.seen !== state.seen}
        isPrivate={state.isPrivate}
        onSaw={actions.saw}
        onTakeBack={actions.takeBack}
      />
    </div>
  );
}
