import { type Hit, hitsOver, ofKind } from './hits';
import { clauseAt, hasNameCapital, type TextPart, writtenAt } from './part-text';
import { strangerAt } from './stranger';
import type { PartReading } from './values';

/** Where an English noun phrase ends: what follows is no longer what an adjective before it speaks of. */
const ENDS = new Set(
  (
    'and or but with without for in on at of to from by as is was are were has have had it its this that which who will would can could so than when if ' +
    'wich fit go goes drop drops load loads jam never always ever still yet handy useful ideal perfect brilliant behind using below beneath through into onto off near around against beside beyond between where via works work working runs sews sew makes make needs takes does do did being be been there here i we you he she they came comes gives feels looks weighs ' +
    'flat carries feeds after during against got gets ive im its theres close closes closed shut shuts opens slides plays winds lets let allows allow ensures ensure guarantees hums hum rattles turns spins helps means keeps saves adds stays says believe ' +
    'because both each next same two three four number serial once ive while since throughout inside outside everywhere instead underneath all over under up out not no front back apart except save bar besides very quite really too also only just my your his her our their the a an'
  ).split(' '),
);
/** Heads that are the thing, or something said of it. */
const OF_THE_THING = new Set(
  (
    'machine machines model one beast workhorse tool piece item gem beauty classic example head version type unit quality strength grade power powered ' +
    'performance stitching stitch stitcher build built construction weight size finish condition capability capabilities standard standards look feel ' +
    'sewing sewer seam seams function facility option feature setting settings capability mode mechanism system design action movement stitches width plus lever dial material casting bodied framed frame shell ' +
    'bobins bobin sewing sewer portable treadle electric straight zigzag domestic cast iron metal aluminium aluminum alloy vintage old antique condition spec duty made girl lady brute monster lump tank warhorse baby treasure marvel wonder dream bargain specimen survivor creature companion ' +
    'job sort kind ok okay bed arm pillar head casting body anvil dear horse darling stunner heavyweight lightweight antique oldie oldtimer veteran relic heirloom'
  ).split(' '),
);
const LONGEST = 4;

/**
 * "Industrial estate", "lightweight fabrics", "heavy duty thread": an adjective is of the noun that ends its phrase. Is
 * that noun something else than the thing on sale? English only: other languages bend or join their words.
 * @returns the noun as it is written, or null when the thing is meant.
 */
export function otherNounMeant(
  part: TextPart,
  hit: Hit,
  isNamed: (token: number) => boolean,
  own: ReadonlySet<string> | null,
): string | null {
  const clause = clauseAt(part, hit.firstToken);
  if (!clause) return null;
  // "Sews lightweight to medium": cloth.
  const [to, upTo] = part.tokens.slice(hit.lastToken + 1, hit.lastToken + 3);
  if (/^(?:to|or)$/.test(to?.folded ?? '') && /^(?:medium|heavy|heavier|mid)$/.test(upTo?.folded ?? ''))
    return writtenAt(part, hit.lastToken + 2);
  let head = -1;
  for (let i = hit.lastToken + 1; i <= clause.last && i - hit.lastToken <= LONGEST; i++) {
    const token = part.tokens[i]!;
    if (token.kind === 'mark' && token.folded === '-') continue;
    // "Iron like all of them"; "zigzag-like decoration" is of the noun.
    if (token.folded === 'like' && part.tokens[i - 1]!.folded !== '-') break;
    if (token.kind !== 'word' || ENDS.has(token.folded) || /..ly$/.test(token.folded)) break;
    if (saysHowItIs(part, i, clause.last)) break;
    if (/..ed$/.test(token.folded)) continue;
    // "Solid iron little thing"; not "one was a zigzag thing".
    if (token.folded === 'thing' && hit.firstToken === clause.first) return null;
    // A capital or a number is of a name, which is the thing's; a feature's own names are known.
    const isName = own === null && hasNameCapital(part, i);
    if (OF_THE_THING.has(token.folded) || isNamed(i) || isName || own?.has(token.folded)) return null;
    head = i;
  }
  return head < 0 ? null : writtenAt(part, head);
}

