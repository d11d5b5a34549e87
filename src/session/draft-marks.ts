import type { Finding, Said, Standing } from '../audit/types';
import type { Draft, Listing } from '../listing/types';
import type { DraftField } from './drafts';
import { readPlaces } from './read-places';

/** A stretch of one field of a draft of which a finding speaks. Offsets are UTF-16 units, end exclusive. */
export interface Mark {
  start: number;
  end: number;
  finding: string;
  standing: Standing;
}

export type Marks = Readonly<Record<DraftField, readonly Mark[]>>;

function emptyMarks(): Record<DraftField, Mark[]> {
  return { title: [], description: [], priceText: [], conditionText: [], serialText: [] };
}

export const NO_MARKS: Marks = emptyMarks();

/** Where in a draft, as its seller wrote it, each finding's words stand, in the order of the text. */
export function draftMarks(draft: Draft, listing: Listing, findings: readonly Finding[]): Marks {
  const places = {
    title: readPlaces(draft.title ?? '', listing.title),
    description: readPlaces(draft.description ?? '', listing.description),
    condition: readPlaces(draft.conditionText ?? '', listing.condition ?? ''),
    price: readPlaces(draft.priceText ?? '', listing.priceText),
  };
  const marks: Record<DraftField, Mark[]> = emptyMarks();
  for (const { id, standing, said } of findings) {
    for (const each of said) {
      const place = placeOf(each);
      if (place && place.end > place.start)
        marks[place.field].push({ start: place.start, end: place.end, finding: id, standing });
    }
  }
  for (const list of Object.values(marks)) list.sort((a, b) => a.start - b.start || a.end - b.end);
  return marks;

  function placeOf({ field, quote, start, end }: Said): { field: DraftField; start: number; end: number } | null {
    if (field === 'details') return null;
    if (field === 'serials') {
      const at = (draft.serialText ?? '').indexOf(quote);
      return at < 0 ? null : { field: 'serialText', start: at, end: at + quote.length };
    }
    const span = places[field]?.span(start, end);
    return span ? { field: WRITTEN[field], ...span } : null;
  }
}

const WRITTEN = {
  title: 'title',
  description: 'description',
  condition: 'conditionText',
  price: 'priceText',
} as const satisfies Record<string, DraftField>;

/**
 * The marks of a text that has been changed since: those before and after the change stay with their words, those that
 * it touches go, until the next audit says what holds of the new words.
 */
export function carriedMarks(marks: readonly Mark[], before: string, after: string): readonly Mark[] {
  if (before === after) return marks;
  const most = Math.min(before.length, after.length);
  let head = 0;
  while (head < most && before[head] === after[head]) head++;
  let tail = 0;
  while (tail < most - head && before.at(-1 - tail) === after.at(-1 - tail)) tail++;
  const shift = after.length - before.length;
  return marks.flatMap((mark) => {
    if (mark.end <= head) return [mark];
    if (mark.start >= before.length - tail) return [{ ...mark, start: mark.start + shift, end: mark.end + shift }];
    return [];
  });
}

/** A text cut where marks begin and end. */
export interface Piece {
  text: string;
  /** The gravest standing of the findings that speak of it, or null. */
  standing: Standing | null;
}

const GRAVEST: readonly Standing[] = ['disproved', 'unproved', 'caution', 'agrees'];

export function piecesOf(text: string, marks: readonly Mark[]): Piece[] {
  const cuts = [...new Set([0, text.length, ...marks.flatMap(({ start, end }) => [start, end])])]
    .filter((cut) => cut >= 0 && cut <= text.length)
    .sort((a, b) => a - b);
  return cuts.slice(0, -1).map((start, i) => {
    const end = cuts[i + 1]!;
    const over = marks.filter((mark) => mark.start <= start && mark.end >= end).map(({ standing }) => standing);
    return { text: text.slice(start, end), standing: GRAVEST.find((each) => over.includes(each)) ?? null };
  });
}
