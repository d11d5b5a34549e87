import type { ClauseRange, TextPart } from './part-text';

/** Why a sentence speaks of another thing: it opens with one, names one farther on, or goes on about the one before. */
export type Topic = 'brings-up' | 'names' | 'goes-on';

/** Which models a sentence names. */
export interface Named {
  own: boolean;
  other: boolean;
  /** Its subject, as far as its place tells, is another one. */
  opens: boolean;
}

const PERSON =
  '(?:sister|brother|mother|father|mum|mom|dad|nan|gran|granny|grandmother|grandma|aunt|auntie|uncle|cousin|neighbour|neighbor|friend|daughter|son|wife|husband|mother-in-law|lady next door|lodger|colleague)';
export const PERSON_DE =
  '(?:schwester|bruder|mutter|vater|oma|opa|tante|onkel|nachbarin|nachbar|freundin|freund|tochter|sohn|frau|mann|schwiegermutter|kollegin)';
const PERSON_FR =
  '(?:soeur|frere|mere|pere|grand-mere|mamie|tante|oncle|voisine|voisin|amie|ami|copine|fille|fils|femme|mari|belle-mere)';

/** A sentence that opens so is about a machine of somebody else's, or another of the seller's. On its folded words. */
const BRINGS_UP = oneOf([
  // "My sister's was …", but not "my grandmother's machine", which may be the one on sale.
  new RegExp(
    `^(?:and )?(?:my|our|his|her|the|a) (?:\\w+ )?${PERSON}'s (?:is|was|has|had|does|did|takes|took|weighs|weighed|sews|sewed|came)\\b`,
  ),
  new RegExp(
    `^(?:and )?(?:my|our|his|her|the|a) (?:\\w+ )?${PERSON} (?:has|owns|keeps|uses|had|also has|still has|swears by) (?:a|an|one|another|hers|his|the other|the big|the small|the heavy|the light)\\b`,
  ),
  /^(?:someone|somebody|an? (?:man|woman|lady|chap|bloke|guy|lad|collector|dealer))(?: (?!who|that|said|told)\w+){0,3} (?:has|owns|keeps|uses|had) (?:an?|one|another|the \w+ one|hers|his)\b/,
  /^(?:my|our|the) (?:other|second|next|new|newer|modern|everyday|main|own|spare|previous|last|first) (?:one|machine)\b/,
  // "The ordinary Name has …".
  /^(?:(?:the|an?|any) )?(?:ordinary|standard|plain|basic|normal|regular|cheaper|dearer|earlier|later) (?!(?:\S+ )?(?:one|case|box|lid|table|cabinet|foot|feet|bobbins?|needles?|motor|pedal|belt|cord|lamp|light|paint|finish|badge|plate|decals?|transfers|wheel|stitch|colou?r|owners?)\b)(?:\S+ ){1,3}(?:has|have|had|is|are|isn't|was|were|came|took|takes|does|did|doesn't|didn't|would)\b/,
  // "The spare chuck is off another one, it's …", "the firm began in 1908 with …".
  /^(?:the|a|this|my) (?:\w+ ){1,3}(?:is|was|came) off (?:an?|my|another|some)\b/,
  /^(?:and )?(?:a (?:bit|little|spot) of|some|brief) history\b/,
  /^(?:\w+ ){1,4}(?:began|started|was founded|were founded) (?:in|at|as|with|by)\b/,
  // "I'm keeping my other one because it has …".
  /^(?:i'm|im|i am|we're|we are) keeping (?:my|our|the) (?:\S+ ){1,3}(?:because|as|since|for|which)\b/,
  /^only the (?:other|right|left|second|first|big|bigger|small|smaller|old|older|new|newer|later|earlier)(?:[ -]hand)? one\b/,
  /^(?:the other|that one|that other|theirs|hers|other ad)\b/,
  new RegExp(
    `^(?:meine?|unsere?|die|der) (?:\\w+ )?${PERSON_DE} (?:hat|hatte|besitzt|nimmt|nutzt) (?:\\w+ )?(?:eine|die andere|die grosse|die kleine|die schwere|die leichte|ihre|seine|noch)\\b`,
  ),
  new RegExp(`^(?:die|der) (?:meiner|meines|unserer|der|des) ${PERSON_DE} (?:ist|hat|war|hatte|wiegt|naht)\\b`),
  /^(?:meine|unsere|die) (?:andere|zweite|neue|nachste) (?:maschine|ist|hat|wiegt|naht|kann)\b/,
  new RegExp(
    `^(?:ma|mon|notre|la|le|une|un) (?:\\w+ )?${PERSON_FR} (?:a|en a|possede|garde|utilise|avait) (?:une|la sienne|l'autre|aussi|la grosse|la grande|la petite|la lourde|la legere)`,
  ),
  new RegExp(`^(?:celle|celui) de (?:ma|mon|notre|la|le) ${PERSON_FR} `),
  /^(?:mon|ma|notre|l') ?(?:autre|nouvelle|deuxieme) (?:machine|est|a|fait|pese)\b/,
]);

/** Tried at once: each of hundreds of sentences is. */
function oneOf(openings: readonly RegExp[]): RegExp {
  return new RegExp(openings.map(({ source }) => source).join('|'));
}

/** "Often mixed up with the 71, which …": the sentence alone is of that one. */
const CONFUSES =
  /^(?:\S+ ){0,4}(?:mix(?:es|ed)?|confus(?:es?|ed|ing)|mistak(?:en|es?|ing)|mistook) (?:\S+ ){0,3}(?:up with|with|for) (?:the|an?|its|later|earlier)\b/;

/** A sentence that opens so goes on about what the one before spoke of. */
const GOES_ON =
  /^(?:(?:and|but|also|und|auch|et|mais) )?(?:it|it's|its|that|that's|that one|hers|his|theirs|they|she|she's|he|sie|die|der|ihre|elle|elles|il|celle-la|la sienne)\b/;
/** Words that turn to the thing on sale, wherever in the sentence. */
const THIS =
  /\b(?:this|mine|ours|diese|dieses|dieser|meine hier|unsere|celle-ci|celui-ci|cette|la mienne|le mien|ici)\b/;

/**
 * What the sentences of a text go on about. A sentence that brings up another machine ("my sister's was …", or one that
 * names another model only) is about that one, and so are those after it that open with a pronoun, until one turns to
 * the thing on sale, by name or by "this", "mine", or begins a line of its own.
 * @param named sentence -> which models it names, and whether another one's name opens it
 * @returns the sentences that are about another thing, by number
 */
export function topicsOf(part: TextPart, named: ReadonlyMap<number, Named>): Map<number, Topic> {
  const topics = new Map<number, Topic>();
  let under: 'firm' | 'wish' | null = null;
  for (const [sentence, opening] of sentencesOf(part)) {
    const { words, opensLine } = opening;
    if (opensLine || sentence === 0) under = headedBy(opening, under);
    if (under) {
      topics.set(sentence, 'goes-on');
      continue;
    }
    const names = named.get(sentence);
    if (names?.own) continue;
    const before = opensLine ? undefined : topics.get(sentence - 1);
    if (names?.opens || (BRINGS_UP.test(words) && !THIS.test(words))) {
      topics.set(sentence, 'brings-up');
    } else if (names?.other || CONFUSES.test(words)) {
      topics.set(sentence, 'names');
    } else if (before && before !== 'names' && GOES_ON.test(words) && !THIS.test(words)) {
      topics.set(sentence, 'goes-on');
    }
  }
  return topics;
}

/** "About us: …" tells of the firm to the line's end, "What I want:" of a wish in all the bullets after it. */
function headedBy({ words, isHeading, isBullet }: Opening, before: 'firm' | 'wish' | null): 'firm' | 'wish' | null {
  if (OF_THE_FIRM.test(words)) return 'firm';
  if (isHeading && WISHES.test(words)) return 'wish';
  return before === 'wish' && isBullet ? 'wish' : null;
}

const OF_THE_FIRM =
  /^(?:about (?:us|me|the shop|our shop|the seller)|who we are|uber uns|a propos de nous|qui sommes-nous)\b/;
const WISHES =
  /^(?:what )?(?:i |we )?(?:want|wanted|wants|would like|d like|am after|are after|wish for|looking for|in exchange|in return|gesucht|suche|wunsch|cherche|je cherche|recherche|souhaite)\b/;

interface Opening {
  /** The folded words of its first clause. */
  words: string;
  /** It begins a line, where a text begins anew. */
  opensLine: boolean;
  /** A mark opens it. */
  isBullet: boolean;
  /** A colon ends its first clause. */
  isHeading: boolean;
}

const known = new WeakMap<TextPart, ReadonlyMap<number, Opening>>();

/** Sentence -> what it opens with. Asked by several readers. */
function sentencesOf(part: TextPart): ReadonlyMap<number, Opening> {
  const there = known.get(part);
  if (there) return there;
  const openings = new Map<number, Opening>();
  for (const clause of part.clauses) {
    if (openings.has(clause.sentence)) continue;
    const opensLine = part.tokens[clause.first - 1]?.kind === 'break';
    const [isBullet, isHeading] = [clause.tokens[0]?.kind === 'mark', clause.tokens.at(-1)?.folded === ':'];
    openings.set(clause.sentence, { words: openingOf(clause), opensLine, isBullet, isHeading });
  }
  known.set(part, openings);
  return openings;
}

function openingOf({ tokens }: ClauseRange): string {
  const words: string[] = [];
  for (let i = 0; i < tokens.length && words.length < 24; i++)
    if (tokens[i]!.kind !== 'mark') words.push(tokens[i]!.folded);
  return words.join(' ');
}
