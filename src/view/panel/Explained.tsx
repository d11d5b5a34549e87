import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { TermSpot, Words } from '../../session/words';
import { shown } from '../shown';

/** UTF-16 units of a text, and of an explanation, that are shown. */
const LONGEST = 600;
const LONGEST_NOTE = 300;

interface Props {
  text: string;
  words: Words;
}

/** A text in which the words of the trade explain themselves where they stand. */
export function Explained(props: Props) {
  const { content, note } = useExplained(props);
  return (
    <>
      <span dir="auto">{content}</span>
      {note}
    </>
  );
}

/**
 * The same in two parts, for where the explanation may not stand inside the element that holds the text, as in a heading.
 * One word is explained at a time: pressed again, or at Escape, the explanation goes.
 */
export function useExplained({ text, words }: Props): { content: ComponentChildren; note: ComponentChildren } {
  const [open, setOpen] = useState<number | null>(null);
  const id = useId();
  const spots = words.spots.get(text) ?? [];
  const spot = open === null ? undefined : spots[open];
  const content = piecesOf(text, spots).map(({ piece, term }) =>
    term === null ? (
      piece
    ) : (
      <Term
        key={term}
        text={piece}
        note={term === open ? id : null}
        onPress={() => setOpen(term === open ? null : term)}
        onEscape={() => setOpen(null)}
      />
    ),
  );
  const note = spot && (
    <span class="term-note" id={id} role="note" dir="auto">
      {shown(spot.explain, LONGEST_NOTE)}
    </span>
  );
  return { content, note };
}

interface Piece {
  piece: string;
  /** Which spot it is, or null for what stands between them. */
  term: number | null;
}

function piecesOf(text: string, spots: readonly TermSpot[]): Piece[] {
  const pieces: Piece[] = [];
  let at = 0;
  for (const [term, { start, end }] of spots.entries()) {
    if (start > at) pieces.push({ piece: shown(text.slice(at, start)), term: null });
    pieces.push({ piece: shown(text.slice(start, end)), term });
    at = end;
  }
  if (at < text.length) pieces.push({ piece: shown(text.slice(at), LONGEST - at), term: null });
  return pieces;
}

interface TermProps {
  text: string;
  /** The id of its explanation while that is shown. */
  note: string | null;
  onPress: () => void;
  onEscape: () => void;
}

/** A word of the trade: dotted beneath, explained when it is pressed. */
function Term({ text, note, onPress, onEscape }: TermProps) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: browsers break lines before and after a button, even before its comma
    <span
      class="term"
      role="button"
      tabIndex={0}
      data-part="term-word"
      aria-expanded={note !== null}
      aria-controls={note ?? undefined}
      onClick={onPress}
      onKeyDown={(event) => {
        if (event.key === 'Escape') return onEscape();
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        onPress();
      }}
    >
      {text}
    </span>
  );
}
