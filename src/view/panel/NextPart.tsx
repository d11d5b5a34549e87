import { useLayoutEffect, useRef } from 'preact/hooks';
import type { AnswerOption, NextEvidence } from '../../audit/types';
import type { SeenValue } from '../../session/seen';
import type { SeenWords } from '../../session/seen-words';
import { outlineFor, type Words } from '../../session/words';
import { likelyTexts } from '../../text/catalogue/likely';
import { OutlineDrawing } from '../outline/drawings';
import { shown } from '../shown';
import { AnswerButtons } from './AnswerButtons';
import { Explained, useExplained } from './Explained';
import { SeenList } from './SeenList';
import { TermNote } from './TermNote';

const texts = likelyTexts.settle;

export interface NextProps {
  /** The audit's next evidence, the most telling first. */
  next: readonly NextEvidence[];
  seen: readonly SeenWords[];
  words: Words;
  /** An answer is on its way into the audit: until it is there no other one is taken. */
  pending: boolean;
  /** Another heading than the usual one. */
  heading?: string;
  /** The attribute to begin with, before anything was seen. */
  first?: string | null;
  /** Whether and where the answers are kept, in words; null where nothing is to be said of it. */
  keptNote: string | null;
  onSaw: (attribute: string, value: SeenValue) => void;
  onTakeBack: (attribute: string) => void;
  /** Forgets all that was said; null or left out where that isn't offered. */
  onAgain?: (() => void) | null;
}

/** The question that is asked now: the most telling one that can be answered by choosing, or that of `first`. */
export function questionOf(next: readonly NextEvidence[], first: string | null = null): NextEvidence | null {
  const askable = next.filter(({ options }) => options.length > 0);
  return askable.find(({ attribute }) => attribute === first) ?? askable[0] ?? null;
}

/** What would settle it: one question at a time, and what has been answered so far. */
export function NextPart({ next, seen, words, pending, keptNote, onSaw, onTakeBack, ...rest }: NextProps) {
  const question = questionOf(next, seen.length === 0 ? rest.first : null);
  const heading = useRef<HTMLHeadingElement>(null);
  const answered = useRef(false);
  const asked = `${question?.attribute} ${seen.length} ${Boolean(rest.onAgain)}`;
  // The button that was pressed is gone by then: whoever works by keyboard goes on at the next question, not at the top,
  // also where that is the one before ("begin again" after all was taken back).
  useLayoutEffect(() => {
    if (pending || !answered.current || !asked) return;
    heading.current?.focus();
    answered.current = false;
  }, [asked, pending]);
  if (!question && seen.length === 0 && !rest.onAgain) return null;
  const change = (make: () => void) => {
    if (pending) return;
    answered.current = true;
    make();
  };
  return (
    <section class="group" data-part="settle" aria-labelledby="settle" aria-busy={pending}>
      <h2 id="settle">{rest.heading ?? texts.heading}</h2>
      {question ? (
        <Question
          question={question}
          words={words}
          heading={heading}
          onSaw={(...said) => change(() => onSaw(...said))}
        />
      ) : (
        <h3 class="question" ref={heading} tabIndex={-1}>
          {texts.done}
        </h3>
      )}
      <SeenList seen={seen} keptNote={keptNote} onTakeBack={(attribute) => change(() => onTakeBack(attribute))} />
      {rest.onAgain && (
        <p class="below">
          <button
            type="button"
            class="button plain"
            data-part="start-again"
            onClick={() => change(() => rest.onAgain?.())}
          >
            {texts.again}
          </button>
        </p>
      )}
    </section>
  );
}

interface QuestionProps {
  question: NextEvidence;
  words: Words;
  heading: { current: HTMLHeadingElement | null };
  onSaw: (attribute: string, value: SeenValue) => void;
}

function Question({ question, words, heading, onSaw }: QuestionProps) {
  const { attribute, name, where, place, options } = question;
  const outline = outlineFor(words, attribute);
  const term = words.terms.get(attribute);
  const { content, note } = useExplained({ text: term?.question ?? '', words });
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset's legend can't hold a heading that takes the focus everywhere
    <div
      class="asked"
      role="group"
      aria-labelledby="question"
      data-question={attribute}
      onKeyDown={(event) => {
        const value = answerOfKey(event, options);
        if (value === undefined) return;
        event.preventDefault();
        onSaw(attribute, value);
      }}
    >
      <h3 class="question" ref={heading} tabIndex={-1} id="question">
        {term?.question ? content : texts.ask(shown(name, 80))}
      </h3>
      {note}
      {outline && place !== null && <OutlineDrawing outline={outline} place={place} />}
      {where !== '' && (
        <p class="soft">
          {texts.where} <Explained text={where} words={words} />
        </p>
      )}
      <AnswerButtons
        attribute={attribute}
        options={options}
        outline={outline}
        onChoose={(value) => onSaw(attribute, value)}
      />
      {term && <TermNote term={term} />}
    </div>
  );
}

/** What a key answers, while the focus is within the question: its number; 0 for "can't tell". */
function answerOfKey(
  { key, ctrlKey, altKey, metaKey }: KeyboardEvent,
  options: readonly AnswerOption[],
): SeenValue | undefined {
  if (ctrlKey || altKey || metaKey || !/^[0-9]$/.test(key)) return undefined;
  return key === '0' ? null : options[Number(key) - 1]?.value;
}
