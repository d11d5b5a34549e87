import type { Finding } from '../../audit/types';
import { type Mark, piecesOf } from '../../session/draft-marks';
import type { DraftField } from '../../session/drafts';
import { draftRoomTexts as texts } from '../../text/catalogue/draft-room';
import { panelTexts } from '../../text/catalogue/panel';
import { findingAnchor, goToFinding } from '../finding-anchor';
import { shown } from '../shown';

interface Props {
  field: DraftField;
  value: string;
  marks: readonly Mark[];
  findings: readonly Finding[];
  onInput: (value: string) => void;
}

/**
 * A field whose words are underlined where a finding speaks of them. The same text stands behind the field, unseen but
 * for its underlines, and gives it its height; for the keyboard and for screen readers a list below leads from each
 * marked stretch to its finding.
 */
export function MarkedField({ field, value, marks, findings, onInput }: Props) {
  const id = `draft-${field}`;
  const manyLines = field === 'description';
  const hint = texts.hints[field];
  const described = [hint && `${id}-hint`, marks.length > 0 && `${id}-marks`].filter(Boolean).join(' ');
  return (
    <div class="field" data-field={field}>
      <label for={id}>{texts.fields[field]}</label>
      <div class={manyLines ? 'marked tall' : 'marked'}>
        <div class="marked-under" aria-hidden="true" dir="auto">
          {piecesOf(value, marks).map(({ text, standing }, i) =>
            standing === null ? (
              text
            ) : (
              <mark key={`${i}`} data-standing={standing}>
                {text}
              </mark>
            ),
          )}
          {/* A line break at the end would take no height by itself. */}
          {'\u200b'}
        </div>
        <textarea
          id={id}
          rows={1}
          dir="auto"
          autocomplete="off"
          // A browser may ask a server for a dictionary, or even for its opinion on every word.
          spellcheck={false}
          aria-describedby={described || undefined}
          value={value}
          onInput={(event) => onInput(lineOf(event.currentTarget.value, manyLines))}
          onKeyDown={(event) => !manyLines && event.key === 'Enter' && event.preventDefault()}
        />
      </div>
      {hint && (
        <p class="soft" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {marks.length > 0 && (
        <ul class="mark-links" id={`${id}-marks`} aria-label={texts.marksOf(texts.fields[field])}>
          {onceEach(marks).map((mark) => (
            <MarkLink key={`${mark.finding} ${mark.start}`} mark={mark} value={value} findings={findings} />
          ))}
        </ul>
      )}
    </div>
  );
}

function MarkLink({ mark, value, findings }: { mark: Mark; value: string; findings: readonly Finding[] }) {
  const finding = findings.find(({ id }) => id === mark.finding);
  if (!finding) return null;
  const { heading, mark: sign } = panelTexts.groups[mark.standing];
  return (
    <li data-standing={mark.standing}>
      <span aria-hidden="true">{sign}</span>
      <a
        href={`#${findingAnchor(mark.finding)}`}
        onClick={(event) => {
          // The address names the room; the way to a finding is no new place.
          event.preventDefault();
          goToFinding(mark.finding);
        }}
      >
        <q dir="auto">{shown(value.slice(mark.start, mark.end), 60)}</q>
        <span class="unseen">: {heading}</span>
      </a>
    </li>
  );
}

/** The same words marked twice for one finding need one way there. */
function onceEach(marks: readonly Mark[]): Mark[] {
  return [...new Map(marks.map((mark) => [`${mark.finding} ${mark.start}`, mark])).values()];
}

/** Fields of one line take none of the line breaks of what is pasted. */
function lineOf(value: string, manyLines: boolean): string {
  return manyLines ? value : value.replace(/\s*[\r\n]+\s*/g, ' ');
}