/** "Chain drive stiff", "shuttle swings beautifully", "lever lifts the foot": an adjective that ends a statement, or a verb. */
function saysHowItIs({ tokens }: TextPart, at: number, last: number): boolean {
  const { folded } = tokens[at]!;
  const next = at < last ? tokens[at + 1]! : undefined;
  if (STATES.test(folded)) return next === undefined || next.kind !== 'word' || ENDS.has(next.folded);
  return (
    /[^s]s$|ing$/.test(folded) &&
    next !== undefined &&
    (/..ly$/.test(next.folded) || WAY.test(next.folded) || /^(?:the|your|my|it)$/.test(next.folded))
  );
}

const STATES =
  /^(?:stiff|loose|tight|dry|clean|dirty|rusty|smooth|seized|stuck|worn|missing|present|intact|broken|cracked|chipped|faded|shiny|bright|dull|crisp|strong|sound|perfect|good|fine|noisy|quiet|complete|original|tidy|free)$/;
const WAY = /^(?:up|right|well|nicely|round|freely)$/;
const PLURALS = /^(?:machines|ones|models|maschinen|modelle|modeles|motors|motoren|moteurs)$/;
const OF = /^(?:aus|en|d'|de)$/;
const FRENCH_HEADS =
  /^(?:machine|materiel|coudre|couture|modele|tete|bati|corps|est|tres|vraiment|presque|plutot|type|usage|qualite|style|semi|zigzag|une|la|c'est|pas|non|et|ou|aussi|fonctionnement|vraie|veritable|date|datant|mecanique|fabrication|construction|piece)$/;

/** "Bügelmaschine Industrie": a compound that no pack knows. */
function isOtherMachine(reading: Pick<PartReading, 'part' | 'hits'>, at: number): boolean {
  return (
    /^(?!nah|haushalt|schneider).{3,}maschine$/.test(reading.part.tokens[at]!.folded) &&
    strangerAt(reading, at) !== null
  );
}

/**
 * The noun of something else right beside a feature, in the order of other languages and of plurals: "zigzag machines",
 * "Riemenscheiben aus Aluminium", "fer à repasser industriel".
 */
export function foreignNoun({ part, hits, isEnglish, framer }: PartReading, hit: Hit): string | null {
  if (part.field === 'title') return null;
  const text = (at: number): string => writtenAt(part, at);
  const after = part.tokens[hit.lastToken + 1];
  if (after && PLURALS.test(after.folded)) return text(hit.lastToken + 1);
  if (PLURALS.test(part.tokens[hit.lastToken]!.folded)) return text(hit.lastToken);
  if (isEnglish) return null;
  // "Peinture type industriel".
  const at = hit.firstToken - (part.tokens[hit.firstToken - 1]?.folded === 'type' ? 2 : 1);
  const before = part.tokens[at];
  if (before?.kind !== 'word') return null;
  if (isOtherMachine({ part, hits }, hit.firstToken - 1)) return text(hit.firstToken - 1);
  if (OF.test(before.folded) && !framer) return strangerAt({ part, hits }, hit.firstToken - 2);
  // "Elle fait avant-guerre", "les avant-guerre", "un moteur d'avant-guerre".
  const isWar = hit.value.kind === 'wording' && part.tokens[hit.lastToken]!.folded === 'guerre';
  if (isWar && /^(?:fait|les|des)$/.test(before.folded)) return text(at);
  if (isWar && part.tokens[hit.firstToken]!.folded === "d'" && !FRENCH_HEADS.test(before.folded))
    return ofKind(hitsOver(hits, at), 'part').length > 0 ? text(at) : strangerAt({ part, hits }, at);
  const isFrenchAdjective = hit.value.kind === 'wording' && /^industriel/.test(part.tokens[hit.lastToken]!.folded);
  const known = hitsOver(hits, at).some((one) => one !== hit);
  return isFrenchAdjective && hit.firstToken === hit.lastToken && !known && !FRENCH_HEADS.test(before.folded)
    ? text(at)
    : null;
}
