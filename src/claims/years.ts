import type { YearMention } from '../quantity/types';
import { findYears } from '../quantity/years';
import { isOfAnother, isOfFound } from './dated-noun';
import { beginningWithin } from './hits';
import { clauseAt, FARTHEST, quoteOf, type TextPart, tokenAt } from './part-text';
import type { YearClaim } from './reading';
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
  return findYears(part.text).map((mention) => {
    const first = tokenAt(part, mention.start);
    const last = tokenAt(part, mention.end - 1);
    const stance = stances.at(first, last);
    return {
      ...quoteOf(part, mention.start, mention.end),
      ...stance,
      from: mention.from,
      to: mention.to,
      approximate: mention.approximate,
      kind: kindHere(reading, mention, first, last),
    };
  });
}

/** "The firm dates from 1884" says nothing of the thing. Folded. */
const FIRMS = new Set(
  'firm company maker manufacturer factory business club house firma hersteller werk fabrik haus maison fabricant usine entreprise'.split(
    ' ',
  ),
);

function isOfTheFirm({ part }: PartReading, first: number): boolean {
  const clause = clauseAt(part, first);
  if (!clause) return false;
  const from = Math.max(clause.first, first - FARTHEST);
  return part.tokens.slice(from, first).some((token) => FIRMS.has(token.folded));
}

function kindHere(reading: PartReading, mention: YearMention, first: number, last: number): YearMention['kind'] {
  if (
    mention.kind === 'made' &&
    reading.part.field === 'description' &&
    (mention.from >= OF_NOW ||
      isOfTheFirm(reading, first) ||
      isOfAnother(reading, first) ||
      isOfFound(reading, first) ||
      isOnAnother(reading, last))
  )
    return 'other';
  return mention.kind === 'unknown' && isMadeByPlace(reading, mention, first, last) ? 'made' : mention.kind;
}

/** Nobody means the year made of an old thing by so late a year: a check, a sale, a repair. Common practice, no source. */
const OF_NOW = 2000;

const HOLDERS =
  /^(?:cabinet|case|table|box|lid|manual|booklet|receipt|drawer|motor|schrank|tisch|koffer|deckel|anleitung|karton|meuble|table|valise|coffret|notice|facture|boite)$/;

/** "Dated 1931 on the cabinet". */
function isOnAnother({ part }: PartReading, last: number): boolean {
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
  return beginningWithin(hits, last + 1, last + 4).some(
    (hit) => hit.value.kind === 'thing' && hit.lastToken <= clause.last,
  );
}

function lineStart(part: TextPart, offset: number): string {
  const from = part.text.lastIndexOf('\n', offset) + 1;
  return part.text.slice(from, offset).toLowerCase().normalize('NFKD').replace(/\p{M}/gu, '').trim();
}
