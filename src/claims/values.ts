import type { AttributeKnown } from '../pack/knowledge';
import type { Span } from '../text/span';
import { phraseWords } from './attribute-words';
import { isOfAnother } from './dated-noun';
import type { Framer } from './frame/framed';
import { type Hit, hitsOver, ofKind } from './hits';
import { foreignNoun, otherNounMeant } from './noun-meant';
import { ofAnother } from './other-thing';
import { clauseAt, clauseIndexAt, type TextPart } from './part-text';
import type { ValueClaim, WordingClaim } from './reading';
import type { StanceReader } from './stance';
import { stancedQuote } from './stanced-quote';
import { partMeant, takesFeet } from './subject';
import type { Stanced } from './types';

/** One text with all that is needed to read claims from it. */
export interface PartReading {
  part: TextPart;
  hits: readonly Hit[];
  stances: StanceReader;
  /** The advert is written in English, as far as its small words tell. */
  isEnglish: boolean;
  /** What each clause makes of a feature; null where the text is no prose, or in no language that is known so well. */
  framer: Framer | null;
}

/** Features that an advert's words assert, each of the thing or of something else. */
export function valuesIn(reading: PartReading): ValueClaim[] {
  return ofKind(reading.hits, 'value').map((hit) => {
    const { pack, attribute, value } = hit.value;
    const own = ofItsKind(reading, hit, ofOneThing(reading, hit, stanced(reading, hit, attribute)));
    const claim = framed(reading, hit, ofOwnNoun(reading, hit, own));
    return Object.assign(claim, { pack, attribute, value });
  });
}

/** Words that packs weigh, where none of their harmless longer phrases stands. */
export function wordingsIn(reading: PartReading): WordingClaim[] {
  const harmless = ofKind(reading.hits, 'unless');
  return ofKind(reading.hits, 'wording')
    .filter((hit) => !harmless.some((one) => one.value.entry === hit.value.entry && overlaps(one, hit)))
    .map((hit) => {
      const means = hit.value.entry.means;
      const isFeature = means !== undefined && 'attribute' in means;
      const isAge = means !== undefined && 'made' in means;
      const own = isFeature ? stanced(reading, hit, null) : plain(reading, hit);
      const claim = ofTheThing(reading, hit, isAge ? ofItsNoun(reading, hit, own) : own);
      const { pack, entry } = hit.value;
      return Object.assign(asserts(hit) ? framed(reading, hit, claim) : claim, { pack, entry });
    });
}

function framed(reading: PartReading, hit: Hit, claim: Stanced): Stanced {
  return reading.framer?.turn(claim, hit) ?? claim;
}

/** "The free arms and zigzags of later years": machines of that sort, which no single one is. */
function ofOneThing({ part }: PartReading, hit: Hit, claim: Stanced): Stanced {
  const { folded } = part.tokens[hit.lastToken]!;
  if (hit.firstToken !== hit.lastToken || !/[^s]s$/.test(folded) || claim.subject === 'other') return claim;
  const [noun, before] = part.tokens.slice(Math.max(0, hit.firstToken - 2), hit.firstToken);
  const several = SEVERAL.test(before?.folded ?? '');
  const joined = before?.folded === 'and' && /[^s]s$/.test(noun?.folded ?? '') && !VERBS.test(noun!.folded);
  return several || joined ? ofAnother(claim, 'noun', claim.quote) : claim;
}

/** "Names after '33 use class 15, but mine …": what is said of all that are called so. */
function ofItsKind({ part }: PartReading, hit: Hit, claim: Stanced): Stanced {
  const clause = clauseAt(part, hit.firstToken);
  const opens = clause?.tokens.find(({ kind }) => kind === 'word')?.folded ?? '';
  if (!clause || claim.subject === 'other' || !/[^s']s$/.test(opens) || SMALL.test(opens)) return claim;
  const next = part.clauses[clauseIndexAt(part, clause.first) + 1];
  const [but, mine] = next?.sentence === clause.sentence ? next.tokens.map(({ folded }) => folded) : [];
  return but === 'but' && /^(?:mine|this|ours)$/.test(mine ?? '') ? ofAnother(claim, 'noun', claim.quote) : claim;
}

const SMALL = /^(?:this|its|is|was|as|has|does|always|us|his|hers|yours|plus)$/;
const SEVERAL = /^(?:the|these|those|their|our|other|later|earlier|many|most|all|both|some)$/;
const VERBS = /^(?:sews|goes|works|runs|does|stitches|has|is|makes|reverses)$/;

/** "An aluminium shed": in prose an adjective may be another noun's; a title's words are all of what is on sale. */
function ofOwnNoun(reading: PartReading, hit: Hit, claim: Stanced): Stanced {
  return reading.framer ? ofTheNoun(reading, hit, claim) : claim;
}

const asserts = (hit: Hit): boolean =>
  hit.value.kind === 'wording' && (hit.value.entry.means ?? hit.value.entry.never) !== undefined;

/** An adjective before the noun of something else says nothing of this thing. */
function ofTheThing(reading: PartReading, hit: Hit, claim: Stanced): Stanced {
  if (claim.subject === 'other' || !asserts(hit)) return claim;
  const foreign = foreignNoun(reading, hit);
  if (foreign !== null) return ofAnother(claim, 'noun', foreign);
  return ofTheNoun(reading, hit, claim);
}

function ofTheNoun(reading: PartReading, hit: Hit, claim: Stanced): Stanced {
  const { part, hits, isEnglish } = reading;
  if (!isEnglish || claim.subject === 'other') return claim;
  const isNamed = (token: number): boolean =>
    reading.framer?.isKnown(token) || hitsOver(hits, token).some((one) => one !== hit && one.value.kind !== 'part');
  const own = hit.value.kind === 'value' ? phraseWords(hit.value.attribute) : null;
  if (takesFeet(part, hit, hit.lastToken + 1)) return claim;
  const noun = otherNounMeant(part, hit, isNamed, own);
  return noun === null ? claim : ofAnother(claim, 'noun', noun);
}

/** "The house is Edwardian": an age is told as a year is. */
function ofItsNoun(reading: PartReading, hit: Hit, claim: Stanced): Stanced {
  const isOthers = claim.subject === 'this' && isOfAnother(reading, hit.firstToken, hit.lastToken);
  return isOthers ? ofAnother(claim, 'noun', claim.quote) : claim;
}

/** A claim of its own, which whoever asks for it may add to. */
export function plain({ part, stances }: PartReading, hit: Hit): Stanced {
  return stancedQuote(part, hit.start, hit.end, stances.at(hit.firstToken, hit.lastToken));
}

function stanced(reading: PartReading, hit: Hit, attribute: AttributeKnown | null): Stanced {
  const claim = plain(reading, hit);
  if (claim.subject === 'other') return claim;
  const foreign = foreignNoun(reading, hit);
  if (foreign !== null) return ofAnother(claim, 'noun', foreign);
  const noun = partMeant(reading.part, reading.hits, hit, attribute);
  return noun ? ofAnother(claim, 'part', reading.part.text.slice(noun.start, noun.end)) : claim;
}

function overlaps(a: Span, b: Span): boolean {
  return a.start < b.end && b.start < a.end;
}
