import type { AttributeKnown } from '../pack/knowledge';
import { labelWords } from './attribute-words';
import { contains, type Hit, ofKind } from './hits';
import { type ClauseRange, clauseAt, clauseIndexAt, type TextPart } from './part-text';

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
  const inClause = (one: Hit): boolean => one.firstToken >= clause.first && one.lastToken <= clause.last;
  const parts = ofKind(hits, 'part').filter(
    (one) => inClause(one) && !overlaps(one, hit) && !hits.some((other) => contains(other, one)),
  );
  const things = ofKind(hits, 'thing').filter(inClause);
  const explained = bracketed(part, hits, hit.firstToken);
  if (explained && !(attribute && isAbout(attribute, part, explained))) return explained;
  const continued = partContinued(part, hits, hit, clause);
  if (continued && !(attribute && isAbout(attribute, part, continued))) return continued;
  for (const noun of parts) {
    if (attribute && isAbout(attribute, part, noun)) continue;
    const gap = noun.firstToken - hit.lastToken;
    if (gap >= 1 && gap <= 2 && wordsBetween(part, hit.lastToken, noun.firstToken) === 0) return noun;
    const precedes = noun.lastToken < hit.firstToken;
    const thingBetween = things.some((thing) => thing.firstToken > noun.lastToken && thing.lastToken < hit.firstToken);
    if (precedes && !thingBetween && isLinked(part, noun.lastToken + 1, hit.firstToken)) return noun;
  }
  return null;
}

/** Words that open a clause which goes on about what the one before spoke of: "the case is light, made of alloy". */
const CONTINUES = /^(?:made|all|in|of|aus|ganz|en|tout|toute|fait|faite)$/;

function partContinued(part: TextPart, hits: readonly Hit[], hit: Hit, clause: ClauseRange): Hit | null {
  const before = part.clauses[clauseIndexAt(part, clause.first) - 1];
  if (before?.sentence !== clause.sentence || hit.firstToken - clause.first > 3) return null;
  if (!CONTINUES.test(part.tokens[clause.first]!.folded)) return null;
  const first = [...ofKind(hits, 'part'), ...ofKind(hits, 'thing')]
    .filter((one) => one.firstToken >= before.first && one.lastToken <= before.last)
    .sort((a, b) => a.firstToken - b.firstToken)[0];
  return first?.value.kind === 'part' && first.firstToken - before.first <= 2 ? first : null;
}

const LONGEST_BRACKET = 14;

/** "The table (of aluminium, 12 kg)": what stands in brackets right behind a part's noun is said of that part. */
export function bracketed(part: TextPart, hits: readonly Hit[], token: number): Hit | null {
  for (let i = token - 1; i >= 0 && token - i <= LONGEST_BRACKET; i--) {
    const { kind, folded } = part.tokens[i]!;
    if (kind === 'break' || folded === ')') return null;
    if (folded === '(') return ofKind(hits, 'part').find((one) => one.lastToken === i - 1) ?? null;
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

/** Only linking and small words stand between the noun and the feature. */
function isLinked(part: TextPart, from: number, to: number): boolean {
  let linked = false;
  let words = 0;
  for (let i = from; i < to; i++) {
    const token = part.tokens[i]!;
    if (JOINS.has(token.folded)) return false;
    if (token.kind !== 'word') continue;
    words++;
    if (LINKS.has(token.folded)) linked = true;
  }
  return linked && words <= 4;
}

function wordsBetween(part: TextPart, after: number, before: number): number {
  let count = 0;
  for (let i = after + 1; i < before; i++) if (part.tokens[i]!.kind !== 'mark') count++;
  return count;
}

function overlaps(a: Hit, b: Hit): boolean {
  return a.firstToken <= b.lastToken && b.firstToken <= a.lastToken;
}
