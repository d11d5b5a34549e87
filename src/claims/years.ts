import type { YearMention } from '../quantity/types';
import { findYears } from '../quantity/years';
import { isOfAnother, isOfFound } from './dated-noun';
import { beginningWithin } from './hits';
import { isOfTheFirm } from './of-the-firm';
import { type ClauseRange, clauseAt, clauseIndexAt, type TextPart, tokenAt } from './part-text';
import type { YearClaim } from './reading';
import { stancedQuote } from './stanced-quote';
import type { PartReading } from './values';

/** Labels of rows whose year is the year made. Folded. */
const YEAR_LABELS =
  /^(year|date|age|era|period|made|built|year of manufacture|baujahr|jahr|alter|annee|epoque|date de fabrication)\b/;

/**
 * Years with their kind. A bare year or decade is the year made in a title, right before the thing's noun ("a 1954
 * machine"), or in a row for it; anywhere else a year that no word explains claims nothing.
 */
export function yearsIn(reading: PartReading): YearClaim[] {
  const { part, stances } = reading;
  return findYears(part.text).map((mention): YearClaim => {
    const first = tokenAt(part, mention.start);
    const last = tokenAt(part, mention.end - 1);
    const kind = kindHere(reading, mention, first, last);
    const isTold = kind === 'made' && reading.framer?.isMakingTold(first, last);
    const { from, to, approximate } = mention;
    const claim = stancedQuote(part, mention.start, mention.end, stances.at(first, last));
    return Object.assign(claim, { from, to, approximate, kind }, isTold ? { aside: true } : null);
  });
}

function kindHere(reading: PartReading, mention: YearMention, first: number, last: number): YearMention['kind'] {
  if (
    mention.kind === 'made' &&
    reading.part.field === 'description' &&
    (mention.from >= OF_NOW ||
      isOfTheFirm(reading.part, first) ||
      isOfAnother(reading, first, last) ||
      isOfFound(reading, first) ||
      isUntil(reading.part, first) ||
      isOnAnother(reading, first, last))
  )
    return 'other';
  return mention.kind === 'unknown' && isMadeByPlace(reading, mention, first, last) ? 'made' : mention.kind;
}

/** Nobody means the year made of an old thing by so late a year: a check, a sale, a repair. Common practice, no source. */
const OF_NOW = 2000;

