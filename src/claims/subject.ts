import type { AttributeKnown } from '../pack/knowledge';
import { labelWords } from './attribute-words';
import { beginningWithin, contains, type Hit, hitsOver, ofKind } from './hits';
import { type ClauseRange, clauseAt, clauseIndexAt, FARTHEST, type TextPart } from './part-text';

/** Words after which a noun is what the feature is of: "handle in alloy", "the case is aluminium". */
const LINKS = new Set('is are was in of made from has with aus ist sind im mit besteht est sont en de avec'.split(' '));

/** After these the clause speaks of something new: "lamp is working and body cast iron". */
const JOINS = new Set(['and', '&', '+', 'und', 'et', 'but', 'aber', 'mais']);

/**
 * Does a feature's phrase speak of a part or accessory instead of the thing? It does when a part's noun follows it
 * directly ("cast iron table", "zigzag foot"), or is what the clause speaks of ("the case is made of aluminium"),
 * unless the feature is about that very part (the bobbin's class).
 * @returns the part's phrase, or null when the thing itself is meant.
 */
export function partMeant(
  part: TextPart,
  hits: readonly Hit[],
  hit: Hit,
  attribute: AttributeKnown | null,
): Hit | null {
  const clause = clauseAt(part, hit.firstToken);
  if (!clause) return null;
  const near = beginningWithin(hits, Math.max(clause.first, hit.firstToken - FARTHEST), hit.lastToken + 2);
  const inClause = (one: Hit): boolean => one.lastToken <= clause.last;
  const parts = ofKind(near, 'part').filter(
    // "Belt drive with a motor" is how it is driven.
    (one) =>
      inClause(one) &&
      !overlaps(one, hit) &&
      !/^dr(?:ive|iven|ives)$/.test(part.tokens[one.lastToken + 1]?.folded ?? ''),
  );
  const isHeld = (one: Hit): boolean =>
    hitsOver(hits, one.firstToken).some((other) => other.value.kind !== 'measured' && contains(other, one));
  const things = ofKind(near, 'thing').filter(inClause);
  const explained = bracketed(part, hits, hit.firstToken);
  if (explained && !(attribute && isAbout(attribute, part, explained))) return explained;
  const continued = partContinued(part, hits, hit, clause);
  if (continued && !(attribute && isAbout(attribute, part, continued))) return continued;
  for (const noun of parts) {
    if (attribute && isAbout(attribute, part, noun)) continue;
    const gap = noun.firstToken - hit.lastToken;
    const follows = gap >= 1 && gap <= 2 && wordsBetween(part, hit.lastToken, noun.firstToken) === 0;
    const links = noun.lastToken < hit.firstToken && isLinked(part, noun.lastToken + 1, hit.firstToken);
    if (!follows && !links) continue;
    if (follows && takesFeet(part, hit, noun.firstToken)) continue;
    const thingBetween = things.some((thing) => thing.firstToken > noun.lastToken && thing.lastToken < hit.firstToken);
    if ((follows || !thingBetween) && !isHeld(noun)) return noun;
  }
  return null;
}

/** "Takes slant shank feet": by what feet it takes a thing tells what it is itself. */
export function takesFeet({ tokens }: TextPart, { firstToken }: Hit, noun: number): boolean {
  const before = USUAL.test(tokens[firstToken - 1]?.folded ?? '') ? firstToken - 2 : firstToken - 1;
  return TAKES.test(tokens[before]?.folded ?? '') && tokens[noun]?.folded === 'feet';
}

/** Words that open a clause which goes on about what the one before spoke of: "the case is light, made of alloy". */
const CONTINUES = /^(?:made|all|in|of|aus|ganz|en|tout|toute|fait|faite)$/;

function partContinued(part: TextPart, hits: readonly Hit[], hit: Hit, clause: ClauseRange): Hit | null {
  const before = part.clauses[clauseIndexAt(part, clause.first) - 1];
  if (before?.sentence !== clause.sentence || hit.firstToken - clause.first > 3) return null;
  if (!CONTINUES.test(part.tokens[clause.first]!.folded)) return null;
  const opening = beginningWithin(hits, before.first, before.first + 2);
  const first = [...ofKind(opening, 'part'), ...ofKind(opening, 'thing')]
    .filter((one) => one.lastToken <= before.last)
    .sort((a, b) => a.firstToken - b.firstToken)[0];
  return first?.value.kind === 'part' ? first : null;
}

const LONGEST_BRACKET = 14;

/** "The table (of aluminium, 12 kg)": what stands in brackets right behind a part's noun is said of that part. */
export function bracketed(part: TextPart, hits: readonly Hit[], token: number): Hit | null {
  for (let i = token - 1; i >= 0 && token - i <= LONGEST_BRACKET; i--) {
    const { kind, folded } = part.tokens[i]!;
    if (kind === 'break' || folded === ')') return null;
    if (folded === '(') return ofKind(hitsOver(hits, i - 1), 'part').find((one) => one.lastToken === i - 1) ?? null;
  }
  return null;
}

function isAbout(attribute: AttributeKnown, part: TextPart, noun: Hit): boolean {
  const own = labelWords(attribute);
  for (let i = noun.firstToken; i <= noun.lastToken; i++) {
    const word = part.tokens[i]!.folded;
    if (own.has(word) || own.has(word.replace(/s$/, ''))) return true;
  }
  return false;
}

const TAKES = /^(?:takes?|uses?|needs?|requires?|accepts?|nimmt|braucht|prend)$/;
const USUAL = /^(?:the|any|all|ordinary|normal|standard|regular|common|usual|modern)$/;
const MOST_LINKING = 4;

/** Only linking and small words stand between the noun and the feature. */
function isLinked(part: TextPart, from: number, to: number): boolean {
  let linked = false;
  let words = 0;
  for (let i = from; i < to; i++) {
    const token = part.tokens[i]!;
    if (JOINS.has(token.folded)) return false;
    if (token.kind !== 'word') continue;
    words++;
    if (words > MOST_LINKING) return false;
    if (LINKS.has(token.folded)) linked = true;
  }
  return linked;
}

function wordsBetween(part: TextPart, after: number, before: number): number {
  let count = 0;
  for (let i = after + 1; i < before; i++) if (part.tokens[i]!.kind !== 'mark') count++;
  return count;
}

function overlaps(a: Hit, b: Hit): boolean {
  return a.firstToken <= b.lastToken && b.firstToken <= a.lastToken;
}
