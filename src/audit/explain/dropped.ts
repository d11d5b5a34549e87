import { contains, silences } from '../../claims/hits';
import { speaks } from '../../claims/language';
import type { TextPart } from '../../claims/part-text';
import type { Reading } from '../../claims/reading';
import type { Knowledge, Meaning, PhraseKnown } from '../../pack/knowledge';
import { findLengths, findWeights } from '../../quantity/measures';
import { findSerials } from '../../quantity/serials';
import type { PhraseMatch } from '../../text/phrases';
import type { Span } from '../../text/span';
import { claimsOf } from './claims';
import { meaningText, nameText } from './meaning';
import type { Reason, What } from './types';

/** Words that some pack or reader found, and that became no claim. */
export interface Dropped extends Span {
  what: What;
  means: string;
  pack: string | null;
  reason: Reason;
  by: string | null;
}

/** All of one text that was found and claims nothing: dropped on the way, or good for something else. */
export function droppedIn(part: TextPart, reading: Reading, knowledge: Knowledge, language: string | null): Dropped[] {
  const claimed = claimsOf(reading).filter(({ claim }) => claim.field === part.field);
  const isClaimed = (what: What, { start, end }: Span): boolean =>
    claimed.some((one) => one.what === what && one.claim.start < end && start < one.claim.end);
  return [
    ...phrases(part, reading, knowledge),
    ...names(part, reading, knowledge),
    ...[...findWeights(part.text, { language }), ...findLengths(part.text, { language })]
      .filter((measure) => !isClaimed('measure', measure))
      .map((measure) => dropped(measure, 'measure', measure.quote, 'nothing-measured')),
    ...findSerials(part.text)
      .filter((serial) => !isClaimed('serial', serial) && !reading.serials.some((one) => one.normal === serial.normal))
      .map((serial) => dropped(serial, 'serial', serial.normal, 'number-of-another')),
  ];
}

function dropped(
  { start, end }: Span,
  what: What,
  means: string,
  reason: Reason,
  pack: string | null = null,
  by: string | null = null,
): Dropped {
  return { start, end, what, means, pack, reason, by };
}

type Match = PhraseMatch<PhraseKnown>;

/** Phrases of these kinds claim nothing by themselves; what they are good for instead. */
const GOOD_FOR: Partial<Record<Meaning['kind'], Reason>> = {
  thing: 'shows-thing',
  part: 'shows-part',
  'not-thing': 'shows-other',
  measured: 'shows-measure',
  unless: 'shows-harmless',
};

function phrases(part: TextPart, reading: Reading, knowledge: Knowledge): Dropped[] {
  const all = knowledge.phrases.search(part.tokens);
  const isSpoken = (match: Match): boolean => speaks(reading.languages, match.value.lang);
  const spoken = once(all.filter(isSpoken));
  // The same words in a language that the advert isn't written in are worth telling only where they mean something else.
  const told = new Set(spoken.map((match) => keyOf(match, knowledge)));
  const foreign = once(all.filter((match) => !isSpoken(match) && !told.has(keyOf(match, knowledge))));
  return [...spoken, ...foreign].flatMap((match) => {
    const { meaning } = match.value;
    const tell = (reason: Reason, by: string | null = null): Dropped[] => [
      dropped(match, meaning.kind, meaningText(meaning, knowledge), reason, meaning.pack, by),
    ];
    if (!isSpoken(match)) return tell('another-language');
    const longer = spoken.find((other) => silences(hitOf(other), hitOf(match)));
    const words = longer && part.text.slice(longer.start, longer.end);
    if (words !== undefined) return tell('inside-longer', words);
    if (!reading.covering.has(meaning.pack)) return tell('pack-not-covering');
    const other = GOOD_FOR[meaning.kind];
    if (other) return tell(other);
    if (isRead(match, part, reading)) return [];
    if (meaning.kind === 'place') return tell('no-word-for-making');
    const unless = spoken.find(
      ({ value, start, end }) =>
        value.meaning.kind === 'unless' &&
        meaning.kind === 'wording' &&
        value.meaning.entry === meaning.entry &&
        start < match.end &&
        match.start < end,
    );
    return tell('harmless', unless ? part.text.slice(unless.start, unless.end) : null);
  });
}

function keyOf({ firstToken, lastToken, value: { meaning } }: Match, knowledge: Knowledge): string {
  return [firstToken, lastToken, meaning.kind, meaning.pack, meaningText(meaning, knowledge)].join();
}

const hitOf = (match: Match) => ({ ...match, value: match.value.meaning });

/** Two spellings of one entry at one place are one phrase. */
function once(matches: readonly Match[]): Match[] {
  return matches.filter(
    (match, at) =>
      !matches.some(
        (other, before) =>
          before < at &&
          other.value.meaning === match.value.meaning &&
          other.firstToken === match.firstToken &&
          other.lastToken === match.lastToken,
      ),
  );
}

function isRead(match: Match, part: TextPart, reading: Reading): boolean {
  const { meaning } = match.value;
  return claimsOf(reading).some(({ what, claim }) => {
    if (what !== meaning.kind || claim.field !== part.field) return false;
    // A place is quoted with the word that makes it the place made.
    if (what === 'place') return claim.start <= match.start && claim.end >= match.end;
    if (claim.start !== match.start || claim.end !== match.end) return false;
    if (what === 'value' && meaning.kind === 'value')
      return claim.attribute === meaning.attribute && claim.value === meaning.value;
    return !('entry' in claim) || !('entry' in meaning) || claim.entry === meaning.entry;
  });
}

function names(part: TextPart, reading: Reading, knowledge: Knowledge): Dropped[] {
  const all = knowledge.names.search(part.tokens);
  return all.flatMap((match) => {
    const isRead = reading.names.some(
      (name) =>
        name.field === part.field &&
        name.start === match.start &&
        name.end === match.end &&
        nameText(name.of) === nameText(match.value.of),
    );
    if (isRead) return [];
    const longer = all.find((other) => contains(other, match));
    const { of } = match.value;
    const pack = 'maker' in of ? of.pack : 'model' in of ? of.model.pack : of.family.pack;
    return [
      longer
        ? dropped(match, 'name', nameText(of), 'inside-longer', pack, part.text.slice(longer.start, longer.end))
        : dropped(match, 'name', nameText(of), 'not-a-name', pack),
    ];
  });
}