/** "Bis in die 60er gebaut", "from 1946 on they had …": of the model's time. */
function isUntil({ tokens }: TextPart, first: number): boolean {
  if (
    /^(?:from|since)$/.test(tokens[first - 1]?.folded ?? '') &&
    /^on(?:wards?)?$/.test(tokens[first + 1]?.folded ?? '')
  )
    return true;
  return tokens
    .slice(Math.max(0, first - 3), first + 1)
    .some(({ folded }) => /^(?:bis|until|till|jusqu'en|jusqu'a|jusque|jusqu'aux)$/.test(folded));
}

const HOLDERS =
  /^(?:cabinet|case|table|box|lid|manual|booklet|receipt|drawer|motor|schrank|tisch|koffer|deckel|anleitung|karton|meuble|table|valise|coffret|notice|facture|boite|socle|pietement)$/;

/** "Dated 1931 on the cabinet", "motor dated 1931". */
function isOnAnother({ part }: PartReading, first: number, last: number): boolean {
  const [holder, dated] = part.tokens.slice(Math.max(0, first - 2), first);
  if (dated?.folded === 'dated' && HOLDERS.test(holder!.folded)) return true;
  const [on, next, noun] = part.tokens.slice(last + 1, last + 4);
  return (
    /^(?:on|in|auf|im|am|sur|dans)$/.test(on?.folded ?? '') &&
    [next, noun].some((one) => HOLDERS.test(one?.folded ?? ''))
  );
}

function isMadeByPlace({ part, hits }: PartReading, mention: YearMention, first: number, last: number): boolean {
  if (part.field === 'title') return true;
  if (part.field === 'details') return YEAR_LABELS.test(lineStart(part, mention.start));
  const clause = clauseAt(part, first);
  if (!clause) return false;
  if (opensWithYear(part, clause, first, last) || isInRow(part, clause, first) || isLabelled(part, clause, first))
    return true;
  if (isBareYear(part, clause, first, last)) return isBehindName({ part, hits }, clause) || isMadeBefore(part, clause);
  if (isPraised({ part, hits }, clause, first, last)) return true;
  return beginningWithin(hits, last + 1, last + 4).some(
    (hit) => hit.value.kind === 'thing' && hit.lastToken <= clause.last,
  );
}

/** "Genuine 1940s portable.": nothing stands around it but praise and one feature. */
function isPraised(
  { part, hits }: Pick<PartReading, 'part' | 'hits'>,
  clause: ClauseRange,
  first: number,
  last: number,
): boolean {
  const before = part.tokens.slice(clause.first, first).filter(({ kind }) => kind === 'word');
  return (
    before.length > 0 &&
    before.every(({ folded }) => PRAISE.test(folded)) &&
    beginningWithin(hits, last + 1, last + 1).some(
      (hit) =>
        hit.value.kind === 'value' &&
        part.tokens.slice(hit.lastToken + 1, clause.last + 1).every(({ kind }) => kind === 'mark'),
    )
  );
}

const PRAISE = /^(?:a|an|genuine|authentic|true|real|original|proper|typical|classic|lovely|beautiful|nice|fine|good)$/;

/** "1940s machine in full working order". */
function opensWithYear(part: TextPart, clause: ClauseRange, first: number, last: number): boolean {
  const next = part.tokens[last + 1]?.folded ?? '';
  // Whatever signs stand before it.
  const opens = part.tokens.slice(clause.first, first).every(({ kind }) => kind === 'mark');
  return opens && /^(?:sewing|machine|model|nahmaschine|maschine|modell)$/.test(next);
}

/** "Year: 1962" in the words of the seller. */
function isInRow(part: TextPart, clause: ClauseRange, first: number): boolean {
  if (part.tokens[first - 1]?.folded !== ':') return false;
  const before = part.clauses[clauseIndexAt(part, first) - 1];
  const from = first > clause.first ? clause.first : (before?.first ?? first);
  const label = part.tokens.slice(from, first - 1).filter(({ kind }) => kind === 'word');
  if (label.some(({ folded }) => HOLDERS.test(folded))) return false;
  return label.length <= LONGEST_LABEL && YEAR_LABELS.test(label.map(({ folded }) => folded).join(' '));
}

/** "Year 1948.", "the year is 1948": nothing but a label stands before it. */
function isLabelled(part: TextPart, clause: ClauseRange, first: number): boolean {
  const label = part.tokens.slice(clause.first, first).filter(({ kind }) => kind === 'word');
  const words = label.map(({ folded }) => folded).join(' ');
  return label.length <= LONGEST_LABEL && /^(?:the |das |l')?(?:year|baujahr|jahr|annee)(?: is| ist)?$/.test(words);
}

/** A clause that is nothing but a year, with "in" or "circa" before it. */
function isBareYear(part: TextPart, clause: ClauseRange, first: number, last: number): boolean {
  const isSmall = ({ kind, folded }: TextPart['tokens'][number]): boolean => kind === 'mark' || SMALL.test(folded);
  return (
    part.tokens.slice(clause.first, first).every(isSmall) &&
    part.tokens.slice(last + 1, clause.last + 1).every(({ kind }) => kind === 'mark')
  );
}

const SMALL = /^(?:in|im|jahr|en|about|around|circa|ca|c|um|vers|environ|the|year|approx|early|late|mid)$/;

/** "Name, 1955": the clause before it is the thing's name or noun and little else. */
function isBehindName({ part, hits }: Pick<PartReading, 'part' | 'hits'>, clause: ClauseRange): boolean {
  const before = part.clauses[clauseIndexAt(part, clause.first) - 1];
  if (!before || before.sentence !== clause.sentence) return false;
  const lastWord = before.tokens.findLastIndex(({ kind }) => kind !== 'mark') + before.first;
  const words = before.tokens.filter(({ kind }) => kind !== 'mark').length;
  return (
    words <= MOST_OF_A_NAME &&
    beginningWithin(hits, before.first, before.last).some(
      ({ value, lastToken }) => value.kind === 'thing' && lastToken === lastWord,
    )
  );
}

const MOST_OF_A_NAME = 5;

/** "Built during the war, in 1942". */
function isMadeBefore(part: TextPart, clause: ClauseRange): boolean {
  const before = part.clauses[clauseIndexAt(part, clause.first) - 1];
  return (
    before?.sentence === clause.sentence &&
    (/^(?:built|made|manufactured|gebaut|hergestellt|fabriquee?|construite)$/.test(before.tokens[0]!.folded) ||
      // "The year it was built, 1934".
      /\byear (?:it|she|this one|the machine) was (?:built|made)$/.test(
        before.tokens.flatMap(({ kind, folded }) => (kind === 'mark' ? [] : [folded])).join(' '),
      ))
  );
}

const LONGEST_LABEL = 5;

function lineStart(part: TextPart, offset: number): string {
  const from = part.text.lastIndexOf('\n', offset) + 1;
  return part.text.slice(from, offset).toLowerCase().normalize('NFKD').replace(/\p{M}/gu, '').trim();
}
