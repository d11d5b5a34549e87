import type { AnswerOption } from '../../audit/types';
import type { Outline } from '../../pack/schema/about';
import type { SeenValue } from '../../session/seen';
import { likelyTexts } from '../../text/catalogue/likely';
import { hasDrawings, OptionDrawing } from '../outline/drawings';
import { shown } from '../shown';

const texts = likelyTexts.settle;

/** Digits that choose an answer, while the focus is within the question. */
const MOST_KEYS = 9;

interface Props {
  attribute: string;
  options: readonly AnswerOption[];
  outline: Outline | null;
  onChoose: (value: SeenValue) => void;
}

/** The answers to one question as large buttons: one tap each, or one key while the focus is on any of them. */
export function AnswerButtons({ attribute, options, outline, onChoose }: Props) {
  const drawn = hasDrawings(outline, attribute);
  return (
    <div class="answers">
      {options.map(({ value, text, explain }, i) => (
        <button
          key={String(value)}
          type="button"
          class={drawn ? 'answer drawn-answer' : 'answer'}
          data-answer={String(value)}
          aria-keyshortcuts={i < MOST_KEYS ? String(i + 1) : undefined}
          onClick={() => onChoose(value)}
        >
          <span class="answer-key" aria-hidden="true">
            {i < MOST_KEYS && i + 1}
          </span>
          {drawn && <OptionDrawing outline={outline} attribute={attribute} value={value} />}
          <b class="answer-words" dir="auto">
            {typeof value === 'boolean' ? (value ? texts.yes : texts.no) : shown(text, 120)}
          </b>
          {explain !== null && (
            <span class="answer-more" dir="auto">
              {shown(explain, 240)}
            </span>
          )}
        </button>
      ))}
      <button
        type="button"
        class="answer plain"
        data-answer="cannot-tell"
        aria-keyshortcuts="0"
        onClick={() => onChoose(null)}
      >
        <span class="answer-key" aria-hidden="true">
          0
        </span>
        <span class="answer-words">{texts.cannotTell}</span>
      </button>
      <p class="soft keys">{texts.keys}</p>
    </div>
  );
}
