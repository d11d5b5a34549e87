import type { Answer } from '../../session/answer';
import type { SeenValue } from '../../session/seen';
import { draftRoomTexts as texts } from '../../text/catalogue/draft-room';
import { lazily } from '../lazily';

/** Fetched with the first words: many come to the room for the drafts that are there. */
export const DraftAnswered = lazily(async () => (await import('./DraftAnswered')).DraftAnswered);

interface Props {
  answer: Answer | null;
  blank: boolean;
  /** More was seen since, and the next audit is on its way. */
  pending: boolean;
  isPrivate: boolean;
  onSaw: (attribute: string, value: SeenValue) => void;
  onTakeBack: (attribute: string) => void;
}

/** What the packs say of a draft. */
export function DraftAudit({ answer, blank, ...rest }: Props) {
  return (
    <section class="draft-audit" aria-labelledby="draft-audit" data-part="draft-audit">
      <h2 id="draft-audit">{texts.audit}</h2>
      {blank ? <p>{texts.blank}</p> : answer ? <DraftAnswered answer={answer} {...rest} /> : <p>{texts.auditing}</p>}
    </section>
  );
}
